// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Density of candy masses. */
export const densityCandyMassTable = {
  id: 'density-candy-mass',
  title: 'Density of candy masses',
  source: {
    authors: 'Common practice',
    year: 'n.d.',
    title: 'Common practice of the trade',
    locator: 'none',
  },
  grade: 'practice',
  did: 'Common practice of the trade; no publication stands behind it.',
  units: { densityGPerMl: 'g/ml', lowGPerMl: 'g/ml', highGPerMl: 'g/ml' },
  rows: [
    { mass: 'cooled clear sugar glass, 97-99 % solids, 20 C', densityGPerMl: 1.5, lowGPerMl: 1.45, highGPerMl: 1.55 },
    { mass: 'hot clear mass, 97-98 % solids, 130-150 C', densityGPerMl: 1.45, lowGPerMl: 1.42, highGPerMl: 1.48 },
    { mass: 'isomalt glass, 20 C', densityGPerMl: 1.5, lowGPerMl: 1.48, highGPerMl: 1.52 },
    { mass: 'pulled sugar (satin)', densityGPerMl: 1.25, lowGPerMl: 1.1, highGPerMl: 1.4 },
    { mass: 'crystalline sucrose', densityGPerMl: 1.588, lowGPerMl: 1.587, highGPerMl: 1.59 },
    { mass: '42 DE syrup 80 % ds, 20 C', densityGPerMl: 1.425, lowGPerMl: 1.415, highGPerMl: 1.435 },
    { mass: 'fondant 88 % solids', densityGPerMl: 1.4, lowGPerMl: 1.36, highGPerMl: 1.43 },
  ],
  notes: [
    'The density of the crystal, 1.587 to 1.588, was seen in print; the rest is engineering estimate: weigh one piece.',
    'The solution polynomial run on gives 1.534 at 97.5 % and 20 °C, more than a glass, which stops shrinking below its transition; at 140 °C it gives 1.479.',
  ],
  check: {
    rows: 7,
    sums: {
      densityGPerMl: 10.113,
      lowGPerMl: 9.812,
      highGPerMl: 10.405,
    },
  },
} as const satisfies EvidenceTable;
