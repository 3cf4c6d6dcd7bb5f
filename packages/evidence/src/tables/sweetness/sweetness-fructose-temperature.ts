import type { EvidenceTable } from '../../types.js';

/** Sweetness of a 5 % fructose solution against temperature. */
export const sweetnessFructoseTemperatureTable = {
  id: 'sweetness-fructose-temperature',
  title: 'Sweetness of a 5 % fructose solution against temperature',
  source: {
    authors: 'Tsuzuki, Y.; Yamazaki, J.',
    year: '1953',
    title: 'Biochemische Zeitschrift 323:525',
    locator: 'as reprinted; attribution recalled',
  },
  grade: 'secondary',
  did: 'Seen in a copy or a quotation, not in the original.',
  units: {
    temperatureC: '°C',
    relativeSweetness: 'sucrose = 1 at the same temperature',
  },
  constants: { equation: '1.5632 exp(−0.011223 T)' },
  rows: [
    { temperatureC: 5, relativeSweetness: 1.47 },
    { temperatureC: 18, relativeSweetness: 1.285 },
    { temperatureC: 40, relativeSweetness: 1 },
    { temperatureC: 60, relativeSweetness: 0.795 },
  ],
  tolerance: {
    text: '0.01.',
    limits: [{ column: 'relativeSweetness', worst: 0.01 }],
  },
  notes: [
    'The largest residual of the fit is 0.008 over 5 to 60 °C.',
    'The sweetest form of fructose gives way as the solution warms.',
  ],
  check: {
    rows: 4,
    sums: {
      temperatureC: 123,
      relativeSweetness: 4.55,
    },
  },
} as const satisfies EvidenceTable;
