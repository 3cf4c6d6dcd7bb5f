// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Activation energy of acid inversion. */
export const inversionActivationEnergyTable = {
  id: 'inversion-activation-energy',
  title: 'Activation energy of acid inversion',
  source: {
    authors: 'several',
    year: '1965 to 2015',
    title: 'Named in each row',
    locator: 'see rows',
  },
  grade: 'secondary',
  did: 'Seen in a copy or a quotation, not in the original.',
  units: { activationEnergyKJPerMol: 'kJ/mol' },
  rows: [
    { activationEnergyKJPerMol: 108.55, publication: 'Vukov 1965 (5670 · ln 10 · R)' },
    { activationEnergyKJPerMol: 109.2, publication: 'Tombari, Salvetti, Ferrari and Johari 2007, J. Phys. Chem. B 111:496', address: 'https://iris.cnr.it/handle/20.500.14243/42708' },
    { activationEnergyKJPerMol: 108, publication: 'University polarimetry, 2015' },
    { activationEnergyKJPerMol: 108.2, publication: 'from the two neutral-water rates of a chemistry textbook' },
  ],
  tolerance: {
    text: '1 %.',
    limits: [{ column: 'activationEnergyKJPerMol', worst: 0.01, relative: true }],
  },
  notes: [
    'The rate at 150 °C is 10.5 times that at 120 °C and 25 times that at 110 °C with 108.55.',
    'Heat of inversion −14.4 kJ/mol at 310 K (Tombari and others).',
  ],
  check: {
    rows: 4,
    sums: {
      activationEnergyKJPerMol: 433.95,
    },
  },
} as const satisfies EvidenceTable;
