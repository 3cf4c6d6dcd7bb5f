// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Dry glass transition of maltodextrins and syrup solids against DE. */
export const glassTgDeTable = {
  id: 'glass-tg-de',
  title: 'Dry glass transition of maltodextrins and syrup solids against DE',
  source: {
    authors: 'Roos, Y.; Karel, M.',
    year: '1991',
    title: 'Phase transitions of mixtures of amorphous polysaccharides and sugars, Biotechnology Progress 7:49-53',
    locator: 'also J. Food Sci. 56:1676',
  },
  grade: 'mixed',
  did: 'Rows recalled; of the article only the abstract was seen.',
  units: {
    dextroseEquivalent: '0 to 100',
    molarMassGPerMol: 'g/mol',
    glassTransitionC: '°C',
  },
  constants: {
    equation: 'Tg = a − b · DE^n',
    a: 274.406,
    b: 50.2565,
    n: 0.342914,
    rmsK: 3.5,
  },
  rows: [
    { dextroseEquivalent: 5, molarMassGPerMol: 3603, glassTransitionC: 188, kind: 'published', grade: 'memory' },
    { dextroseEquivalent: 10, molarMassGPerMol: 1802, glassTransitionC: 160, kind: 'published', grade: 'memory' },
    { dextroseEquivalent: 20, molarMassGPerMol: 901, glassTransitionC: 141, kind: 'published', grade: 'memory' },
    { dextroseEquivalent: 25, molarMassGPerMol: 721, glassTransitionC: 121, kind: 'published', grade: 'memory' },
    { dextroseEquivalent: 36, molarMassGPerMol: 500, glassTransitionC: 100, kind: 'published', grade: 'memory' },
    { dextroseEquivalent: 100, molarMassGPerMol: 180, glassTransitionC: 31, kind: 'glucose anchor', grade: 'memory' },
    { dextroseEquivalent: 42, molarMassGPerMol: 429, glassTransitionC: 93, kind: 'from the fit', grade: 'derived' },
    { dextroseEquivalent: 62, molarMassGPerMol: 291, glassTransitionC: 67, kind: 'from the fit', grade: 'derived' },
  ],
  tolerance: {
    text: 'Root mean square within 3.6 K, worst 7.0 K on the six anchors.',
    limits: [
      { column: 'glassTransitionC', worst: 7, rms: 3.6, rows: { column: 'kind', is: ['published', 'glucose anchor'] } },
    ],
  },
  notes: [
    '± 10 K for a real syrup, because the dextrose equivalent does not fix the spectrum of chains.',
    'A Fox-Flory line through DE 5 to 36 alone, 194.5 − 49224/M, gives 80 at DE 42 and an impossible 25 at DE 62.',
  ],
  check: {
    rows: 8,
    sums: {
      dextroseEquivalent: 300,
      molarMassGPerMol: 8427,
      glassTransitionC: 901,
    },
  },
} as const satisfies EvidenceTable;
