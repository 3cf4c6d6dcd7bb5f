// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Detailed saccharide profiles of starch syrups. */
export const syrupProfilesDetailedTable = {
  id: 'syrup-profiles-detailed',
  title: 'Detailed saccharide profiles of starch syrups',
  source: {
    authors: 'Corn Refiners Association; Pancoast, H.M., Junk, W.R.',
    year: '1980',
    title: 'Handbook of Sugars, 2nd ed.; trade handbook of corn syrups',
    locator: 'table of carbohydrate composition',
  },
  grade: 'memory',
  did: 'Recalled and not found again.',
  units: {
    dextroseEquivalent: '0 to 100',
    dp1Percent: '% of dry substance',
    dp2Percent: '% of dry substance',
    dp3Percent: '% of dry substance',
    dp4Percent: '% of dry substance',
    dp5Percent: '% of dry substance',
    dp6Percent: '% of dry substance',
    dp7Percent: '% of dry substance',
    dp7PlusPercent: '% of dry substance',
    dp8PlusPercent: '% of dry substance',
  },
  constants: {
    dextroseEquivalentRange: { acid: [20, 63], highMaltose: [40, 50], enzyme: [45, 97] },
  },
  rows: [
    { id: 'trade-acid-30', conversion: 'acid', dextroseEquivalent: 30, dp1Percent: 10.4, dp2Percent: 9.3, dp3Percent: 8.6, dp4Percent: 8.2, dp5Percent: 7.2, dp6Percent: 6, dp7Percent: 5.2, dp7PlusPercent: null, dp8PlusPercent: 45.1, grade: 'memory' },
    { id: 'trade-acid-42', conversion: 'acid', dextroseEquivalent: 42, dp1Percent: 18.5, dp2Percent: 13.9, dp3Percent: 11.6, dp4Percent: 9.9, dp5Percent: 8.4, dp6Percent: 6.6, dp7Percent: 5.7, dp7PlusPercent: null, dp8PlusPercent: 25.4, note: 'DP1, DP2, DP3 and the sum of the rest are seen in print (secondary); the split of DP4 and longer is recalled.', grade: 'memory' },
    { id: 'trade-acid-55', conversion: 'acid', dextroseEquivalent: 55, dp1Percent: 30.8, dp2Percent: 18.1, dp3Percent: 13.2, dp4Percent: 9.5, dp5Percent: 7.2, dp6Percent: 5.1, dp7Percent: 4.2, dp7PlusPercent: null, dp8PlusPercent: 11.9, grade: 'memory' },
    { id: 'trade-high-maltose-43', conversion: 'high-maltose', dextroseEquivalent: 43, dp1Percent: 5.5, dp2Percent: 46.2, dp3Percent: 12.3, dp4Percent: 3.2, dp5Percent: 1.8, dp6Percent: 1.5, dp7Percent: null, dp7PlusPercent: 29.5, dp8PlusPercent: null, note: 'DP1, DP2, DP3 and the sum of the rest are seen in print (secondary); the split of DP4 and longer is recalled.', grade: 'memory' },
    { id: 'trade-acid-enzyme-63', conversion: 'enzyme', dextroseEquivalent: 63, dp1Percent: 38.8, dp2Percent: 28.1, dp3Percent: 13.7, dp4Percent: 4.1, dp5Percent: 4.5, dp6Percent: 2.6, dp7Percent: null, dp7PlusPercent: 8.2, dp8PlusPercent: null, note: 'One weak published row agrees (Wartman, Bridges, Eliason: 64 DE stock).', grade: 'memory' },
  ],
  tolerance: {
    text: 'Profiles sum to 100.0; makers differ by 2 points either way.',
  },
  notes: [
    'The acid 30 row rounds to the row of Belitz 2009.',
  ],
  check: {
    rows: 5,
    sums: {
      dextroseEquivalent: 233,
      dp1Percent: 104,
      dp2Percent: 115.6,
      dp3Percent: 59.4,
      dp4Percent: 34.9,
      dp5Percent: 29.1,
      dp6Percent: 21.8,
      dp7Percent: 15.1,
      dp8PlusPercent: 82.4,
      dp7PlusPercent: 37.7,
    },
    rowTotals: { columns: ['dp1Percent', 'dp2Percent', 'dp3Percent', 'dp4Percent', 'dp5Percent', 'dp6Percent', 'dp7Percent', 'dp7PlusPercent', 'dp8PlusPercent'], total: 100, within: 0.05 },
  },
} as const satisfies EvidenceTable;
