import {
  syrupBlendExamplesTable as blendTable,
  syrupDeContributionsTable as chainTable,
  syrupLegalDefinitionsTable as legalTable,
  grainingSolubilityOthersTable as solubilityTable,
} from '@vitrose/evidence';
import { describe, expect, it } from 'vitest';
import {
  blendTwoSyrups,
  DEXTROSE_CRYSTAL_CONSTANTS,
  dextroseEquivalentOfChain,
  invertSyrup,
  SYRUP_DEFINITIONS,
  type SyrupDefinition,
  swapSyrupForDried,
  syrupFromDried,
} from 'vitrose';

/** Printed to a hundredth of a gram. */
const WITHIN_G = 0.01;

describe(`blends against ${blendTable.id}: ${blendTable.source.title}`, () => {
  const blends = blendTable.rows.filter((row) => row.bDrySolidsMassFraction !== null);
  const powders = blendTable.rows.filter((row) => row.bDrySolidsMassFraction === null);

  it.each(blends)('blendTwoSyrups weighs out $id', (row) => {
    const blend = blendTwoSyrups({
      a: {
        drySolidsMassFraction: row.aDrySolidsMassFraction,
        dextroseEquivalent: row.aDextroseEquivalent,
      },
      b: {
        drySolidsMassFraction: row.bDrySolidsMassFraction ?? Number.NaN,
        dextroseEquivalent: row.bDextroseEquivalent ?? Number.NaN,
      },
      target: {
        massG: row.targetMassG,
        drySolidsMassFraction: row.targetDrySolidsMassFraction,
        dextroseEquivalent: row.targetDextroseEquivalent,
      },
    });
    if ('reason' in blend) throw new Error(blend.reason);
    expect(Math.abs(blend.aG - row.aG)).toBeLessThanOrEqual(WITHIN_G);
    expect(Math.abs(blend.bG - (row.bG ?? Number.NaN))).toBeLessThanOrEqual(WITHIN_G);
    expect(Math.abs(blend.waterG - row.waterG)).toBeLessThanOrEqual(WITHIN_G);
  });

  it.each(powders)('syrupFromDried and swapSyrupForDried weigh out $id', (row) => {
    const dried = { drySolidsMassFraction: row.aDrySolidsMassFraction };
    const syrup = { drySolidsMassFraction: row.targetDrySolidsMassFraction };
    const made = syrupFromDried({ dried, target: { ...syrup, massG: row.targetMassG } });
    const swapped = swapSyrupForDried({ syrupG: row.targetMassG, syrup, dried, recipeWaterG: 0 });
    if ('reason' in made || 'reason' in swapped) throw new Error('no such syrup');
    for (const [driedG, waterG] of [
      [made.driedG, made.waterG],
      [swapped.driedG, swapped.recipeWaterG],
    ] as const) {
      expect(Math.abs(driedG - row.aG)).toBeLessThanOrEqual(WITHIN_G);
      expect(Math.abs(waterG - row.waterG)).toBeLessThanOrEqual(WITHIN_G);
    }
  });

  it('invertSyrup takes up the water of full inversion', () => {
    const { sucroseG, invertG, waterConsumedG } = blendTable.extra.fullInversion;
    const all = invertSyrup({ sucroseG, invertedFraction: 1 });
    expect(Math.abs(all.drySolidsG - invertG)).toBeLessThanOrEqual(WITHIN_G);
    expect(Math.abs(all.waterConsumedG - waterConsumedG)).toBeLessThanOrEqual(WITHIN_G);
  });
});

describe(`dextroseEquivalentOfChain against ${chainTable.id}: ${chainTable.source.title}`, () => {
  it.each(chainTable.rows)('is $byTheory for $degreeOfPolymerisation units', (row) => {
    const { dextroseEquivalent } = dextroseEquivalentOfChain(row.degreeOfPolymerisation);
    expect(Math.abs(dextroseEquivalent - row.byTheory)).toBeLessThanOrEqual(0.01);
  });
});

describe(`SYRUP_DEFINITIONS against ${legalTable.id}: ${legalTable.source.title}`, () => {
  const rules: readonly SyrupDefinition[] = SYRUP_DEFINITIONS;
  const idOf = (product: string) => product.replace(' (EU)', '').replaceAll(' ', '-');
  const share = (percent: number | null) => (percent === null ? undefined : percent / 100);

  it('names every product of the table and no other', () => {
    expect(new Set(rules.map(({ id }) => id))).toEqual(
      new Set(legalTable.rows.map(({ product }) => idOf(product))),
    );
  });

  it.each(legalTable.rows)('asks of $product what the table does', (row) => {
    const own = rules.filter(({ id }) => id === idOf(row.product));
    expect(own.length).toBeGreaterThan(0);
    for (const rule of own) {
      expect(rule.dextroseEquivalentFrom).toBe(row.minDextroseEquivalent ?? undefined);
      expect(rule.dextroseEquivalentBelow).toBe(row.dextroseEquivalentBelow ?? undefined);
      expect(rule.drySolidsFrom).toBe(share(row.minDrySolidsPercent));
      expect(rule.glucoseOfDrySolidsFrom).toBe(share(row.minGlucosePercentOfDrySolids));
      expect(rule.invertOfDrySolidsAbove).toBe(share(row.invertAbovePercentOfDrySolids));
      expect(rule.invertOfDrySolidsTo).toBe(share(row.maxInvertPercentOfDrySolids));
      expect(rule.sulphatedAshOfDrySolidsTo).toBe(share(row.maxSulphatedAshPercentOfDrySolids));
      expect(rule.grade).toBe(row.grade);
    }
  });
});

describe(`dextroseCrystallises against ${solubilityTable.id}: ${solubilityTable.source.title}`, () => {
  it('takes what water dissolves at 20 °C from the table', () => {
    const row = solubilityTable.rows.find(
      ({ solute, temperatureC }) => solute === 'glucose' && temperatureC === 20,
    );
    expect(DEXTROSE_CRYSTAL_CONSTANTS.solubilityMassFraction.value).toBe(
      (row?.solubilityPercent ?? Number.NaN) / 100,
    );
  });
});
