// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Why one pan shows about 20 °F of spread. */
export const practicePanSpreadTable = {
  id: 'practice-pan-spread',
  title: 'Why one pan shows about 20 °F of spread',
  source: {
    authors: 'Common practice',
    year: 'n.d.',
    title: 'Common practice of the trade',
    locator: 'none',
  },
  grade: 'practice',
  did: 'Common practice of the trade; no publication stands behind it.',
  units: { lowF: '°F of error', highF: '°F of error' },
  rows: [
    { cause: 'dial or spirit thermometer not immersed to its mark', lowF: 0, highF: -16, basis: '0.001 · exposed K · (reading − stem): 100 K of column out at 60 °C with the bulb at 150 °C reads 9 °C low' },
    { cause: 'sensor in foam or steam', lowF: -5, highF: -15, basis: 'steam at 100 °C touches the stem' },
    { cause: 'sensor on the pan base', lowF: 5, highF: 15, basis: 'the base runs 10 to 30 K above the syrup' },
    { cause: 'near the wall against a gas flame', lowF: 2, highF: 8, basis: 'trade' },
    { cause: 'lag of a slow instrument', lowF: -2, highF: -8, basis: 'time constant times rate of rise' },
    { cause: 'syrup shallower than 2.5 cm', lowF: -10, highF: 5, basis: 'the stem averages syrup and steam; a small volume reads the pan' },
    { cause: 'calibration not applied', lowF: -5, highF: 5, basis: 'trade' },
  ],
  notes: [
    'A spread of about 20 °F with the place of the probe is a fact of the trade.',
  ],
  check: {
    rows: 7,
    sums: {
      lowF: -15,
      highF: -6,
    },
  },
} as const satisfies EvidenceTable;
