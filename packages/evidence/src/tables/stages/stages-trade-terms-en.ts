import type { EvidenceTable } from '../../types.js';

/** Older English names of the stages. */
export const stagesTradeTermsEnTable = {
  id: 'stages-trade-terms-en',
  title: 'Older English names of the stages',
  source: {
    authors: 'Common practice',
    year: 'n.d.',
    title: 'Trade usage',
    locator: 'none',
  },
  grade: 'practice',
  did: 'Common practice of the trade; no publication stands behind it.',
  units: { typicalF: '°F' },
  rows: [
    { olderName: 'small thread', stage: 'below thread', typicalF: 215 },
    { olderName: 'large thread', stage: 'below thread', typicalF: 217 },
    { olderName: 'pearl', stage: 'below thread', typicalF: 220 },
    { olderName: 'large pearl', stage: 'below thread', typicalF: 222 },
    { olderName: 'blow', stage: 'thread', typicalF: 230 },
    { olderName: 'feather', stage: 'thread', typicalF: 232 },
    { olderName: 'small ball', stage: 'soft-ball', typicalF: 237 },
    { olderName: 'stiff ball / medium ball', stage: 'firm-ball', typicalF: 244 },
    { olderName: 'large ball', stage: 'firm-ball to hard-ball', typicalF: 247 },
    { olderName: 'light crack', stage: 'hard-ball to soft-crack', typicalF: 264 },
    { olderName: 'small crack / medium crack', stage: 'soft-crack', typicalF: 280 },
    { olderName: 'crack', stage: 'hard-crack', typicalF: 310 },
    { olderName: 'extra hard crack', stage: 'clear-liquid', typicalF: 330 },
    { olderName: 'caramel', stage: 'brown-liquid', typicalF: 348 },
  ],
  notes: ['Labels only; nothing is computed from them.'],
  check: {
    rows: 14,
    sums: {
      typicalF: 3596,
    },
  },
} as const satisfies EvidenceTable;
