// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Rate of acid inversion of sucrose. */
export const inversionVukovTable = {
  id: 'inversion-vukov',
  title: 'Rate of acid inversion of sucrose',
  source: {
    authors: 'Vukov, K.; as carried by Rein, P.',
    year: '1965; 2012',
    title: 'Kinetic aspects of sucrose hydrolysis, Int. Sugar J. 67:172; Cane Sugar Engineering',
    locator: 'rate equation',
  },
  grade: 'secondary',
  did: 'Seen in public model code.',
  units: {
    log10A: 'log10 of 1/min',
    a: '1/min',
    slopeK: 'K',
    activationOverRK: 'K',
    activationEnergyKJPerMol: 'kJ/mol',
  },
  constants: {
    equation: 'log10 k = 16.91 + log10(water, g/ml) − 5670/T − pH, k in 1/min',
  },
  rows: [
    { log10A: 16.91, a: 8.12831e16, slopeK: 5670, activationOverRK: 13055.7, activationEnergyKJPerMol: 108.55 },
  ],
  notes: [
    'The public code feeds water in g per 100 ml, which makes the rate a hundred times too big; published rates agree with g/ml within 26 %.',
  ],
  check: {
    rows: 1,
    sums: {
      log10A: 16.91,
      a: 8.12831e16,
      slopeK: 5670,
      activationOverRK: 13055.7,
      activationEnergyKJPerMol: 108.55,
    },
  },
} as const satisfies EvidenceTable;
