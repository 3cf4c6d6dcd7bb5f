// A boiling curve as CSV: how hot 60 parts of sugar with 40 of glucose syrup solids boil, from
// thin syrup to hard candy, at sea level and in a kitchen at 1 500 m.
//
//   node examples/programs/boiling-curve.mjs > boiling-curve.csv

import { boilingPoint, evaporateTo, mixture, standardPressure } from 'vitrose';

const syrup = mixture([
  { ingredient: 'sucrose', massG: 600 },
  { ingredient: 'dried-glucose-syrup', massG: 417 },
  { ingredient: 'water', massG: 400 },
]);
const heights = [0, 1_500];

/** A number with one decimal, the point for every locale. */
const tenth = (number) => number.toFixed(1);

console.log(['water_percent', ...heights.map((m) => `boils_at_${m}_m_C`), 'band_K'].join(','));
for (const waterPercent of [25, 20, 15, 12, 10, 8, 6, 5, 4, 3, 2, 1.5, 1]) {
  const mass = evaporateTo(syrup, { drySolidsMassFraction: 1 - waterPercent / 100 });
  const boils = heights.map((elevationM) => boilingPoint(mass, standardPressure(elevationM)));
  const [low, high] = boils[0].band;
  const cells = [
    waterPercent,
    ...boils.map(({ boilingPointC }) => tenth(boilingPointC)),
    tenth((high - low) / 2),
  ];
  console.log(cells.join(','));
}
