import type { EvidenceTable } from '../../types.js';

/** Norrish constants at 25 °C. */
export const boilingNorrishKTable = {
  id: 'boiling-norrish-k',
  title: 'Norrish constants at 25 °C',
  source: {
    authors:
      'Norrish; Chirife, Ferro Fontan, Benmergui; polyols as tabulated in an open-access review',
    year: '1966; 1980; 2010',
    title:
      'International Journal of Dentistry 2010:981072 (polyols); Journal of Food Technology 15:59 (sugars)',
    locator: 'Table 3 (polyols)',
  },
  grade: 'mixed',
  did: 'Each row has its own grade.',
  address: 'https://pmc.ncbi.nlm.nih.gov/articles/PMC2836749/table/tab3',
  units: { molarMassGPerMol: 'g/mol', norrishK: 'dimensionless' },
  constants: { equation: 'aw = Xw · exp(−K · Xs²)' },
  rows: [
    { solute: 'glycerol', molarMassGPerMol: 92.094, norrishK: 1.16, grade: 'secondary' },
    { solute: 'erythritol', molarMassGPerMol: 122.12, norrishK: 1.34, grade: 'secondary' },
    { solute: 'xylitol', molarMassGPerMol: 152.146, norrishK: 1.66, grade: 'secondary' },
    { solute: 'D-arabitol', molarMassGPerMol: 152.146, norrishK: 1.41, grade: 'secondary' },
    { solute: 'ribitol', molarMassGPerMol: 152.146, norrishK: 1.49, grade: 'secondary' },
    { solute: 'sorbitol', molarMassGPerMol: 182.172, norrishK: 1.65, grade: 'secondary' },
    { solute: 'mannitol', molarMassGPerMol: 182.172, norrishK: 0.906, grade: 'secondary' },
    { solute: 'glucose', molarMassGPerMol: 180.156, norrishK: 2.25, grade: 'memory' },
    { solute: 'fructose', molarMassGPerMol: 180.156, norrishK: 2.25, grade: 'memory' },
    { solute: 'xylose', molarMassGPerMol: 150.13, norrishK: 1.54, grade: 'memory' },
    { solute: 'sucrose', molarMassGPerMol: 342.297, norrishK: 6.47, grade: 'memory' },
    { solute: 'maltose', molarMassGPerMol: 342.297, norrishK: 4.54, grade: 'memory' },
    { solute: 'lactose', molarMassGPerMol: 342.297, norrishK: 10.2, grade: 'memory' },
    { solute: 'corn syrup solids 42 DE', molarMassGPerMol: 429, norrishK: 2.31, grade: 'memory' },
    { solute: 'corn syrup solids 64 DE', molarMassGPerMol: 281, norrishK: 1.96, grade: 'memory' },
  ],
  notes: [
    'Fitted mostly above a water activity of 0.8.',
    'Fructose is also printed as 2.15.',
    'The 42 DE value with a number-average molar mass gives 0.79 at 82 % solids, 0.04 to 0.05 above the boiling model: doubtful.',
    'Baeza and others (2010) extend sugars and polyols to about 0.3 with slightly changed constants.',
  ],
  check: {
    rows: 15,
    sums: {
      molarMassGPerMol: 3282.329,
      norrishK: 41.136,
    },
  },
} as const satisfies EvidenceTable;
