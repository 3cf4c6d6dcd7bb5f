import type { EvidenceTable } from '../../types.js';

/** What one chain adds to the dextrose equivalent. */
export const syrupDeContributionsTable = {
  id: 'syrup-de-contributions',
  title: 'What one chain adds to the dextrose equivalent',
  source: {
    authors: 'Pancoast, H.M.; Junk, W.R.',
    year: '1980',
    title: 'Handbook of Sugars, 2nd ed.',
    locator: 'factors by copper reduction',
  },
  grade: 'memory',
  did: 'Theory is arithmetic on molar masses; the copper-reduction values are recalled.',
  units: {
    degreeOfPolymerisation: 'count',
    byTheory: '% of dextrose',
    byCopper: '% of dextrose',
  },
  constants: { theory: '100 · 180.156 / (162.1406 n + 18.0153)' },
  rows: [
    { degreeOfPolymerisation: 1, byTheory: 100, byCopper: 100 },
    { degreeOfPolymerisation: 2, byTheory: 52.63, byCopper: 58 },
    { degreeOfPolymerisation: 3, byTheory: 35.71, byCopper: 39.5 },
    { degreeOfPolymerisation: 4, byTheory: 27.03, byCopper: 29.8 },
    { degreeOfPolymerisation: 5, byTheory: 21.74, byCopper: 24.2 },
    { degreeOfPolymerisation: 6, byTheory: 18.18, byCopper: 20.8 },
    { degreeOfPolymerisation: 7, byTheory: 15.62, byCopper: null },
    { degreeOfPolymerisation: 8, byTheory: 13.7, byCopper: null },
    { degreeOfPolymerisation: 9, byTheory: 12.2, byCopper: null },
    { degreeOfPolymerisation: 10, byTheory: 10.99, byCopper: null },
  ],
  tolerance: { text: 'Theory to 0.01.', limits: [{ column: 'byTheory', worst: 0.01 }] },
  notes: [
    'Johnson and Srisuthep (1975) report that pure chains of 1 to 12 follow theory.',
    'Copper methods read the longer chains about 10 % high, which is why published profiles close on the nominal value only with the copper set.',
  ],
  check: {
    rows: 10,
    sums: {
      degreeOfPolymerisation: 55,
      byTheory: 307.8,
      byCopper: 272.3,
    },
  },
} as const satisfies EvidenceTable;
