// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Dextrose equivalent worked out from a profile. */
export const syrupDeFromProfileChecksTable = {
  id: 'syrup-de-from-profile-checks',
  title: 'Dextrose equivalent worked out from a profile',
  source: {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Own fit on the profiles of Belitz 2009 and of the trade table',
    locator: 'rule stated in the notes',
  },
  grade: 'derived',
  did: 'Computed here.',
  units: {
    nominalDextroseEquivalent: '0 to 100',
    dp1To3Weighted: '0 to 100',
    computedDextroseEquivalent: '0 to 100',
    error: 'points',
  },
  constants: {
    acid: 'DE = (S + 0.08 H)/(1 − 0.0026 H)',
    enzyme: 'DE = S + 0.13 H',
    s: 'S = DP1 + 0.58 DP2 + 0.395 DP3, H = DP4 and longer, % of dry substance',
  },
  rows: [
    { id: 'belitz-acid-30', nominalDextroseEquivalent: 30, dp1To3Weighted: 18.77, computedDextroseEquivalent: 30.2, error: 0.2 },
    { id: 'belitz-acid-60', nominalDextroseEquivalent: 60, dp1To3Weighted: 52.73, computedDextroseEquivalent: 60.1, error: 0.1 },
    { id: 'belitz-enzyme-45', nominalDextroseEquivalent: 45, dp1To3Weighted: 41.9, computedDextroseEquivalent: 45.1, error: 0.1 },
    { id: 'belitz-enzyme-65', nominalDextroseEquivalent: 65, dp1To3Weighted: 63.64, computedDextroseEquivalent: 65.6, error: 0.6 },
    { id: 'trade-acid-42', nominalDextroseEquivalent: 42, dp1To3Weighted: 31.14, computedDextroseEquivalent: 41.7, error: -0.3 },
    { id: 'trade-acid-55', nominalDextroseEquivalent: 55, dp1To3Weighted: 46.51, computedDextroseEquivalent: 55, error: 0 },
    { id: 'trade-high-maltose-43', nominalDextroseEquivalent: 43, dp1To3Weighted: 37.15, computedDextroseEquivalent: 41.8, error: -1.2 },
    { id: 'trade-acid-enzyme-63', nominalDextroseEquivalent: 63, dp1To3Weighted: 60.51, computedDextroseEquivalent: 63, error: 0 },
  ],
  tolerance: {
    text: '1.3 points from the nominal value, 0.05 and rounding from the computed one.',
    limits: [
      { column: 'nominalDextroseEquivalent', worst: 1.3 },
      { column: 'computedDextroseEquivalent', worst: 0.06 },
    ],
  },
  notes: [
    'Acid: DE 20 to 63. Enzyme or acid and enzyme: DE 40 to 97.',
    'The largest error, 1.2 points, is the high-maltose row.',
  ],
  check: {
    rows: 8,
    sums: {
      nominalDextroseEquivalent: 403,
      dp1To3Weighted: 352.35,
      computedDextroseEquivalent: 402.5,
      error: -0.5,
    },
  },
} as const satisfies EvidenceTable;
