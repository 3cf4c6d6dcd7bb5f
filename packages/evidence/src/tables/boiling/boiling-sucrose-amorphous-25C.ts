import type { EvidenceTable } from '../../types.js';

/** Water activity of amorphous sucrose near dryness, 25 °C. */
export const boilingSucroseAmorphous25CTable = {
  id: 'boiling-sucrose-amorphous-25C',
  title: 'Water activity of amorphous sucrose near dryness, 25 °C',
  source: {
    authors: 'Makower, B.; Dye, W.B.',
    year: '1956',
    title:
      'Equilibrium moisture content and crystallization of amorphous sucrose and glucose, J. Agric. Food Chem. 4:72',
    locator: 'low-water end of the isotherm',
  },
  grade: 'memory',
  did: 'Recalled and not found again.',
  units: { waterGPer100GSolids: 'g per 100 g solids', waterActivity: '0 to 1' },
  rows: [
    { waterGPer100GSolids: 1, waterActivity: 0.055 },
    { waterGPer100GSolids: 2, waterActivity: 0.105 },
    { waterGPer100GSolids: 3, waterActivity: 0.16 },
    { waterGPer100GSolids: 4, waterActivity: 0.22 },
    { waterGPer100GSolids: 5, waterActivity: 0.27 },
  ],
  tolerance: {
    text: 'Shown, not gated: five of the points the boiling model was fitted to.',
  },
  notes: ['Recalled to about half a per cent of relative humidity.'],
  check: {
    rows: 5,
    sums: {
      waterGPer100GSolids: 15,
      waterActivity: 0.81,
    },
  },
} as const satisfies EvidenceTable;
