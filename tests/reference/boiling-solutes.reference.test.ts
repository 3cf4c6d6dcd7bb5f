import { boilingSoluteParametersTable as table } from '@vitrose/evidence';
import { describe, expect, it } from 'vitest';
import {
  ASSUMED_MOLAR_MASSES,
  ASSUMED_POLYOLS,
  ASSUMED_SOLUTES,
  LONG_CHAINS,
  NORRISH_POLYOLS,
  NORRISH_SUGARS,
  REFERENCE_SOLUTE,
  type SoluteRow,
  type SpeciesId,
  UNKNOWN_SOLUTE,
} from 'vitrose';

const SHIPPED: Readonly<Partial<Record<SpeciesId, SoluteRow>>> = {
  ...REFERENCE_SOLUTE.rows,
  ...NORRISH_SUGARS.rows,
  ...NORRISH_POLYOLS.rows,
  ...LONG_CHAINS.rows,
  ...ASSUMED_POLYOLS.rows,
  ...ASSUMED_SOLUTES.rows,
};

/** Printed names that are not those of a species. */
const RENAMED: Readonly<Record<string, readonly SpeciesId[] | undefined>> = {
  'oligosaccharides DP>=3': ['syrup-oligosaccharides'],
  'isomalt (anhydrous)': ['isomalt'],
  'hydrogenated starch hydrolysate': ['hydrogenated-oligosaccharides'],
  'lactitol (anhydrous)': ['lactitol'],
  'trehalose (anhydrous)': ['trehalose'],
  'isomaltulose (anhydrous)': ['isomaltulose'],
  'allulose, tagatose': ['allulose', 'tagatose'],
};

describe(`the solutes of the boiling model against ${table.id}`, () => {
  // Mixtures: the model works them out from their parts.
  const rows = table.rows.filter((row) => !/^invert sugar|^glucose syrup/.test(row.solute));

  it('leaves out invert sugar and three syrups', () => {
    expect(rows).toHaveLength(table.rows.length - 4);
  });

  it.each(rows)('takes $solute as the table does', (row) => {
    for (const species of RENAMED[row.solute] ?? [row.solute as SpeciesId]) {
      const shipped = SHIPPED[species];
      expect(shipped?.slice(1, 3)).toEqual([row.interaction, row.interactionUncertainty]);
      if (row.molarMassGPerMol === null) expect(ASSUMED_MOLAR_MASSES).toContain(species);
      else expect(shipped?.[0]).toBe(row.molarMassGPerMol);
    }
  });

  it('takes a solute without a datum for sucrose, give or take 0.15', () => {
    expect(UNKNOWN_SOLUTE).toEqual([REFERENCE_SOLUTE.rows.sucrose[0], 0, 0.15]);
  });
});

describe('the molar masses of the boiling model', () => {
  const ATOMS: Readonly<Record<string, number>> = {
    H: 1.008,
    C: 12.011,
    N: 14.007,
    O: 15.999,
    Na: 22.99,
    S: 32.06,
    Cl: 35.45,
    K: 39.098,
  };
  const FORMULAS: Readonly<Partial<Record<SpeciesId, string>>> = {
    sucrose: 'C12H22O11',
    glucose: 'C6H12O6',
    fructose: 'C6H12O6',
    maltose: 'C12H22O11',
    lactose: 'C12H22O11',
    trehalose: 'C12H22O11',
    isomaltulose: 'C12H22O11',
    allulose: 'C6H12O6',
    tagatose: 'C6H12O6',
    sorbitol: 'C6H14O6',
    mannitol: 'C6H14O6',
    xylitol: 'C5H12O5',
    erythritol: 'C4H10O4',
    glycerol: 'C3H8O3',
    'propylene-glycol': 'C3H8O2',
    isomalt: 'C12H24O11',
    maltitol: 'C12H24O11',
    lactitol: 'C12H24O11',
    'citric-acid': 'C6H8O7',
    'malic-acid': 'C4H6O5',
    'tartaric-acid': 'C4H6O6',
    'lactic-acid': 'C3H6O3',
    'potassium-hydrogen-tartrate': 'C4H5O6K',
    'sodium-citrate': 'C6H5O7Na3',
    'sodium-lactate': 'C3H5O3Na',
    'sodium-bicarbonate': 'CHO3Na',
    'sodium-chloride': 'NaCl',
    sucralose: 'C12H19O8Cl3',
    'acesulfame-k': 'C4H4O4NSK',
    aspartame: 'C14H18O5N2',
    // As sold: its sodium salt.
    saccharin: 'C7H4O3NSNa',
    // Of rebaudioside A, the usual one.
    'steviol-glycosides': 'C44H70O23',
  };

  const molarMass = (formula: string): number =>
    [...formula.matchAll(/([A-Z][a-z]?)(\d*)/g)].reduce(
      (sum, [, atom = '', count]) => sum + (ATOMS[atom] ?? Number.NaN) * Number(count || 1),
      0,
    );

  it.each(Object.entries(FORMULAS))('has %s as %s', (species, formula) => {
    const [shipped = 0] = SHIPPED[species as SpeciesId] ?? [];
    expect(Math.abs(shipped / molarMass(formula) - 1)).toBeLessThanOrEqual(1e-4);
  });

  it('are assumed where there is no formula, and nowhere else', () => {
    const byFormula = Object.keys(FORMULAS);
    const assumed = Object.keys(SHIPPED).filter((species) => !byFormula.includes(species));
    expect([...ASSUMED_MOLAR_MASSES].sort()).toEqual(assumed.sort());
  });
});
