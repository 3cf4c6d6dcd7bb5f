// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Formula and cook window of boiled sweets. */
export const practiceBoiledSweetFormulaTable = {
  id: 'practice-boiled-sweet-formula',
  title: 'Formula and cook window of boiled sweets',
  source: {
    authors: 'several',
    year: 'n.d.',
    title: 'Named in each row',
    locator: 'see rows',
  },
  grade: 'mixed',
  did: 'Each row has its own grade.',
  units: {},
  rows: [
    { quantity: 'sucrose to syrup solids, high sucrose', range: '70 to 80 : 20 to 30', unit: '% of solids', publication: 'Hartel 2012', grade: 'secondary' },
    { quantity: 'sucrose to syrup solids, medium', range: '50 to 60 : 40 to 50', unit: '% of solids', publication: 'Hartel 2012', grade: 'secondary' },
    { quantity: 'sucrose to syrup solids, low sucrose', range: '30 to 40 : 60 to 70', unit: '% of solids', publication: 'Hartel 2012', grade: 'secondary' },
    { quantity: 'common window', range: '60:40 to 40:60', unit: '% of solids', publication: 'Hartel 2012', grade: 'secondary' },
    { quantity: 'older US formula', range: '65 sucrose dry, 35 syrup as sold', unit: '%', publication: 'Frey 1967, US patent 3,332,783', grade: 'secondary' },
    { quantity: 'acid', range: '0 to 2', unit: '% of finished mass', publication: 'Hartel 2012', grade: 'secondary' },
    { quantity: 'flavour', range: '0.2 to 0.3', unit: '% of finished mass', publication: 'Hartel 2012', grade: 'secondary' },
    { quantity: 'dye', range: '0.01 to 0.02', unit: '% of finished mass', publication: 'Hartel 2012', grade: 'secondary' },
    { quantity: 'cook temperature in the open', range: '145 to 152', unit: '°C', publication: 'Hartel 2012', grade: 'secondary' },
    { quantity: 'cook temperature, other texts', range: '143 to 149', unit: '°C', publication: 'a food-technology text', grade: 'secondary' },
    { quantity: 'water left', range: '1 to 3', unit: '%', publication: 'Hartel 2012', grade: 'secondary' },
    { quantity: 'water left at 148 to 152 °C, differing', range: '3 to 4', unit: '%', publication: 'University course notes', grade: 'secondary' },
    { quantity: 'water left, kitchen text', range: '1 to 2', unit: '%', publication: 'McGee 2004', grade: 'secondary' },
    { quantity: 'equilibrium relative humidity', range: '0.25 to 0.35', unit: '0 to 1', publication: 'a food-technology text', grade: 'secondary' },
    { quantity: 'reducing sugars', range: '16 upward; trade 12 to 18', unit: '%', publication: 'Hartel 2012; trade', grade: 'practice' },
    { quantity: 'water to dissolve', range: '25 to 35', unit: '% of sucrose', grade: 'practice' },
    { quantity: 'cream of tartar instead of glucose', range: '0.21', unit: '% of syrup', publication: 'Hess, Hard Candy: Cooking', grade: 'primary' },
    { quantity: 'open-fire end temperature, historic', range: '149 to 154', unit: '°C', publication: 'Hess, Hard Candy: Cooking', grade: 'primary' },
    { quantity: 'kitchen pulled candy, 1150 g sugar, about 250 pieces', range: '156', unit: '°C', publication: 'Greweling 2007', grade: 'secondary' },
    { quantity: 'casting and pulling of sugar art', range: '157 to 166', unit: '°C', publication: 'McGee 2004', grade: 'secondary' },
    { quantity: 'boiled sweet in a handbook', range: 'sucrose 40 to 70, glucose syrup dry 30 to 60, invert 1 to 8, acid 0.5 to 2, aroma 0.1 to 0.3, water 1 to 3', unit: '% of finished mass', publication: 'Belitz, Grosch and Schieberle 2009, Food Chemistry, Table 19.9', grade: 'primary' },
  ],
  notes: [
    'Sources differ on the water left at 148 to 152 °C, 1 to 3 against 3 to 4 %: a band of ± 1 % is honest.',
    '290 to 300 °F leaves 3.9 to 2.75 % water and a glass transition of 35 to 45 °C: normal sweets, not failures.',
    'A syrup at pH 5.0 boiled 20 to 30 min to 150 °C inverts 0.6 to 1.4 % of its sucrose.',
  ],
  check: {
    rows: 21,
    sums: {
    },
  },
} as const satisfies EvidenceTable;
