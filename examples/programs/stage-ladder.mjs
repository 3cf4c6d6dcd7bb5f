// For a recipe app: the recipes say "238 °F" for sea level; the reader's kitchen is elsewhere.
//
//   node examples/programs/stage-ladder.mjs 1500

import {
  celsiusFromFahrenheit,
  fahrenheitFromCelsius,
  isNone,
  stageLadder,
  temperatureAtKitchen,
} from 'vitrose';
import { stageName } from 'vitrose/words';

const elevationM = Number(process.argv[2] ?? 1_500);
const recipes = [
  { name: 'Lantern fudge', stopF: 238 },
  { name: 'Gull Rock nougat', stopF: 262 },
  { name: 'Harbour lemon drops', stopF: 300 },
];

/** Both scales, in whole degrees. */
const both = (celsius) =>
  `${Math.round(celsius)} °C / ${Math.round(fahrenheitFromCelsius(celsius))} °F`;

console.log(`Sugar stages at ${elevationM} m`);
for (const { kind, id, lowC, highC } of stageLadder({ elevationM })) {
  // A gap is no stage, but it has its use: most boiled drops are stopped in one.
  const indent = kind === 'gap' ? '    ' : '  ';
  console.log(`${indent}${stageName(id)}: ${both(lowC)} to ${both(highC)}`);
}

console.log('Recipes');
for (const { name, stopF } of recipes) {
  const here = temperatureAtKitchen({ temperatureC: celsiusFromFahrenheit(stopF), elevationM });
  // "None" is an answer too: a stop below the boil, for instance. It has its reason.
  const text = isNone(here) ? here.reason : `stop at ${both(here.temperatureC)}`;
  console.log(`  ${name} (${stopF} °F): ${text}`);
}
