import type { EvidenceTable } from '../../types.js';

/** How other solutes change the saturation of sucrose. */
export const grainingSaturationTable = {
  id: 'graining-saturation',
  title: 'How other solutes change the saturation of sucrose',
  source: {
    authors: 'Wiklund, O.; Vavrinecz, G.; ICUMSA',
    year: '1938 to 1962',
    title: 'Saturation coefficient of impure sucrose solutions',
    locator: 'y = a q + b + (1 − b) exp(−c q)',
  },
  grade: 'secondary',
  did: 'Seen in public sugar-factory model code.',
  units: {
    nonSucroseGPerGWater: 'g/g',
    saturationLinear: 'ratio to pure sucrose',
    totalSolidsAt20CPercent: '% m/m',
  },
  constants: {
    default: { a: -0.06265, b: 0.982, c: 2.1 },
    caneMill: { a: -0.067, b: 0.96, c: 2.8 },
    linear: '1 − 0.088 q',
    atQ3: { linear: 0.736, long: 0.794 },
    zones: [
      { from: 1, to: 1.2, what: 'crystals grow, no new nuclei' },
      { from: 1.2, to: 1.3, what: 'new nuclei where crystals are' },
      { from: 1.3, to: null, what: 'nuclei by themselves' },
    ],
  },
  rows: [
    { nonSucroseGPerGWater: 0.25, saturationLinear: 0.978, totalSolidsAt20CPercent: 68.9 },
    { nonSucroseGPerGWater: 0.5, saturationLinear: 0.956, totalSolidsAt20CPercent: 70.7 },
    { nonSucroseGPerGWater: 1, saturationLinear: 0.912, totalSolidsAt20CPercent: 73.9 },
    { nonSucroseGPerGWater: 1.5, saturationLinear: 0.868, totalSolidsAt20CPercent: 76.4 },
    { nonSucroseGPerGWater: 2, saturationLinear: 0.824, totalSolidsAt20CPercent: 78.5 },
    { nonSucroseGPerGWater: 3, saturationLinear: 0.736, totalSolidsAt20CPercent: null },
  ],
  tolerance: {
    text: '0.1 points of total solids by the linear form; the forms differ by up to 0.3 at 2.',
    limits: [{ column: 'totalSolidsAt20CPercent', worst: 0.1 }],
  },
  notes: [
    'Fitted to cane molasses; a stand-in for invert and glucose syrup.',
    'Valid to 3 g of non-sucrose per g of water; hard candy has 15 to 20, where the forms pass through zero, so the amount is held at 3.',
    'The zones are recalled.',
  ],
  check: {
    rows: 6,
    sums: {
      nonSucroseGPerGWater: 8.25,
      saturationLinear: 5.274,
      totalSolidsAt20CPercent: 368.4,
    },
  },
} as const satisfies EvidenceTable;
