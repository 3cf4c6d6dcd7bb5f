// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Dry glass transition of sugars, polyols and acids. */
export const glassTgDryTable = {
  id: 'glass-tg-dry',
  title: 'Dry glass transition of sugars, polyols and acids',
  source: {
    authors: 'Roos, Y.',
    year: '1993',
    title: 'Melting and glass transitions of low molecular weight carbohydrates, Carbohydrate Research 238:39-48',
    locator: 'summary table',
  },
  grade: 'mixed',
  did: 'Each row has its own grade.',
  address: 'https://doi.org/10.1080/10942910500269824',
  units: {
    recommendedC: '°C',
    onsetC: '°C',
    midpointC: '°C',
    heatCapacityStepJPerGK: 'J/(g K)',
    uncertaintyK: 'K, either way',
  },
  rows: [
    { solute: 'sucrose', recommendedC: 62, onsetC: 62, midpointC: 67, heatCapacityStepJPerGK: 0.6, uncertaintyK: 5, alternatives: [{ valueC: 60, publication: 'Leinen and Labuza 2006, dry, by calorimetry', grade: 'primary' }, { valueC: 52, publication: 'Belitz and others 2004, as tabulated in a textbook', grade: 'secondary' }, { valueC: 75, publication: 'rigorously dried, midpoint, about 1994 to 1999', grade: 'memory' }], grades: { recommendedC: 'secondary', onsetC: 'memory', midpointC: 'memory', heatCapacityStepJPerGK: 'memory' }, grade: 'secondary' },
    { solute: 'glucose', recommendedC: 31, onsetC: 31, midpointC: 36, heatCapacityStepJPerGK: 0.63, uncertaintyK: 4, alternatives: [{ valueC: 37.85, publication: 'Orford and others 1990', grade: 'secondary' }, { valueC: 31, publication: 'Belitz and others 2004, as tabulated in a textbook', grade: 'secondary' }], grades: { recommendedC: 'secondary', onsetC: 'memory', midpointC: 'memory', heatCapacityStepJPerGK: 'memory' }, grade: 'secondary' },
    { solute: 'fructose', recommendedC: 5, onsetC: 5, midpointC: 10, heatCapacityStepJPerGK: 0.75, uncertaintyK: 6, alternatives: [{ valueC: 6.85, publication: 'Orford and others 1990', grade: 'secondary' }, { valueC: 13, publication: 'Finegold, Franks and Hatley 1989, extrapolated from blends', grade: 'secondary' }, { valueC: 16, publication: 'Truong, Bhandari, Howes and Adhikari 2004, fresh; 25 °C after 10 days at 22 °C', grade: 'primary' }], grades: { recommendedC: 'secondary', onsetC: 'memory', midpointC: 'memory', heatCapacityStepJPerGK: 'memory' }, note: '5 is the low end of 5 to 16 in print.', grade: 'secondary' },
    { solute: 'galactose', recommendedC: 30, onsetC: 30, midpointC: 38, heatCapacityStepJPerGK: 0.5, uncertaintyK: 4, alternatives: [{ valueC: 31.85, publication: 'Orford and others 1990', grade: 'secondary' }], grade: 'memory' },
    { solute: 'maltose', recommendedC: 87, onsetC: 87, midpointC: 92, heatCapacityStepJPerGK: 0.61, uncertaintyK: 6, alternatives: [{ valueC: 43, publication: 'Belitz and others 2004, wet sample, rejected', grade: 'secondary' }, { valueC: 95, publication: 'drier samples, several authors', grade: 'memory' }], grade: 'memory' },
    { solute: 'maltotriose', recommendedC: 125, onsetC: null, midpointC: null, heatCapacityStepJPerGK: null, uncertaintyK: 10, alternatives: [{ valueC: 76, publication: 'Slade and Levine 1991, wet sample, rejected', grade: 'memory' }, { valueC: 134, publication: 'Orford and others 1989', grade: 'memory' }], grade: 'memory' },
    { solute: 'lactose', recommendedC: 101, onsetC: 101, midpointC: null, heatCapacityStepJPerGK: null, uncertaintyK: 4, grade: 'memory' },
    { solute: 'trehalose', recommendedC: 100, onsetC: 100, midpointC: 107, heatCapacityStepJPerGK: 0.55, uncertaintyK: 8, alternatives: [{ valueC: 106, publication: 'Leinen and Labuza 2006, dry, by calorimetry', grade: 'primary' }, { valueC: 115, publication: 'drier samples', grade: 'memory' }, { valueC: 79, publication: 'Slade and Levine 1991, wet sample, rejected', grade: 'memory' }], note: 'A measured 106 agrees with the midpoint.', grade: 'memory' },
    { solute: 'isomaltulose', recommendedC: 62, onsetC: null, midpointC: null, heatCapacityStepJPerGK: null, uncertaintyK: 6, grade: 'memory' },
    { solute: 'raffinose', recommendedC: 70, onsetC: 70, midpointC: 77, heatCapacityStepJPerGK: 0.45, uncertaintyK: 15, alternatives: [{ valueC: 104, publication: 'rigorously dried pentahydrate, Saleki-Gerhardt and Zografi 1994', grade: 'memory' }], grade: 'memory' },
    { solute: 'isomalt', recommendedC: 62, onsetC: null, midpointC: 63.6, heatCapacityStepJPerGK: null, uncertaintyK: 4, alternatives: [{ valueC: 60, publication: 'Borde and Cesàro 2001', grade: 'memory' }], grades: { recommendedC: 'memory', midpointC: 'secondary' }, note: '63.6 is a midpoint (Materials and Design 2019, 108324).', grade: 'memory' },
    { solute: 'maltitol', recommendedC: 39, onsetC: 39, midpointC: 44, heatCapacityStepJPerGK: 0.56, uncertaintyK: 6, alternatives: [{ valueC: 48, publication: 'drier samples', grade: 'memory' }], grade: 'memory' },
    { solute: 'lactitol', recommendedC: 52, onsetC: null, midpointC: null, heatCapacityStepJPerGK: null, uncertaintyK: 6, note: 'The digits after 52 were cut off in the copy.', grade: 'secondary' },
    { solute: 'xylitol', recommendedC: -29, onsetC: -29, midpointC: -23, heatCapacityStepJPerGK: 1.02, uncertaintyK: 5, alternatives: [{ valueC: -18.5, publication: 'Slade and Levine 1991', grade: 'memory' }], grade: 'memory' },
    { solute: 'sorbitol', recommendedC: -9, onsetC: -9, midpointC: -4, heatCapacityStepJPerGK: 0.96, uncertaintyK: 5, alternatives: [{ valueC: -0.15, publication: 'Orford and others 1990', grade: 'secondary' }, { valueC: -2, publication: 'Belitz and others 2004, as tabulated in a textbook', grade: 'secondary' }], grade: 'memory' },
    { solute: 'mannitol', recommendedC: 11, onsetC: 10.7, midpointC: 12.6, heatCapacityStepJPerGK: 1.27, uncertaintyK: 5, note: 'Yu, Mishra and Rigsbee 1998: onset 10.7, midpoint 12.6, end 18.4 °C, by extrapolation of sorbitol blends.', grade: 'primary' },
    { solute: 'erythritol', recommendedC: -45, onsetC: null, midpointC: null, heatCapacityStepJPerGK: null, uncertaintyK: 10, alternatives: [{ valueC: -59.7, publication: 'Materials and Design 2019, 108324', grade: 'secondary' }], grade: 'memory' },
    { solute: 'glycerol', recommendedC: -83, onsetC: null, midpointC: null, heatCapacityStepJPerGK: null, uncertaintyK: 6, alternatives: [{ valueC: -93, publication: 'onset values in the polyol literature', grade: 'memory' }], grade: 'memory' },
    { solute: 'polydextrose', recommendedC: 95, onsetC: null, midpointC: null, heatCapacityStepJPerGK: null, uncertaintyK: 15, note: 'A weak recollection.', grade: 'memory' },
    { solute: 'inulin (DP about 10)', recommendedC: 110, onsetC: null, midpointC: null, heatCapacityStepJPerGK: null, uncertaintyK: 25, note: 'A weak recollection; depends on chain length.', grade: 'memory' },
    { solute: 'water', recommendedC: -135, onsetC: null, midpointC: null, heatCapacityStepJPerGK: null, uncertaintyK: 2, alternatives: [{ valueC: -137.15, publication: '136 K, Shiraiwa and others 2017', grade: 'secondary' }, { valueC: -138.15, publication: '135 K, Inaba and Andersson 2007', grade: 'secondary' }], grade: 'secondary' },
    { solute: 'citric acid', recommendedC: 11, onsetC: null, midpointC: null, heatCapacityStepJPerGK: null, uncertaintyK: 5, note: '1.2 % of a sweet lowers its transition by about 0.7 K, 4 % by 2.4 K.', grade: 'memory' },
    { solute: 'malic acid', recommendedC: -20, onsetC: null, midpointC: null, heatCapacityStepJPerGK: null, uncertaintyK: 8, note: 'A weak recollection.', grade: 'memory' },
    { solute: 'tartaric acid', recommendedC: 17, onsetC: null, midpointC: null, heatCapacityStepJPerGK: null, uncertaintyK: 8, note: 'A weak recollection.', grade: 'memory' },
    { solute: 'hydrogenated maltooligosaccharides', recommendedC: 100, onsetC: null, midpointC: null, heatCapacityStepJPerGK: null, uncertaintyK: 25, note: 'Taken near syrup solids of DE 36.', grade: 'assumed' },
  ],
  tolerance: {
    text: '0.01 K: what the library takes is what stands here.',
    limits: [
      { column: 'recommendedC', worst: 0.01 },
    ],
  },
  notes: [
    'The recommended value follows the onset wherever the 1993 table gives one; the midpoint is 4 to 8 K higher.',
    'Sucrose, glucose and fructose were seen printed as 62, 31 and 5 in Mouritsen and Styrbæk 2017, Mouthfeel.',
    'Samples with 1 to 2 % of water left read 10 to 20 K low.',
    'Values of freeze-concentrated solutions, all below −20 °C, are another quantity.',
    'One textbook prints 100 °C for fructose, a second transition reported in the 1980s and since rejected.',
    'The address is that of Leinen and Labuza 2006.',
  ],
  check: {
    rows: 25,
    sums: {
      recommendedC: 849,
      onsetC: 497.7,
      midpointC: 520.2,
      heatCapacityStepJPerGK: 7.9,
      uncertaintyK: 203,
    },
  },
} as const satisfies EvidenceTable;
