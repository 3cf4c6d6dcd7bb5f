// A thermometer that shows 2 in melting ice and 97 in boiling water: what it shows when a mass is
// really at the temperature the recipe wants.
//
//   node examples/programs/crooked-thermometer.mjs

import { standardPressure, thermometerReading, trueFromReading, waterBoilingPoint } from 'vitrose';

const elevationM = 220;
const { boilingPointC: waterBoilsAtC } = waterBoilingPoint(standardPressure(elevationM).pressurePa);
const oneCheck = { boilingWaterReadingC: 97, waterBoilsAtC };
const twoChecks = { ...oneCheck, iceWaterReadingC: 2 };

const round = (number) => Math.round(number);

console.log(`Water boils here at ${waterBoilsAtC.toFixed(1)} °C.`);
console.log('really   after one check       after two');
for (const trueC of [0, 50, 100, 115, 130, 145, 150, 160]) {
  // One check shifts the scale and leaves a range far from it; two stretch it as well.
  const shifted = thermometerReading({ trueC, ...oneCheck });
  const scaled = thermometerReading({ trueC, ...twoChecks });
  const [low, high] = shifted.band.map(round);
  const one = `${round(shifted.readingC)} (${low} to ${high})`;
  console.log(
    `${String(trueC).padStart(4)} °C  ${one.padEnd(20)} ${String(round(scaled.readingC)).padStart(4)}`,
  );
}

const { trueC } = trueFromReading({ readingC: 145, ...twoChecks });
console.log(`When it shows 145, the mass is at ${trueC.toFixed(1)} °C.`);
