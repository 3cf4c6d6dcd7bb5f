// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Saccharide profiles of starch syrups. */
export const syrupProfilesTable = {
  id: 'syrup-profiles',
  title: 'Saccharide profiles of starch syrups',
  source: {
    authors: 'Belitz, H.-D.; Grosch, W.; Schieberle, P.',
    year: '2009',
    title: 'Food Chemistry, 4th ed.',
    locator: 'Table 19.7',
  },
  grade: 'primary',
  did: 'Read in the publication itself.',
  units: {
    dextroseEquivalent: '0 to 100',
    dp1Percent: '% of dry substance',
    dp2Percent: '% of dry substance',
    dp3Percent: '% of dry substance',
    dp4PlusPercent: '% of dry substance',
  },
  constants: {
    dextroseEquivalentRange: { acid: [20, 63], highMaltose: [40, 50], enzyme: [45, 97] },
  },
  rows: [
    { id: 'belitz-acid-30', conversion: 'acid', dextroseEquivalent: 30, dp1Percent: 10, dp2Percent: 9, dp3Percent: 9, dp4PlusPercent: 72 },
    { id: 'belitz-acid-60', conversion: 'acid', dextroseEquivalent: 60, dp1Percent: 36, dp2Percent: 20, dp3Percent: 13, dp4PlusPercent: 31 },
    { id: 'belitz-enzyme-45', conversion: 'enzyme', dextroseEquivalent: 45, dp1Percent: 5, dp2Percent: 50, dp3Percent: 20, dp4PlusPercent: 25 },
    { id: 'belitz-enzyme-65', conversion: 'enzyme', dextroseEquivalent: 65, dp1Percent: 39, dp2Percent: 35, dp3Percent: 11, dp4PlusPercent: 15 },
    { id: 'belitz-enzyme-97', conversion: 'enzyme', dextroseEquivalent: 97, dp1Percent: 96, dp2Percent: 2, dp3Percent: 0, dp4PlusPercent: 2 },
  ],
  tolerance: { text: 'Profiles sum to 100.' },
  notes: [
    'Rounded to whole per cent in the source; the dash at DP3 of the 97 row is read as 0.',
    'The same table gives sweetness of hydrolysates as 25 to 50 % of sucrose.',
  ],
  check: {
    rows: 5,
    sums: {
      dextroseEquivalent: 297,
      dp1Percent: 186,
      dp2Percent: 116,
      dp3Percent: 53,
      dp4PlusPercent: 145,
    },
    rowTotals: { columns: ['dp1Percent', 'dp2Percent', 'dp3Percent', 'dp4PlusPercent'], total: 100, within: 0 },
  },
} as const satisfies EvidenceTable;
