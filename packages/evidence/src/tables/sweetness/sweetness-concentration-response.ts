// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Sweetness of intense sweeteners against dose. */
export const sweetnessConcentrationResponseTable = {
  id: 'sweetness-concentration-response',
  title: 'Sweetness of intense sweeteners against dose',
  source: {
    authors: 'DuBois, G.E.; Walters, D.E.; Schiffman, S.S.; and others',
    year: '1991',
    title: 'Concentration-response relationships of sweeteners, ACS Symposium Series 450, 261-276',
    locator: 'coefficient table',
  },
  grade: 'memory',
  did: 'Coefficients recalled; the form of the equation was seen.',
  units: {
    maximumPercent: '% sucrose equivalence',
    halfMgPerL: 'mg/L',
    validFromPercent: '% sucrose equivalence',
    validToPercent: '% sucrose equivalence',
  },
  constants: {
    equation: 'R = Rm C/(k + C); C = k R/(Rm − R); potency = 10000 R/C',
  },
  rows: [
    { sweetener: 'aspartame', maximumPercent: 16, halfMgPerL: 560, validFromPercent: 2, validToPercent: 10, confidence: 'high' },
    { sweetener: 'acesulfame-k', maximumPercent: 11.6, halfMgPerL: 470, validFromPercent: 1, validToPercent: 8, confidence: 'high' },
    { sweetener: 'saccharin-na', maximumPercent: 10.1, halfMgPerL: 118, validFromPercent: 1, validToPercent: 8, confidence: 'medium' },
    { sweetener: 'cyclamate-na', maximumPercent: 15.2, halfMgPerL: 2330, validFromPercent: 1, validToPercent: 10, confidence: 'high' },
    { sweetener: 'rebaudioside-a', maximumPercent: 10, halfMgPerL: 200, validFromPercent: 1, validToPercent: 8, confidence: 'high' },
    { sweetener: 'sucralose', maximumPercent: 23.7, halfMgPerL: 298, validFromPercent: 2, validToPercent: 9, confidence: 'low', note: 'Own fit to potencies of 750, 600 and 500 at 2, 5 and 9 %; the maximum of 1991 is recalled as 14.7.' },
    { sweetener: 'neotame', maximumPercent: 15.1, halfMgPerL: 12.6, validFromPercent: 2, validToPercent: 8, confidence: 'low', note: 'The second constant is set so that the potency is 8000 at 5 %.' },
  ],
  notes: [
    'Sugars and polyols are linear: R = s C.',
    'Gives 209 for aspartame at 4.3 % (printed 200) and 107 at 10 % (printed 130).',
  ],
  check: {
    rows: 7,
    sums: {
      maximumPercent: 101.7,
      halfMgPerL: 3988.6,
      validFromPercent: 10,
      validToPercent: 61,
    },
  },
} as const satisfies EvidenceTable;
