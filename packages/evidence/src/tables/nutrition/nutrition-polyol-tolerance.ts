// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** How much polyol people bear. */
export const nutritionPolyolToleranceTable = {
  id: 'nutrition-polyol-tolerance',
  title: 'How much polyol people bear',
  source: {
    authors: 'several',
    year: '1983 to 2023',
    title: 'Named in each row',
    locator: 'see rows',
  },
  grade: 'secondary',
  did: 'Seen in a copy or a quotation, not in the original.',
  units: {
    maleGPerKg: 'g per kg of body weight',
    femaleGPerKg: 'g per kg of body weight',
  },
  constants: {
    guideGPerKg: { sorbitol: 0.15, mannitol: 0.15, isomalt: 0.3, maltitol: 0.3, 'maltitol-syrup': 0.3, xylitol: 0.3, lactitol: 0.25, erythritol: 0.46, hsh: 0.25 },
    guideNote: 'the lowest no-effect value above; mannitol and hydrolysates assumed',
  },
  rows: [
    { id: 'sorbitol', measure: 'no-effect single dose', maleGPerKg: 0.15, femaleGPerKg: 0.3, publication: 'Koizumi and others 1983 Chemosphere 12:45-53' },
    { id: 'sorbitol', measure: 'dose affecting half', maleGPerKg: 0.4, femaleGPerKg: 1, publication: 'Koizumi and others 1983 Chemosphere 12:45-53' },
    { id: 'maltitol', measure: 'no-effect single dose', maleGPerKg: 0.3, femaleGPerKg: 0.3, publication: 'Koizumi and others 1983 Chemosphere 12:45-53' },
    { id: 'maltitol', measure: 'dose affecting half', maleGPerKg: 0.8, femaleGPerKg: 0.8, publication: 'Koizumi and others 1983 Chemosphere 12:45-53' },
    { id: 'xylitol', measure: 'no-effect single dose', maleGPerKg: 0.3, femaleGPerKg: 0.3, publication: 'Koizumi and others 1998 (J Jpn Food Chem Soc 5:218-225)' },
    { id: 'xylitol', measure: 'dose affecting half', maleGPerKg: 0.52, femaleGPerKg: 0.7, publication: 'Koizumi and others 1998 (J Jpn Food Chem Soc 5:218-225)' },
    { id: 'xylitol', measure: 'no-effect single dose', maleGPerKg: 0.37, femaleGPerKg: 0.42, publication: 'Oku and Nakamura 2007' },
    { id: 'lactitol', measure: 'no-effect single dose', maleGPerKg: 0.25, femaleGPerKg: 0.34, publication: 'Oku and Nakamura 2007' },
    { id: 'erythritol', measure: 'no-effect single dose', maleGPerKg: 0.46, femaleGPerKg: 0.68, publication: 'Oku and Nakamura 2007' },
    { id: 'erythritol', measure: 'no-effect single dose', maleGPerKg: 0.66, femaleGPerKg: 0.8, publication: 'Oku and Okazaki 1996 Nutr Res 16(4)' },
    { id: 'erythritol', measure: 'acceptable daily intake', maleGPerKg: 0.5, femaleGPerKg: 0.5, publication: 'EFSA 2023 doi 10.2903/j.efsa.2023.8430' },
    { id: 'isomalt', measure: 'no-effect single dose', maleGPerKg: 0.3, femaleGPerKg: 0.3, publication: 'Nutrients 2021;13:279 table 2' },
    { id: 'isomalt', measure: '30 g in chocolate: mild signs; 40 g: mild laxation', maleGPerKg: null, femaleGPerKg: null, publication: 'Koutsou and others 1996 Eur J Clin Nutr 50:17-21' },
    { id: 'lactitol', measure: '30 and 40 g in chocolate: all signs, some strong', maleGPerKg: null, femaleGPerKg: null, publication: 'Koutsou and others 1996' },
    { id: 'maltitol', measure: '30 g in chocolate: wind only; 40 g: mild colic', maleGPerKg: null, femaleGPerKg: null, publication: 'Koutsou and others 1996' },
    { id: 'hexitols', measure: 'signs at 10 to 20 g a day in some adults', maleGPerKg: null, femaleGPerKg: null, publication: 'Makinen 2016 Int J Dent doi 10.1155/2016/5967907' },
    { id: 'xylitol', measure: 'largest safe dose 20 to 70 g a day, very varied', maleGPerKg: null, femaleGPerKg: null, publication: 'Makinen 2016' },
    { id: 'any', measure: 'more than 10 to 20 g a day may cause signs', maleGPerKg: null, femaleGPerKg: null, publication: 'Wolever and others 2002 Can J Diabetes 26:356' },
  ],
  notes: [
    'Mixed polyols: add the shares of each limit and warn at 1.',
    'Children, sensitive bowels and an empty stomach bear less.',
    'Information only, not medical advice.',
  ],
  check: {
    rows: 18,
    sums: {
      maleGPerKg: 5.01,
      femaleGPerKg: 6.44,
    },
  },
} as const satisfies EvidenceTable;
