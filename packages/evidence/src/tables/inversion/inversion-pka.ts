// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Acid constants at 25 °C. */
export const inversionPkaTable = {
  id: 'inversion-pka',
  title: 'Acid constants at 25 °C',
  source: {
    authors: 'Bates, R.G., Pinching, G.D.; public tables',
    year: '1949',
    title: 'J. Am. Chem. Soc. 71:1274 for citric acid',
    locator: 'thermodynamic constants',
  },
  grade: 'secondary',
  did: 'Seen in a copy or a quotation, not in the original.',
  address: 'https://miami.pure.elsevier.com/en/publications/dissociation-constants-for-citric-acid-in-nacl-and-kcl-solutions-',
  units: {
    molarMassGPerMol: 'g/mol',
    pka1: 'dimensionless',
    pka2: 'dimensionless',
    pka3: 'dimensionless',
  },
  constants: {
    tartaricAlternative: [3.036, 4.366],
    creamOfTartarGPer100MlWater: { at10C: 0.4, at25C: 0.6, at100C: 6.1 },
    citricTemperatureLaw: ['ln K1 = −646.5228 + 14264.1855/T + 115.3451 ln T − 0.2204 T', 'ln K2 = −52.1997 − 1842.97387/T + 11.19421 ln T − 0.05487 T', 'ln K3 = −129.89305 − 394.04129/T + 25.36088 ln T − 0.09394 T'],
  },
  rows: [
    { acid: 'citric', molarMassGPerMol: 192.12, pka1: 3.128, pka2: 4.76, pka3: 6.396 },
    { acid: 'citric monohydrate', molarMassGPerMol: 210.14, pka1: 3.128, pka2: 4.76, pka3: 6.396 },
    { acid: 'tartaric', molarMassGPerMol: 150.09, pka1: 2.98, pka2: 4.34, pka3: null },
    { acid: 'potassium hydrogen tartrate', molarMassGPerMol: 188.18, pka1: 2.98, pka2: 4.34, pka3: null },
    { acid: 'malic', molarMassGPerMol: 134.09, pka1: 3.4, pka2: 5.2, pka3: null },
    { acid: 'lactic', molarMassGPerMol: 90.08, pka1: 3.86, pka2: null, pka3: null },
    { acid: 'succinic', molarMassGPerMol: 118.09, pka1: 4.21, pka2: 5.64, pka3: null },
    { acid: 'acetic', molarMassGPerMol: 60.05, pka1: 4.76, pka2: null, pka3: null },
  ],
  notes: [
    'The temperature law holds for 0 to 50 °C. One abstract prints plus signs before the 1/T terms of the second and third; only minus gives 4.76 and 6.40.',
    'One table prints 5.60 for the third constant of citric acid: wrong.',
  ],
  check: {
    rows: 8,
    sums: {
      molarMassGPerMol: 1142.84,
      pka1: 28.446,
      pka2: 29.04,
      pka3: 12.792,
    },
  },
} as const satisfies EvidenceTable;
