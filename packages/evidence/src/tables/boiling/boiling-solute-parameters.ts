// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** What the boiling model knows of each solute. */
export const boilingSoluteParametersTable = {
  id: 'boiling-solute-parameters',
  title: 'What the boiling model knows of each solute',
  source: {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Fitted to the sources named in each row',
    locator: 'interaction difference D of the boiling model',
  },
  grade: 'mixed',
  did: 'Each row has its own grade.',
  units: {
    molarMassGPerMol: 'g/mol, number average',
    interaction: 'dimensionless, difference from sucrose at 25 °C',
    interactionUncertainty: 'dimensionless, either way',
  },
  rows: [
    { solute: 'sucrose', molarMassGPerMol: 342.2965, interaction: 0, interactionUncertainty: 0, basis: 'the reference', grade: 'derived' },
    { solute: 'glucose', molarMassGPerMol: 180.156, interaction: -0.15, interactionUncertainty: 0.05, basis: 'fitted to a Norrish constant of 2.25 up to 75 % solids, within 0.008 of water activity', grade: 'derived' },
    { solute: 'fructose', molarMassGPerMol: 180.156, interaction: -0.16, interactionUncertainty: 0.05, basis: 'fitted to a Norrish constant of 2.25 up to 80 % solids, within 0.010', grade: 'derived' },
    { solute: 'invert sugar (50/50)', molarMassGPerMol: 180.156, interaction: -0.155, interactionUncertainty: 0.05, basis: 'mean of glucose and fructose', grade: 'derived' },
    { solute: 'maltose', molarMassGPerMol: 342.2965, interaction: 0.05, interactionUncertainty: 0.05, basis: 'fitted to a Norrish constant of 4.54 up to 75 % solids, within 0.004', grade: 'derived' },
    { solute: 'lactose', molarMassGPerMol: 342.2965, interaction: -0.03, interactionUncertainty: 0.15, basis: 'fitted to a Norrish constant of 10.2 up to 30 % solids only', grade: 'derived' },
    { solute: 'oligosaccharides DP>=3', molarMassGPerMol: null, interaction: 0.18, interactionUncertainty: 0.1, basis: 'glucose-syrup row of Sloan and Labuza 1975', note: '18015.6/DE, or 180.156 + 162.141 (DP − 1)', grade: 'derived' },
    { solute: 'glucose syrup 42 DE (acid)', molarMassGPerMol: 428.94, interaction: 0.1, interactionUncertainty: 0.1, basis: '19 % DP1, 14 % DP2, the rest longer', grade: 'derived' },
    { solute: 'glucose syrup 38 DE', molarMassGPerMol: 474.1, interaction: 0.12, interactionUncertainty: 0.1, basis: '15 % DP1, 12 % DP2', grade: 'derived' },
    { solute: 'glucose syrup 62 DE', molarMassGPerMol: 290.6, interaction: 0.02, interactionUncertainty: 0.1, basis: '36 % DP1, 31 % DP2', grade: 'derived' },
    { solute: 'sorbitol', molarMassGPerMol: 182.172, interaction: -0.09, interactionUncertainty: 0.05, basis: 'fitted to a Norrish constant of 1.65 up to 80 % solids, within 0.003', grade: 'derived' },
    { solute: 'mannitol', molarMassGPerMol: 182.172, interaction: -0.04, interactionUncertainty: 0.15, basis: 'fitted to a Norrish constant of 0.906 up to 20 % solids only', grade: 'derived' },
    { solute: 'xylitol', molarMassGPerMol: 152.146, interaction: -0.19, interactionUncertainty: 0.05, basis: 'fitted to a Norrish constant of 1.66 up to 75 % solids, within 0.008', grade: 'derived' },
    { solute: 'erythritol', molarMassGPerMol: 122.12, interaction: -0.2, interactionUncertainty: 0.1, basis: 'fitted to a Norrish constant of 1.34 up to 40 % solids', grade: 'derived' },
    { solute: 'glycerol', molarMassGPerMol: 92.094, interaction: -0.45, interactionUncertainty: 0.1, basis: 'fitted to a Norrish constant of 1.16 up to 75 % solids, within 0.013; itself slightly volatile above 130 °C', grade: 'derived' },
    { solute: 'isomalt (anhydrous)', molarMassGPerMol: 344.313, interaction: 0, interactionUncertainty: 0.1, basis: 'taken equal to sucrose', grade: 'assumed' },
    { solute: 'maltitol', molarMassGPerMol: 344.313, interaction: 0, interactionUncertainty: 0.1, basis: 'taken between maltose and sucrose', grade: 'assumed' },
    { solute: 'hydrogenated starch hydrolysate', molarMassGPerMol: null, interaction: 0.15, interactionUncertainty: 0.1, basis: 'as oligosaccharides', note: 'molar mass from the chain length', grade: 'assumed' },
    { solute: 'lactitol (anhydrous)', molarMassGPerMol: 344.313, interaction: 0, interactionUncertainty: 0.15, basis: 'rule for a solute with no datum', grade: 'assumed' },
    { solute: 'trehalose (anhydrous)', molarMassGPerMol: 342.2965, interaction: 0, interactionUncertainty: 0.15, basis: 'rule for a solute with no datum', grade: 'assumed' },
    { solute: 'isomaltulose (anhydrous)', molarMassGPerMol: 342.2965, interaction: 0, interactionUncertainty: 0.15, basis: 'rule for a solute with no datum', grade: 'assumed' },
    { solute: 'allulose, tagatose', molarMassGPerMol: 180.156, interaction: -0.155, interactionUncertainty: 0.1, basis: 'as the other hexoses', grade: 'assumed' },
  ],
  notes: [
    'The Norrish constants behind the fits: polyols seen in a review, sugars recalled.',
    'Raising the interaction by 0.1 lowers the boiling point by 1.2 °C at 80 %, 1.7 at 90 %, 2.0 at 95 % and 2.2 at 97 % solids.',
    'No data above 100 °C exist for most of these; scaling the interaction by 1/T is an assumption.',
    'A solute with no datum: molar mass by formula, interaction 0 ± 0.15; oligomers 0.18 ± 0.1.',
  ],
  check: {
    rows: 22,
    sums: {
      molarMassGPerMol: 5389.3895,
      interaction: -1,
      interactionUncertainty: 2.05,
    },
  },
} as const satisfies EvidenceTable;
