// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Stages of sugar heated without water. */
export const stagesMeltTable = {
  id: 'stages-melt',
  title: 'Stages of sugar heated without water',
  source: {
    authors: 'McGee, H.; Lee, J.W., Thomas, L.C., Schmidt, S.J.',
    year: '2004; 2011',
    title: 'On Food and Cooking; J. Agric. Food Chem.',
    locator: 'sugar work; apparent melting of sucrose',
  },
  grade: 'mixed',
  did: 'Each row has its own grade.',
  units: { lowC: '°C', highC: '°C', valueF: '°F' },
  rows: [
    { state: 'crystal', lowC: 20, highC: 150, valueF: null, what: 'dry crystal; may break down slowly long before it turns liquid', grade: 'memory' },
    { state: 'clear-liquid', lowC: 160, highC: 160, valueF: 320, what: 'crystals give way to a colourless liquid', grade: 'secondary' },
    { state: 'brown-liquid light', lowC: 170, highC: 170, valueF: 340, what: 'light caramel', grade: 'secondary' },
    { state: 'brown-liquid medium', lowC: 181, highC: 181, valueF: 358, what: 'medium caramel', grade: 'secondary' },
    { state: 'brown-liquid dark', lowC: 192, highC: 192, valueF: 378, what: 'dark caramel', grade: 'secondary' },
    { state: 'black', lowC: 210, highC: 210, valueF: 410, what: 'black caramel, for colouring only', grade: 'secondary' },
    { state: 'literature melting point (fast heating)', lowC: 186, highC: 186, valueF: 367, what: 'handbook value for fast heating', grade: 'memory' },
  ],
  notes: [
    'Sucrose has no single melting point: its crystals give way while it breaks down, at a temperature that rises with the heating rate.',
    'Household charts print black at 350 °F, one book at 410 °F: colour is time at temperature.',
  ],
  check: {
    rows: 7,
    sums: {
      lowC: 1119,
      highC: 1249,
      valueF: 2173,
    },
  },
} as const satisfies EvidenceTable;
