// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Viscosity landmarks and how far above the glass transition they fall. */
export const glassWindowsTable = {
  id: 'glass-windows',
  title: 'Viscosity landmarks and how far above the glass transition they fall',
  source: {
    authors: 'ASTM; McGee, H.; Hartel, R.W.',
    year: '2004; 2012',
    title: 'Glass definitions C965, C338, C336; On Food and Cooking; Hard candy: from hard crack to the glass transition',
    locator: 'working, softening, annealing and strain points',
  },
  grade: 'memory',
  did: 'Landmarks recalled; the distances are computed from three WLF pairs.',
  units: {
    viscosityPaS: 'Pa s',
    aboveTransitionByFitK: 'K above the glass transition',
    aboveTransitionK: 'K above the glass transition',
    aboveTransitionUniversalK: 'K above the glass transition',
  },
  rows: [
    { landmark: 'very fluid', viscosityPaS: 1, aboveTransitionByFitK: 87, aboveTransitionK: 100, aboveTransitionUniversalK: 114 },
    { landmark: 'deposit', viscosityPaS: 10, aboveTransitionByFitK: 69, aboveTransitionK: 78.5, aboveTransitionUniversalK: 88 },
    { landmark: 'hand pouring, easy', viscosityPaS: 30, aboveTransitionByFitK: 62, aboveTransitionK: 70.2, aboveTransitionUniversalK: 78 },
    { landmark: 'hand pouring, last', viscosityPaS: 100, aboveTransitionByFitK: 55, aboveTransitionK: 62.2, aboveTransitionUniversalK: 69 },
    { landmark: 'working point: folding, rope, first pulls', viscosityPaS: 1000, aboveTransitionByFitK: 44, aboveTransitionK: 50, aboveTransitionUniversalK: 55 },
    { landmark: 'plastic forming', viscosityPaS: 10000, aboveTransitionByFitK: 36, aboveTransitionK: 40, aboveTransitionUniversalK: 44 },
    { landmark: 'softening point: pulling ends, holds its shape for minutes', viscosityPaS: 3980000, aboveTransitionByFitK: 19, aboveTransitionK: 21, aboveTransitionUniversalK: 23 },
    { landmark: 'sticky surface', viscosityPaS: 10000000, aboveTransitionByFitK: 17, aboveTransitionK: 19, aboveTransitionUniversalK: 21 },
    { landmark: 'sags in weeks under its own weight', viscosityPaS: 1000000000, aboveTransitionByFitK: 9, aboveTransitionK: 9.9, aboveTransitionUniversalK: 11 },
    { landmark: 'glass', viscosityPaS: 1000000000000, aboveTransitionByFitK: 0, aboveTransitionK: 0, aboveTransitionUniversalK: 0 },
    { landmark: 'wrap', viscosityPaS: 30000000000000, aboveTransitionByFitK: -10, aboveTransitionK: -10, aboveTransitionUniversalK: -10 },
  ],
  tolerance: {
    text: '0.5 K on the recommended column.',
    limits: [{ column: 'aboveTransitionK', worst: 0.5 }],
  },
  extra: {
    practice: [
      { what: 'end of the boil', lowC: 145, highC: 152, grade: 'secondary' },
      { what: 'mass turns from liquid to plastic', lowC: 85, highC: 90, grade: 'secondary' },
      { what: 'hand-pulled sugar, acid-doctored', lowC: 50, highC: 55, grade: 'secondary' },
      { what: 'depositing', lowC: 130, highC: 145, grade: 'practice' },
      { what: 'batch rolling and rope', lowC: 70, highC: 90, grade: 'practice' },
      { what: 'wrapping, below', lowC: null, highC: 35, grade: 'practice' },
    ],
  },
  notes: [
    'The recommended column is WLF 17.84/48.8.',
    '± 10 K at 10 Pa s, ± 5 K at 1000 Pa s, ± 3 K at 1e6 Pa s, beside the error of the transition itself.',
    'Demould at or below the transition, wrap 10 K below it.',
  ],
  check: {
    rows: 11,
    sums: {
      viscosityPaS: 31001013991141,
      aboveTransitionByFitK: 388,
      aboveTransitionK: 440.8,
      aboveTransitionUniversalK: 493,
    },
  },
} as const satisfies EvidenceTable;
