// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** When sugar glass grained in experiments. */
export const grainingAnchorsTable = {
  id: 'graining-anchors',
  title: 'When sugar glass grained in experiments',
  source: {
    authors: 'several',
    year: '1994 to 2015',
    title: 'Named in each row',
    locator: 'abstracts',
  },
  grade: 'mixed',
  did: 'Each row has its own grade.',
  units: {
    relativeHumidityPercent: '%',
    observedFromDays: 'days',
    observedToDays: 'days',
  },
  rows: [
    { id: 'cotton-25C-11RH', relativeHumidityPercent: 11, observedFromDays: 365, observedToDays: null, observed: 'spun sucrose, 25 °C, 0 and 11 % relative humidity: stable for at least 12 months', publication: 'Labuza and Labuza 2004, J. Food Process. Preserv. 28', grade: 'secondary' },
    { id: 'cotton-25C-33RH', relativeHumidityPercent: 33, observedFromDays: null, observedToDays: 3, observed: '33 %: collapsed and crystallised within 3 days', publication: 'Labuza and Labuza 2004', grade: 'secondary' },
    { id: 'cotton-25C-45-75RH', relativeHumidityPercent: 45, observedFromDays: null, observedToDays: 1, observed: '45, 54 and 75 %: under 1 day', publication: 'Labuza and Labuza 2004', grade: 'secondary' },
    { id: 'growth-63DE-14', observed: 'sucrose with 14 % of DE 63 syrup, 40 to 120 °C, 3.75 to 16.75 % water: growth 5.6 to 3400 µm²/min', publication: 'thin-film study, 2015', grade: 'secondary' },
    { id: 'growth-63DE-30', observed: 'the same with 30 % syrup: 1.8 to 470 µm²/min', publication: 'thin-film study, 2015', grade: 'secondary' },
    { id: 'additives-1-10', observed: '1 to 10 % raffinose, lactose or trehalose greatly lengthen the wait at 30 °C and 32.4 %', publication: 'Saleki-Gerhardt and Zografi 1994, Pharm. Res. 11:1166', grade: 'secondary' },
    { id: 'supersat-solutions', observed: 'supersaturated solutions at 20 and 35 °C: pure within a day; with glucose or glucose syrup within a week; with lactose within a month; with fructose hardly', publication: 'isothermal calorimetry study', grade: 'secondary' },
    { id: 'moisture-induced-40-80RH', observed: 'amorphous sucrose crystallises at 40 to 80 %, sooner the damper', publication: 'Yu, Kappes, Bello-Perez and Schmidt 2007, J. Food Sci. 72, abstract', grade: 'primary' },
  ],
  tolerance: {
    text: 'Within an order of magnitude of what was observed at 11, 33 and 45 to 75 %.',
    limits: [
      { column: 'observedFromDays', insideBand: true },
      { column: 'observedToDays', insideBand: true },
    ],
  },
  notes: [
    'Only the row at 33 % was used to set the scale of graining times.',
    'Good to 0.6 of a decade even for pure sucrose at 25 °C.',
  ],
  check: {
    rows: 8,
    sums: {
      relativeHumidityPercent: 89,
      observedFromDays: 365,
      observedToDays: 4,
    },
  },
} as const satisfies EvidenceTable;
