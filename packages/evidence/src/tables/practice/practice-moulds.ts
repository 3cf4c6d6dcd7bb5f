// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Moulds and what they stand. */
export const practiceMouldsTable = {
  id: 'practice-moulds',
  title: 'Moulds and what they stand',
  source: {
    authors: 'Common practice',
    year: 'n.d.',
    title: 'Common practice of the trade',
    locator: 'none',
  },
  grade: 'practice',
  did: 'Common practice of the trade; no publication stands behind it.',
  units: { maxLowC: '°C', maxHighC: '°C', maxPourC: '°C' },
  rows: [
    { mould: 'silicone (platinum)', maxLowC: 200, maxHighC: 230, maxPourC: 200, prepare: 'none or a wipe of release oil', demould: 'flex when at or below Tg', limits: 'slow cooling, matt surface, holds water: dry at 60 °C first' },
    { mould: 'metal (aluminium, cast)', maxLowC: 300, maxHighC: null, maxPourC: 300, prepare: 'thin release oil; preheat to 40 °C', demould: '10-15 min', limits: 'chills fast, cracks if cold (<15 °C)' },
    { mould: 'polycarbonate', maxLowC: 120, maxHighC: 130, maxPourC: 120, prepare: 'release oil', demould: 'tap', limits: 'only for syrup cooled below 120 °C; crazes if poured at 150 °C' },
    { mould: 'hard plastic for boiled sweets (heat-rated)', maxLowC: 150, maxHighC: 150, maxPourC: 150, prepare: 'release oil', demould: 'twist', limits: 'chocolate moulds (PET/PVC) soften at 60-80 °C: never use' },
    { mould: 'starch impression', maxLowC: null, maxHighC: null, maxPourC: null, prepare: 'dried starch 6-8 % moisture, 30-40 °C', demould: 'sieve, blow', limits: 'fondant, gums, soft centres; not glossy sweets' },
    { mould: 'powdered-sugar bed', maxLowC: null, maxHighC: null, maxPourC: null, prepare: 'press a form', demould: 'brush', limits: 'frosts surface, seeds grain' },
    { mould: 'oiled slab, coated sheet', maxLowC: 230, maxHighC: 260, maxPourC: 230, prepare: 'wipe of oil', demould: 'lift', limits: 'thickness uneven' },
  ],
  notes: [
    'Pouring hotter than the mould stands is an error.',
    'For a stop above 165 °C glass, polycarbonate and weak plastics are out: rest to 150 °C before pouring.',
    'Demould at or below the glass transition, wrap 10 K below it.',
  ],
  check: {
    rows: 7,
    sums: {
      maxLowC: 1000,
      maxHighC: 770,
      maxPourC: 1000,
    },
  },
} as const satisfies EvidenceTable;
