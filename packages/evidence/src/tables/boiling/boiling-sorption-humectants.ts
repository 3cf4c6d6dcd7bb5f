// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Water held by amorphous sugars at a given water activity. */
export const boilingSorptionHumectantsTable = {
  id: 'boiling-sorption-humectants',
  title: 'Water held by amorphous sugars at a given water activity',
  source: {
    authors: 'Sloan, A.E.; Labuza, T.P.',
    year: '1975',
    title: 'Investigating alternative humectants for use in foods, Food Product Development 9(7):75',
    locator: 'as reproduced in a thesis, Table 3.1',
  },
  grade: 'secondary',
  did: 'Seen in a copy or a quotation, not in the original.',
  units: {
    waterAtActivity060GPer100G: 'g water per 100 g solids',
    waterAtActivity070GPer100G: 'g water per 100 g solids',
    waterAtActivity080GPer100G: 'g water per 100 g solids',
    waterAtActivity090GPer100G: 'g water per 100 g solids',
  },
  rows: [
    { solute: 'sucrose', waterAtActivity060GPer100G: 14, waterAtActivity070GPer100G: 20, waterAtActivity080GPer100G: 35, waterAtActivity090GPer100G: 65 },
    { solute: 'sorbitol', waterAtActivity060GPer100G: 25, waterAtActivity070GPer100G: 35, waterAtActivity080GPer100G: 55, waterAtActivity090GPer100G: 110 },
    { solute: 'corn syrup', waterAtActivity060GPer100G: 14, waterAtActivity070GPer100G: 20, waterAtActivity080GPer100G: 30, waterAtActivity090GPer100G: 54 },
    { solute: 'fructose', waterAtActivity060GPer100G: 18, waterAtActivity070GPer100G: 30, waterAtActivity080GPer100G: 44, waterAtActivity090GPer100G: 80 },
  ],
  notes: [
    'About 25 °C.',
    'Amorphous sucrose crystallises near a water activity of 0.6, so its first point is not an equilibrium.',
    'The fructose row lies 0.03 to 0.11 above its own Norrish curve.',
  ],
  check: {
    rows: 4,
    sums: {
      waterAtActivity060GPer100G: 71,
      waterAtActivity070GPer100G: 105,
      waterAtActivity080GPer100G: 164,
      waterAtActivity090GPer100G: 309,
    },
  },
} as const satisfies EvidenceTable;
