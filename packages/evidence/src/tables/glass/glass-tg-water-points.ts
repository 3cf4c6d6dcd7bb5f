// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Measured glass transitions with water. */
export const glassTgWaterPointsTable = {
  id: 'glass-tg-water-points',
  title: 'Measured glass transitions with water',
  source: {
    authors: 'Roos, Y.H.; Lievonen, S., Laaksonen, T., Roos, Y.H.',
    year: '2002; 1998',
    title: 'Importance of glass transition and water activity to spray drying and stability of dairy powders; Glass transition and reaction rates',
    locator: 'Lait 82:475-484, abstract; J. Agric. Food Chem. 46:2778-2784, abstract',
  },
  grade: 'secondary',
  did: 'Seen in a copy or a quotation, not in the original.',
  units: {
    waterGPer100GSolids: 'g per 100 g solids',
    waterActivity: '0 to 1',
    glassTransitionC: '°C',
  },
  rows: [
    { system: 'amorphous lactose', waterGPer100GSolids: 6.8, waterActivity: 0.37, glassTransitionC: 25, note: 'Printed as the vicinity of room temperature, taken as 25 °C.' },
    { system: 'maltodextrin', waterGPer100GSolids: 8.2, waterActivity: 0.33, glassTransitionC: 62, note: 'The dextrose equivalent is taken as 10. With the published dry value of 160 °C put in by hand the model gives 62.7.' },
  ],
  tolerance: { text: '4 K.', limits: [{ column: 'glassTransitionC', worst: 4 }] },
  check: {
    rows: 2,
    sums: {
      waterGPer100GSolids: 15,
      waterActivity: 0.7,
      glassTransitionC: 87,
    },
  },
} as const satisfies EvidenceTable;
