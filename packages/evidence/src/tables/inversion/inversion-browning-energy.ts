// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Activation energies of browning. */
export const inversionBrowningEnergyTable = {
  id: 'inversion-browning-energy',
  title: 'Activation energies of browning',
  source: {
    authors: 'several',
    year: '1999 to 2007',
    title: 'Named in each row',
    locator: 'see rows',
  },
  grade: 'secondary',
  did: 'Seen in a copy or a quotation, not in the original.',
  units: {
    activationEnergyLowKJPerMol: 'kJ/mol',
    activationEnergyHighKJPerMol: 'kJ/mol',
  },
  rows: [
    { system: 'sucrose, colour at 490 nm, 60-140 C', activationEnergyLowKJPerMol: 104.7, activationEnergyHighKJPerMol: 104.7, publication: 'Shin and Ahn 1999' },
    { system: 'xylose, 60 to 140 °C', activationEnergyLowKJPerMol: 124.4, activationEnergyHighKJPerMol: 124.4, publication: 'Shin and Ahn 1999' },
    { system: 'glucose + glycine, 60 to 140 °C', activationEnergyLowKJPerMol: 144.9, activationEnergyHighKJPerMol: 144.9, publication: 'Shin and Ahn 1999' },
    { system: 'glucose + amino acids, A420 and HMF, 85-100 C, zero order after induction', activationEnergyLowKJPerMol: 110, activationEnergyHighKJPerMol: 180, publication: 'Carabasa-Giribet and Ibarz-Ribas 2000' },
    { system: 'glucose breakdown in cane must, 110-140 C, pH 6.1', activationEnergyLowKJPerMol: 140.2, activationEnergyHighKJPerMol: 140.2, publication: 'Nolasco and Massaguer 2006, J. Food Process Eng.' },
    { system: 'fructose breakdown, 110 to 140 °C', activationEnergyLowKJPerMol: 140.4, activationEnergyHighKJPerMol: 140.4, publication: 'Nolasco and Massaguer 2006' },
    { system: 'neutral sucrose syrup 83.7 % solids, colour and HMF, 100-160 C: lag phase then Gompertz growth, Arrhenius', activationEnergyLowKJPerMol: null, activationEnergyHighKJPerMol: null, publication: 'Quintas, Brandão and Silva 2007, J. Food Eng. 83:483' },
  ],
  notes: [
    'Shin and Ahn print J/mol; it must be kJ/mol.',
    'For a relative index: 120 kJ/mol for sucrose, 140 where reducing sugars or milk are present.',
  ],
  check: {
    rows: 7,
    sums: {
      activationEnergyLowKJPerMol: 764.6,
      activationEnergyHighKJPerMol: 834.6,
    },
  },
} as const satisfies EvidenceTable;
