// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Storing and wrapping. */
export const practiceStorageTable = {
  id: 'practice-storage',
  title: 'Storing and wrapping',
  source: {
    authors: 'several',
    year: 'n.d.',
    title: 'Common practice, a university thesis and a carriage note',
    locator: 'see rows',
  },
  grade: 'mixed',
  did: 'Each row has its own grade.',
  units: {},
  rows: [
    { item: 'production room', value: 'relative humidity at most 0.45, better 0.35 to 0.40; 20 to 23 °C', grade: 'practice' },
    { item: 'store', value: 'relative humidity under 0.45, limit 0.50; 18 to 23 °C, no sun', grade: 'practice' },
    { item: 'what the room is compared with', value: 'critical humidity of the sweet: 60:40 at 25 °C 0.30; sticking starts at 0.36, full at 0.42', grade: 'derived' },
    { item: 'humidity of the sweet itself', value: 'a fact, never a threshold: computed 0.13 at 2 % water, 0.19 at 3 %; the trade quotes 0.25 to 0.35', grade: 'practice' },
    { item: 'delay before wrapping', value: 'within 30 min of reaching 10 K below the glass transition, or in closed tins with dry silica gel', grade: 'practice' },
    { item: 'film', value: 'sealed oriented polypropylene, under 5 to 7 g/(m² day) at 38 °C and 0.90, or foil for isomalt and pulled sugar; a twist counts as open', grade: 'memory' },
    { item: 'shelf life', value: 'days come from the wrap equation for sucrose glass; below the critical humidity it never sticks from the air; polyol glass has no estimate', grade: 'derived' },
    { item: 'unwrapped at 0.50 to 0.55', value: 'the skin of a 60:40 sweet grains in about half a day, give or take a decade', grade: 'derived' },
    { item: 'test of hygroscopicity', value: '8 days at 0.75; formulas of DE 9.8 and 13 take up least', grade: 'secondary' },
    { item: 'carriage', value: 'airtight, no swings of temperature', grade: 'secondary' },
  ],
  notes: [
    '200 g in a film of 5 g/(m² day) at 0.75 last 52 days by the wrap equation.',
  ],
  check: {
    rows: 10,
    sums: {
    },
  },
} as const satisfies EvidenceTable;
