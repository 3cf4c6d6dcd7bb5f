// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Molar mass and interaction of a glucose syrup, from its DE and from its profile. */
export const syrupMolarMassTable = {
  id: 'syrup-molar-mass',
  title: 'Molar mass and interaction of a glucose syrup, from its DE and from its profile',
  source: {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Computed from the published profiles',
    locator: 'rule stated in the notes',
  },
  grade: 'derived',
  did: 'Computed here.',
  units: {
    dextroseEquivalent: '0 to 100',
    molarMassFromDeGPerMol: 'g/mol',
    lastLumpEndPercent: '% of dextrose, copper scale',
    molarMassFromProfileGPerMol: 'g/mol',
    interaction: 'dimensionless',
    boilingDifferenceAt70PercentK: 'K',
    boilingDifferenceAt97PercentK: 'K',
  },
  rows: [
    { id: 'trade-acid-30', conversion: 'acid', dextroseEquivalent: 30, molarMassFromDeGPerMol: 600.5, lastLumpEndPercent: 10.7, molarMassFromProfileGPerMol: 641.7, interaction: 0.134, boilingDifferenceAt70PercentK: -0.05, boilingDifferenceAt97PercentK: -0.1 },
    { id: 'trade-acid-42', conversion: 'acid', dextroseEquivalent: 42, molarMassFromDeGPerMol: 428.9, lastLumpEndPercent: 14.5, molarMassFromProfileGPerMol: 453.7, interaction: 0.101, boilingDifferenceAt70PercentK: -0.06, boilingDifferenceAt97PercentK: -0.12 },
    { id: 'trade-acid-55', conversion: 'acid', dextroseEquivalent: 55, molarMassFromDeGPerMol: 327.6, lastLumpEndPercent: 17.7, molarMassFromProfileGPerMol: 342.1, interaction: 0.055, boilingDifferenceAt70PercentK: -0.06, boilingDifferenceAt97PercentK: -0.12 },
    { id: 'trade-high-maltose-43', conversion: 'high-maltose', dextroseEquivalent: 43, molarMassFromDeGPerMol: 419, lastLumpEndPercent: 14, molarMassFromProfileGPerMol: 456.5, interaction: 0.102, boilingDifferenceAt70PercentK: -0.1, boilingDifferenceAt97PercentK: -0.18 },
    { id: 'trade-acid-enzyme-63', conversion: 'enzyme', dextroseEquivalent: 63, molarMassFromDeGPerMol: 286, lastLumpEndPercent: 6, molarMassFromProfileGPerMol: 293, interaction: 0.015, boilingDifferenceAt70PercentK: -0.04, boilingDifferenceAt97PercentK: -0.08 },
    { id: 'belitz-acid-30', conversion: 'acid', dextroseEquivalent: 30, molarMassFromDeGPerMol: 600.5, lastLumpEndPercent: 15.6, molarMassFromProfileGPerMol: 642.2, interaction: 0.135, boilingDifferenceAt70PercentK: -0.05, boilingDifferenceAt97PercentK: -0.1 },
    { id: 'belitz-acid-60', conversion: 'acid', dextroseEquivalent: 60, molarMassFromDeGPerMol: 300.3, lastLumpEndPercent: 23.4, molarMassFromProfileGPerMol: 312.2, interaction: 0.035, boilingDifferenceAt70PercentK: -0.06, boilingDifferenceAt97PercentK: -0.12 },
    { id: 'belitz-enzyme-45', conversion: 'enzyme', dextroseEquivalent: 45, molarMassFromDeGPerMol: 400.3, lastLumpEndPercent: 12.4, molarMassFromProfileGPerMol: 436.8, interaction: 0.098, boilingDifferenceAt70PercentK: -0.1, boilingDifferenceAt97PercentK: -0.19 },
    { id: 'belitz-enzyme-65', conversion: 'enzyme', dextroseEquivalent: 65, molarMassFromDeGPerMol: 277.2, lastLumpEndPercent: 9, molarMassFromProfileGPerMol: 287.9, interaction: 0.006, boilingDifferenceAt70PercentK: -0.07, boilingDifferenceAt97PercentK: -0.13 },
    { id: 'belitz-enzyme-97', conversion: 'enzyme', dextroseEquivalent: 97, molarMassFromDeGPerMol: 185.7, lastLumpEndPercent: 6, molarMassFromProfileGPerMol: 185.4, interaction: -0.139, boilingDifferenceAt70PercentK: 0, boilingDifferenceAt97PercentK: 0.01 },
  ],
  tolerance: {
    text: '2 g/mol; 0.02 K. The row of DE 63 is shown: four lumps of chains cannot tell its DP4 to DP6 from the rest.',
    limits: [
      { column: 'molarMassFromDeGPerMol', worst: 0.1 },
      { column: 'molarMassFromProfileGPerMol', worst: 2, rows: { column: 'id', is: ['trade-acid-30', 'trade-acid-42', 'trade-acid-55', 'trade-high-maltose-43', 'belitz-acid-30', 'belitz-acid-60', 'belitz-enzyme-45', 'belitz-enzyme-65', 'belitz-enzyme-97'] } },
      { column: 'boilingDifferenceAt70PercentK', worst: 0.02, rows: { column: 'id', is: ['trade-acid-30', 'trade-acid-42', 'trade-acid-55', 'trade-high-maltose-43', 'belitz-acid-30', 'belitz-acid-60', 'belitz-enzyme-45', 'belitz-enzyme-65', 'belitz-enzyme-97'] } },
      { column: 'boilingDifferenceAt97PercentK', worst: 0.02, rows: { column: 'id', is: ['trade-acid-30', 'trade-acid-42', 'trade-acid-55', 'trade-high-maltose-43', 'belitz-acid-30', 'belitz-acid-60', 'belitz-enzyme-45', 'belitz-enzyme-65', 'belitz-enzyme-97'] } },
    ],
  },
  notes: [
    'With a profile: M = 18015.6 / Σ p e, e by theory; the last lump takes 0.9 times what closes the copper sum on the nominal DE, kept within 6 to 19 (DP7 and longer) or 6 to 25 (DP4 and longer).',
    'With the DE alone: M = 18015.6 / DE.',
    'Interaction = −0.15 DP1 + 0.05 DP2 + 0.18 DP3 and longer, mass shares.',
  ],
  check: {
    rows: 10,
    sums: {
      dextroseEquivalent: 530,
      molarMassFromDeGPerMol: 3826,
      lastLumpEndPercent: 129.3,
      molarMassFromProfileGPerMol: 4051.5,
      interaction: 0.542,
      boilingDifferenceAt70PercentK: -0.59,
      boilingDifferenceAt97PercentK: -1.13,
    },
  },
} as const satisfies EvidenceTable;
