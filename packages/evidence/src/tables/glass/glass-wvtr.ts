// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Water vapour through packaging films at 38 °C and 0.90 relative humidity. */
export const glassWvtrTable = {
  id: 'glass-wvtr',
  title: 'Water vapour through packaging films at 38 °C and 0.90 relative humidity',
  source: {
    authors: 'several',
    year: '1999 to 2019',
    title: 'Food Package Engineering, in an engineering handbook; Materials 12(3):471; Journal of Plastic Film and Sheeting 15(1)',
    locator: 'Table 11.2; Table 1; abstract',
  },
  grade: 'mixed',
  did: 'Each row has its own grade.',
  address: 'https://pmc.ncbi.nlm.nih.gov/articles/PMC6384613/table/materials-12-00471-t001',
  units: { lowGPerM2Day: 'g/(m² day)', highGPerM2Day: 'g/(m² day)' },
  rows: [
    { film: 'LDPE 25 µm', lowGPerM2Day: 15.5, highGPerM2Day: 31, publication: 'engineering handbook', grade: 'secondary' },
    { film: 'LDPE', lowGPerM2Day: 10, highGPerM2Day: 20, publication: 'review 2019', grade: 'secondary' },
    { film: 'HDPE 25 µm', lowGPerM2Day: 4.7, highGPerM2Day: 9.3, publication: 'engineering handbook', grade: 'secondary' },
    { film: 'HDPE', lowGPerM2Day: 7, highGPerM2Day: 10, publication: 'review 2019', grade: 'secondary' },
    { film: 'cast PP 25 µm', lowGPerM2Day: 9.3, highGPerM2Day: 10.9, publication: 'engineering handbook', grade: 'secondary' },
    { film: 'PP', lowGPerM2Day: 10, highGPerM2Day: 12, publication: 'review 2019', grade: 'secondary' },
    { film: 'oriented PP 25 µm', lowGPerM2Day: 3.1, highGPerM2Day: 7.8, publication: 'engineering handbook', grade: 'secondary' },
    { film: 'oriented PP laminates (biscuit wraps)', lowGPerM2Day: 2.3, highGPerM2Day: 4, publication: 'biscuit wraps 1999', grade: 'secondary' },
    { film: 'metallised oriented PP laminates', lowGPerM2Day: 0.5, highGPerM2Day: 1, publication: 'biscuit wraps 1999', grade: 'secondary' },
    { film: 'PET 25 µm', lowGPerM2Day: 15.5, highGPerM2Day: 31, publication: 'engineering handbook', grade: 'secondary' },
    { film: 'PET', lowGPerM2Day: 15, highGPerM2Day: 20, publication: 'review 2019', grade: 'secondary' },
    { film: 'PVDC 25 µm', lowGPerM2Day: 0.3, highGPerM2Day: 9.3, publication: 'engineering handbook', grade: 'secondary' },
    { film: 'polystyrene 25 µm', lowGPerM2Day: 108, highGPerM2Day: 155, publication: 'engineering handbook', grade: 'secondary' },
    { film: 'nylon 6 25 µm', lowGPerM2Day: 155, highGPerM2Day: 310, publication: 'engineering handbook', grade: 'secondary' },
    { film: 'HDPE/EVA/PVDC/EVA multilayer', lowGPerM2Day: 2.3, highGPerM2Day: 2.3, publication: 'engineering handbook', grade: 'secondary' },
    { film: 'PVDC-coated cellulose', lowGPerM2Day: 7, highGPerM2Day: 15, publication: 'none', grade: 'memory' },
    { film: 'aluminium foil laminate, unflexed', lowGPerM2Day: 0, highGPerM2Day: 0.1, publication: 'none', grade: 'memory' },
    { film: 'waxed paper', lowGPerM2Day: 10, highGPerM2Day: 100, publication: 'none', grade: 'memory' },
    { film: 'uncoated paper or cellulose film', lowGPerM2Day: 300, highGPerM2Day: 2000, publication: 'none', grade: 'memory' },
  ],
  notes: [
    'For 25 µm unless said.',
    '1 g mil/(100 in² day) is 15.5 g/(m² day).',
    'At a fixed humidity it falls about with the thickness.',
    'Leaking seals raised the transmission of packs to 1.1 to 3.0 times that of the film.',
    'Twist wraps are not sealed: they count as open.',
  ],
  check: {
    rows: 19,
    sums: {
      lowGPerM2Day: 675.5,
      highGPerM2Day: 2748.7,
    },
  },
} as const satisfies EvidenceTable;
