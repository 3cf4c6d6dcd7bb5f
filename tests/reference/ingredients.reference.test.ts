import { ingredientsDefaultsTable as table } from '@vitrose/evidence';
import { describe, expect, it } from 'vitest';
import { INGREDIENT_IDS, ingredient } from 'vitrose';

/** What the table counts apart from solids and water, the library counts as dry but apart. */
const FLAVOURS: Readonly<Record<string, number>> = {
  'flavour-oil': 1,
  'flavour-alcohol': 0.6,
  'flavour-glycerol': 1,
  'flavour-propylene-glycol': 1,
};

/** The table's words for groups, and what they are in one ingredient. */
function plain(id: string, name: string): string {
  if (name === 'inert') return id.startsWith('colour') ? 'pigment' : 'insoluble';
  return name;
}

describe(`ingredient against ${table.id}: ${table.title}`, () => {
  it('knows every ingredient of the table and no other', () => {
    expect([...INGREDIENT_IDS].sort()).toEqual(table.rows.map((row) => row.id).sort());
  });

  it.each(table.rows)('takes $id to be as dry as the table, hydrates to 0.0001', (row) => {
    const { drySolidsMassFraction, kind } = ingredient(row.id);
    const flavour = FLAVOURS[row.id];
    expect(kind).toBe(row.kind);
    expect(drySolidsMassFraction.value).toBe(flavour ?? row.drySolidsMassFraction);
    if (row.crystalWaterMassFraction !== null && row.crystalWaterMassFraction > 0) {
      const water = 1 - drySolidsMassFraction.value;
      expect(Math.abs(water - row.crystalWaterMassFraction)).toBeLessThanOrEqual(0.0001);
    }
    if (flavour === undefined) {
      expect(drySolidsMassFraction.low ?? null).toBe(row.drySolidsMassFractionLow);
      expect(drySolidsMassFraction.high ?? null).toBe(row.drySolidsMassFractionHigh);
    }
  });

  it.each(table.rows)('splits dry $id into the species of the table', (row) => {
    const { solids, apart, dextroseEquivalent } = ingredient(row.id);
    const shares: Readonly<Record<string, number | undefined>> = { ...solids, ...apart };
    if (dextroseEquivalent !== undefined) {
      expect(row.composition).toEqual({ 'syrup-solids': 1 });
      expect(dextroseEquivalent.value).toBe(row.dextroseEquivalent);
      return;
    }
    // Acids, salts and sweeteners stand in the table by group; flavours as sold are in its notes.
    const groups = ['organic-acid', 'salt', 'intense-sweetener'];
    if (row.id in FLAVOURS) return;
    for (const [name, share] of Object.entries(row.composition)) {
      if (groups.includes(name)) {
        expect(Object.values(shares)).toContain(share);
      } else {
        expect(shares[plain(row.id, name)], name).toBe(share);
      }
    }
    expect(Object.keys(shares)).toHaveLength(Object.keys(row.composition).length);
  });

  it.each(table.rows.filter((row) => row.maxAdditionC !== null))(
    'takes $id into nothing hotter than $maxAdditionC °C',
    (row) => {
      expect(ingredient(row.id).maxAdditionC?.value).toBe(row.maxAdditionC);
    },
  );
});
