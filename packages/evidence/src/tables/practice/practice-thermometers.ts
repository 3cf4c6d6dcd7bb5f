// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Thermometers. */
export const practiceThermometersTable = {
  id: 'practice-thermometers',
  title: 'Thermometers',
  source: {
    authors: 'US Department of Agriculture, FSIS; common practice',
    year: '2008',
    title: 'Types of food thermometers',
    locator: 'list',
  },
  grade: 'mixed',
  did: 'Each row has its own grade.',
  address: 'http://www.fsis.usda.gov/wps/portal/fsis/topics/food-safety-education/teach-others/fsis-educational-campaigns/thermy/types-of-food-thermometers/CT_Index',
  units: {
    readsInLowS: 's',
    readsInHighS: 's',
    accuracyLowF: '°F either way',
    accuracyHighF: '°F either way',
  },
  rows: [
    { kind: 'liquid-in-glass candy', readsInLowS: 60, readsInHighS: 120, accuracyLowF: 2, accuracyHighF: 5, immersion: 'bulb fully covered', grade: 'practice' },
    { kind: 'dial oven-safe bimetal', readsInLowS: 60, readsInHighS: 120, accuracyLowF: 2, accuracyHighF: 5, immersion: '2 to 2.5 in', grade: 'secondary' },
    { kind: 'dial instant-read bimetal', readsInLowS: 15, readsInHighS: 20, accuracyLowF: 2, accuracyHighF: 2, immersion: '2 to 2.5 in; averages over the last 2 to 3 in of stem', grade: 'secondary' },
    { kind: 'digital thermistor', readsInLowS: 10, readsInHighS: 10, accuracyLowF: 1, accuracyHighF: 2, immersion: '0.5 in', note: 'Many stop at 300 or 450 °F: check the range.', grade: 'secondary' },
    { kind: 'thermocouple', readsInLowS: 2, readsInHighS: 5, accuracyLowF: 1, accuracyHighF: 2, immersion: '0.25 in', grade: 'secondary' },
    { kind: 'infrared', readsInLowS: null, readsInHighS: 1, accuracyLowF: 3.6, accuracyHighF: null, immersion: 'surface only', note: 'Steam, foam and skin make it unreliable on syrup.', grade: 'secondary' },
  ],
  notes: [
    'Accuracy is trade experience.',
    'Lag error is time constant times rate, the constant about a quarter of the reading time: a slow dial is 3.8 °F low at 10 °F/min, 7.5 at 20.',
    'Many probes stop at 150 to 232 °C: the target must lie 5 K below the end of the scale.',
    'One instrument, one correction: a pressure taken from its own boiling-water reading already holds its error.',
  ],
  check: {
    rows: 6,
    sums: {
      readsInLowS: 147,
      readsInHighS: 276,
      accuracyLowF: 11.6,
      accuracyHighF: 16,
    },
  },
} as const satisfies EvidenceTable;
