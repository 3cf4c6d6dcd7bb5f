// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Sorption isotherms of amorphous sugars at 25 °C. */
export const glassSorptionTable = {
  id: 'glass-sorption',
  title: 'Sorption isotherms of amorphous sugars at 25 °C',
  source: {
    authors: 'Zobrist and others; Sloan, Labuza; Bronlund, Paterson',
    year: '2011; 1975; 2004',
    title: 'Ultra-slow water diffusion in aqueous sucrose glasses; Investigating alternative humectants; Moisture sorption isotherms for crystalline and amorphous lactose',
    locator: 'PCCP 13:3514; Food Product Development; Int. Dairy J. 14:247',
  },
  grade: 'mixed',
  did: 'Each row has its own grade.',
  units: {
    m0GPer100G: 'g water per 100 g dry solids',
    c: 'dimensionless',
    k: 'dimensionless',
  },
  constants: {
    equation: 'm = m0 C K aw / ((1 − K aw)(1 − K aw + C K aw))',
    zobrist: { form: 'aw = (1 + a w)/(1 + b w + c w²) + (T − Tref)(d w + e w² + f w³ + g w⁴)', a: -1, b: -0.99721, c: 0.13599, d: 0.001688, e: -0.005151, f: 0.009607, g: -0.006142, referenceTemperatureK: 298.15, rangeK: [160, 310] },
  },
  rows: [
    { material: 'sucrose', m0GPer100G: 13.661, c: 1.1033, k: 0.9248, validFrom: '0.05 to 0.80', grade: 'derived' },
    { material: 'glucose-syrup solids', m0GPer100G: 8.221, c: 2.012, k: 0.955, validFrom: '0.60 to 0.90; run on below', grade: 'derived' },
    { material: 'sorbitol', m0GPer100G: 12.174, c: 3.289, k: 0.993, validFrom: '0.60 to 0.90; run on below', grade: 'derived' },
    { material: 'amorphous lactose', m0GPer100G: 4.91, c: 4.33, k: 1.16, validFrom: 'below crystallisation', grade: 'memory' },
  ],
  tolerance: {
    text: 'Fit against its source: sucrose 0.4 %, glucose syrup 0.6 %, sorbitol 0.5 %.',
  },
  extra: {
    data: [
      { material: 'glucose syrup', waterActivity: [0.6, 0.7, 0.8, 0.9], waterGPer100G: [14, 20, 30, 54] },
      { material: 'sorbitol', waterActivity: [0.6, 0.7, 0.8, 0.9], waterGPer100G: [25, 35, 55, 110] },
      { material: 'maltodextrin', waterActivity: [0.33], waterGPer100G: [8.2] },
    ],
  },
  notes: [
    'The sucrose row is an own fit to the Zobrist form, the next two to four seen rows each.',
    'With the constants as rounded here, glucose syrup and sorbitol lie 0.66 % off at most, a little more than stated.',
    'Mixtures add by dry mass: m = Σ x m.',
    'For isomalt none was found; the sucrose curve stands in. Crystalline isomalt takes up no water until about 0.85 at 25 °C.',
    'Meant for 15 to 35 °C; lactose gives 6.6 g at 0.37 against 6.8 published.',
  ],
  check: {
    rows: 4,
    sums: {
      m0GPer100G: 38.966,
      c: 10.7343,
      k: 4.0328,
    },
  },
} as const satisfies EvidenceTable;
