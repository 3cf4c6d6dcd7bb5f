import type { EvidenceTable } from '../../types.js';

/** Sweetness of glucose syrups by DE, handbook bands. */
export const sweetnessGlucoseSyrupDeTable = {
  id: 'sweetness-glucose-syrup-de',
  title: 'Sweetness of glucose syrups by DE, handbook bands',
  source: {
    authors: 'Pancoast, H.M., Junk, W.R.; Corn Refiners Association',
    year: '1980; 2006',
    title: 'Handbook of Sugars; Nutritive Sweeteners from Corn',
    locator: 'tables of relative sweetness',
  },
  grade: 'memory',
  did: 'Recalled and not found again.',
  units: {
    dextroseEquivalent: '0 to 100',
    low: 'sucrose = 1, dry solids',
    high: 'sucrose = 1, dry solids',
  },
  constants: { equation: '0.01335 DE − 0.0000595 DE²' },
  rows: [
    { dextroseEquivalent: 30, low: 0.3, high: 0.35 },
    { dextroseEquivalent: 36, low: 0.35, high: 0.4 },
    { dextroseEquivalent: 42, low: 0.45, high: 0.5 },
    { dextroseEquivalent: 54, low: 0.5, high: 0.55 },
    { dextroseEquivalent: 62, low: 0.6, high: 0.7 },
    { dextroseEquivalent: 100, low: 0.7, high: 0.8 },
  ],
  tolerance: {
    text: 'Root mean square 0.029 against the middle of the bands; every band is met.',
    limits: [{ column: 'low', rms: 0.029, insideBand: true }],
  },
  notes: [
    'The sum over the saccharides gives only 0.24 to 0.28 at 42 DE: carry both as the range.',
    'The dextrose equivalent says nothing about sweetness once fructose is present.',
  ],
  check: {
    rows: 6,
    sums: {
      dextroseEquivalent: 324,
      low: 2.9,
      high: 3.3,
    },
  },
} as const satisfies EvidenceTable;
