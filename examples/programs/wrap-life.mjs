// A 12 g lollipop of sixty parts sugar to forty of glucose syrup solids in 60 cm² of film: how long
// until its core has taken up so much water that it softens at 25 °C.
//
//   node examples/programs/wrap-life.mjs

import { evaporateTo, isNone, mixture, wrapLife } from 'vitrose';

const pop = evaporateTo(
  mixture([
    { ingredient: 'sucrose', massG: 600 },
    {
      ingredient: 'dried-glucose-syrup',
      dextroseEquivalent: 42,
      drySolidsMassFraction: 1,
      massG: 400,
    },
    { ingredient: 'water', massG: 330 },
  ]),
  { drySolidsMassFraction: 0.975 },
);

for (const wvtrGPerM2Day of [5, 1]) {
  for (const relativeHumidity of [0.25, 0.5, 0.75]) {
    const life = wrapLife(pop, {
      pieceG: 12,
      areaCm2: 60,
      wvtrGPerM2Day,
      storeC: 25,
      relativeHumidity,
    });
    const air = `${wvtrGPerM2Day} g/m² a day, air at ${100 * relativeHumidity} %`;
    // Below the critical humidity the limit is never reached; that is the answer, not a very long time.
    if (isNone(life)) console.log(`${air}: ${life.reason}`);
    else {
      const [low, high] = life.band.map(Math.round);
      console.log(
        `${air}: ${Math.round(life.days)} days (${low} to ${high}), step by step ${Math.round(life.daysFull)}`,
      );
    }
  }
}
