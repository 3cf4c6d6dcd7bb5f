import type { EvidenceTable } from '../../types.js';

/** Where textbooks let caramelising begin. */
export const inversionCaramelOnsetTable = {
  id: 'inversion-caramel-onset',
  title: 'Where textbooks let caramelising begin',
  source: {
    authors: 'textbooks; McGee, H.',
    year: '2004',
    title: 'On Food and Cooking, 2nd ed., second column',
    locator: 'p. 656',
  },
  grade: 'secondary',
  did: 'Seen in a copy or a quotation, not in the original.',
  units: { onsetC: '°C', mcgeeC: '°C' },
  rows: [
    { sugar: 'fructose', onsetC: 110, mcgeeC: 105 },
    { sugar: 'galactose', onsetC: 160, mcgeeC: null },
    { sugar: 'glucose', onsetC: 160, mcgeeC: 150 },
    { sugar: 'maltose', onsetC: 180, mcgeeC: null },
    { sugar: 'sucrose', onsetC: 160, mcgeeC: 170 },
  ],
  notes: [
    'Rules of thumb: browning is a rate, with no threshold.',
    'Kroh (1994): caramelising needs more than 120 °C, or a pH under 3 or over 9; the Maillard reaction runs from about 50 °C.',
  ],
  check: {
    rows: 5,
    sums: {
      onsetC: 770,
      mcgeeC: 425,
    },
  },
} as const satisfies EvidenceTable;
