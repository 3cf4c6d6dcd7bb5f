// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Pressure at the pan from the pressure reduced to sea level. */
export const boilingPressureReductionTable = {
  id: 'boiling-pressure-reduction',
  title: 'Pressure at the pan from the pressure reduced to sea level',
  source: {
    authors: 'Smithsonian Meteorological Tables, as given by a US atmospheric research archive',
    year: 'n.d.',
    title: 'Aeronautical pressure correction',
    locator: 'formula',
  },
  grade: 'derived',
  did: 'The formula was seen on a research archive page; the rows are its exact inverse.',
  address: 'http://archive.eol.ucar.edu/weather/weather_nsf/prescorr.html',
  units: {
    elevationM: 'm',
    seaLevelPressureHPa: 'hPa',
    stationPressureHPa: 'hPa',
    waterBoilingPointC: '°C',
  },
  constants: {
    equation: 'QNH = p · (1 + 8.4229e-5 · h / p^0.19028)^5.2553, p in hPa, h in m',
    inverseExponent: 0.190284,
    inverseCoefficient: 8.4228807e-5,
  },
  rows: [
    { elevationM: 0, seaLevelPressureHPa: 1013.25, stationPressureHPa: 1013.25, waterBoilingPointC: 99.97 },
    { elevationM: 500, seaLevelPressureHPa: 1000, stationPressureHPa: 941.96, waterBoilingPointC: 97.94 },
    { elevationM: 1000, seaLevelPressureHPa: 1013.25, stationPressureHPa: 898.7, waterBoilingPointC: 96.65 },
    { elevationM: 1609, seaLevelPressureHPa: 1013.25, stationPressureHPa: 834.24, waterBoilingPointC: 94.62 },
    { elevationM: 1609, seaLevelPressureHPa: 1030, stationPressureHPa: 848.56, waterBoilingPointC: 95.08 },
    { elevationM: 1609, seaLevelPressureHPa: 990, stationPressureHPa: 814.39, waterBoilingPointC: 93.97 },
    { elevationM: 2240, seaLevelPressureHPa: 1015, stationPressureHPa: 772.86, waterBoilingPointC: 92.56 },
    { elevationM: 3000, seaLevelPressureHPa: 1013.25, stationPressureHPa: 700.97, waterBoilingPointC: 89.97 },
  ],
  tolerance: {
    text: '1 hPa and 0.03 °C against scaling by the standard atmosphere, which is what the library does.',
    limits: [
      { column: 'stationPressureHPa', worst: 1 },
      { column: 'waterBoilingPointC', worst: 0.03 },
    ],
  },
  notes: [
    'A sea-level pressure that is not meant for aviation uses the real air temperature and differs by up to 10 hPa.',
  ],
  check: {
    rows: 8,
    sums: {
      elevationM: 11567,
      seaLevelPressureHPa: 8088,
      stationPressureHPa: 6824.93,
      waterBoilingPointC: 760.76,
    },
  },
} as const satisfies EvidenceTable;
