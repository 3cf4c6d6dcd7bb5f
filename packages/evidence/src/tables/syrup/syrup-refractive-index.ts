// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Refractive index of glucose syrup against dry matter. */
export const syrupRefractiveIndexTable = {
  id: 'syrup-refractive-index',
  title: 'Refractive index of glucose syrup against dry matter',
  source: {
    authors: 'ISO',
    year: '1982',
    title: 'ISO 1743 Glucose syrup: determination of dry matter, refractive index method',
    locator: 'first table of the annex',
  },
  grade: 'secondary',
  did: 'Seen in an identical national standard.',
  units: {
    drySolidsPercent: '% m/m',
    indexAt20C: 'nD',
    indexAt30C: 'nD',
    indexAt45C: 'nD',
    indexAt60C: 'nD',
  },
  constants: {
    equation: 'n = 1.332977 + 0.149488 w + 0.0589594 w² + 0.0115857 w³ + 0.00981583 w⁴ + t (−9.47015e-5 − 1.472218e-4 w + 2.50774e-5 w²) + t² (−1.221909e-6 + 8.91245e-7 w + 3.38428e-7 w²); t = T − 20, w 0 to 1',
  },
  rows: [
    { drySolidsPercent: 0, indexAt20C: 1.33299, indexAt30C: 1.33194, indexAt45C: 1.32985, indexAt60C: 1.32725 },
    { drySolidsPercent: 4, indexAt20C: 1.33904, indexAt30C: 1.33793, indexAt45C: 1.33578, indexAt60C: 1.33313 },
    { drySolidsPercent: 8, indexAt20C: 1.34531, indexAt30C: 1.34415, indexAt45C: 1.34193, indexAt60C: 1.33923 },
    { drySolidsPercent: 12, indexAt20C: 1.35178, indexAt30C: 1.35057, indexAt45C: 1.34829, indexAt60C: 1.34554 },
    { drySolidsPercent: 16, indexAt20C: 1.35846, indexAt30C: 1.35719, indexAt45C: 1.35484, indexAt60C: 1.35205 },
    { drySolidsPercent: 20, indexAt20C: 1.36534, indexAt30C: 1.36402, indexAt45C: 1.36161, indexAt60C: 1.35877 },
    { drySolidsPercent: 24, indexAt20C: 1.37244, indexAt30C: 1.37107, indexAt45C: 1.3686, indexAt60C: 1.36572 },
    { drySolidsPercent: 28, indexAt20C: 1.37976, indexAt30C: 1.37835, indexAt45C: 1.37582, indexAt60C: 1.3729 },
    { drySolidsPercent: 32, indexAt20C: 1.38733, indexAt30C: 1.38586, indexAt45C: 1.38328, indexAt60C: 1.38032 },
    { drySolidsPercent: 36, indexAt20C: 1.39513, indexAt30C: 1.39362, indexAt45C: 1.39098, indexAt60C: 1.38799 },
    { drySolidsPercent: 40, indexAt20C: 1.40319, indexAt30C: 1.40163, indexAt45C: 1.39894, indexAt60C: 1.39592 },
    { drySolidsPercent: 44, indexAt20C: 1.41152, indexAt30C: 1.40991, indexAt45C: 1.40717, indexAt60C: 1.40411 },
    { drySolidsPercent: 48, indexAt20C: 1.42011, indexAt30C: 1.41846, indexAt45C: 1.41567, indexAt60C: 1.41259 },
    { drySolidsPercent: 52, indexAt20C: 1.429, indexAt30C: 1.4273, indexAt45C: 1.42447, indexAt60C: 1.42136 },
    { drySolidsPercent: 56, indexAt20C: 1.43818, indexAt30C: 1.43643, indexAt45C: 1.43356, indexAt60C: 1.43042 },
    { drySolidsPercent: 60, indexAt20C: 1.44767, indexAt30C: 1.44588, indexAt45C: 1.44296, indexAt60C: 1.43981 },
    { drySolidsPercent: 64, indexAt20C: 1.45748, indexAt30C: 1.45565, indexAt45C: 1.45269, indexAt60C: 1.44952 },
  ],
  tolerance: {
    text: '0.00005.',
    limits: [
      { column: 'indexAt20C', worst: 5e-5 },
      { column: 'indexAt30C', worst: 5e-5 },
      { column: 'indexAt45C', worst: 5e-5 },
      { column: 'indexAt60C', worst: 5e-5 },
    ],
  },
  notes: [
    'The copy did not show which class of syrup this table is for; its distance from sucrose, +2.5 Brix at 60 %, marks a low dextrose equivalent.',
    'One further printed value, 1.46768 at 66 % and 45 °C, is a misprint for 1.45768.',
    'The equation is an own fit, within 0.000032 over 0 to 66 % and 20 to 60 °C.',
  ],
  smooth: [
    { x: 'drySolidsPercent', y: 'indexAt20C' },
    { x: 'drySolidsPercent', y: 'indexAt30C' },
    { x: 'drySolidsPercent', y: 'indexAt45C' },
    { x: 'drySolidsPercent', y: 'indexAt60C' },
  ],
  check: {
    rows: 17,
    sums: {
      drySolidsPercent: 544,
      indexAt20C: 23.63473,
      indexAt30C: 23.60996,
      indexAt45C: 23.56644,
      indexAt60C: 23.51663,
    },
  },
} as const satisfies EvidenceTable;
