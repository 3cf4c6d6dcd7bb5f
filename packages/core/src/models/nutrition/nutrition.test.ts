import { describe, expect, it } from 'vitest';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import type { IngredientId } from '../../matter/ingredients/types.js';
import { mixture } from '../../matter/mixture/mixture.js';
import { solutionOf } from '../../matter/mixture/solution-of.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { type NutritionOptions, nutrition } from './nutrition.js';
import { EU_RULES } from './rules-eu.js';
import { US_REFERENCE_AMOUNTS_G, US_RULES } from './rules-us.js';
import type { ClaimId, NutritionRules } from './types.js';

/** Grams of each, all of them dry. */
function sweet(parts: Readonly<Partial<Record<IngredientId, number>>>): Mixture {
  return mixture(
    Object.entries(parts).map(([ingredient, massG]) => ({
      ingredient: ingredient as IngredientId,
      massG,
      ...(ingredient === 'water' ? {} : { drySolidsMassFraction: 1 }),
    })),
  );
}

function claimOf(id: ClaimId, of: Mixture, options: NutritionOptions) {
  return nutrition(of, options).claims.find((claim) => claim.id === id);
}

const kindOf = (id: ClaimId, of: Mixture, options: NutritionOptions) =>
  claimOf(id, of, options)?.kind;

describe('what a label counts', () => {
  const boiled = sweet({ sucrose: 60, 'dried-glucose-syrup': 38, water: 2 });

  it('calls only the first two chain lengths of a syrup sugars', () => {
    const { per100G } = nutrition(boiled, { rules: 'eu' });
    const syrup = boiled.solids.find((solid) => solid.kind === 'saccharides');
    const short =
      syrup?.kind === 'saccharides' ? syrup.profile.dp1 + syrup.profile.dp2 : Number.NaN;
    expect(short).toBeGreaterThan(0.3);
    expect(short).toBeLessThan(0.36);
    expect(per100G.sugarsG).toBeCloseTo(60 + 38 * short, 9);
    expect(per100G.addedSugarsG).toBe(per100G.sugarsG);
    expect(per100G.carbohydrateG).toBeCloseTo(98, 9);
  });

  it('gives the EU kilojoules of their own, never 4.184 times the calories', () => {
    const { per100G } = nutrition(boiled, { rules: 'eu' });
    expect(per100G.energyKcal).toBeCloseTo(98 * 4, 9);
    expect(per100G.energyKJ).toBeCloseTo(98 * 17, 9);
    const { per100G: american } = nutrition(boiled, { rules: 'us' });
    expect(american.energyKJ).toBeCloseTo(american.energyKcal * 4.184, 9);
  });

  it('puts acid and fibre into the carbohydrate of the US, and out of that of the EU', () => {
    const sour = sweet({ isomalt: 95, 'citric-acid': 2, polydextrose: 3 });
    const us = nutrition(sour, { rules: 'us' }).per100G;
    const eu = nutrition(sour, { rules: 'eu' }).per100G;
    expect(us.carbohydrateG).toBeCloseTo(100, 9);
    expect(eu.carbohydrateG).toBeCloseTo(95, 9);
    expect(us.energyKcal).toBeCloseTo(95 * 2 + 2 * 4 + 3 * 1, 9);
    expect(eu.energyKcal).toBeCloseTo(95 * 2.4 + 2 * 3 + 3 * 2, 9);
    for (const { organicAcidsG, fibreG, polyolsG } of [us, eu]) {
      expect([organicAcidsG, fibreG, polyolsG]).toEqual([
        expect.closeTo(2, 9),
        expect.closeTo(3, 9),
        expect.closeTo(95, 9),
      ]);
    }
  });

  it('keeps allulose out of the sugars of the US', () => {
    const rare = sweet({ allulose: 100 });
    const us = nutrition(rare, { rules: 'us' }).per100G;
    expect([us.sugarsG, us.addedSugarsG, us.carbohydrateG]).toEqual([0, 0, 100]);
    expect(us.energyKcal).toBeCloseTo(40, 9);
    expect(nutrition(rare, { rules: 'eu' }).per100G.sugarsG).toBe(100);
  });

  it('counts fat, alcohol, protein and salt', () => {
    const caramel = mixture([
      { ingredient: 'sucrose', massG: 80 },
      { ingredient: 'butter', massG: 10 },
      { ingredient: 'salt', massG: 1, drySolidsMassFraction: 1 },
      { ingredient: 'flavour-alcohol', massG: 1 },
      { ingredient: 'gelatin', massG: 1 },
      { ingredient: 'water', massG: 7 },
    ]);
    const { per100G } = nutrition(caramel, { rules: 'eu' });
    expect(per100G.fatG).toBeCloseTo(10 * 0.84 * 0.965 + 0.6 / 12, 6);
    expect(per100G.ethanolG).toBeCloseTo((0.6 * 11) / 12, 6);
    expect(per100G.proteinG).toBeCloseTo(10 * 0.84 * 0.01 + 0.88 * 0.985, 6);
    expect(per100G.saltG).toBeCloseTo(0.3934 * 2.5, 6);
    const { energyKJ, carbohydrateG, fatG, ethanolG, proteinG } = per100G;
    expect(energyKJ).toBeCloseTo(carbohydrateG * 17 + fatG * 37 + ethanolG * 29 + proteinG * 17, 6);
  });

  it('opens the band where a hydrogenated syrup may have been weighed as a whole', () => {
    const syrup = sweet({ 'hydrogenated-starch-hydrolysate': 98, water: 2 });
    const { energyKcal, energyKcalBand } = nutrition(syrup, { rules: 'us' }).per100G;
    expect(energyKcal).toBeCloseTo(98 * (0.35 * 2.1 + 0.08 * 2.6 + 0.57 * 3), 9);
    expect(energyKcalBand).toEqual([expect.closeTo(energyKcal, 9), expect.closeTo(98 * 3, 9)]);
    const european = nutrition(syrup, { rules: 'eu' }).per100G;
    expect(european.energyKcalBand).toEqual([european.energyKcal, european.energyKcal]);
  });

  it('does not blame all maltitol on a little hydrogenated syrup', () => {
    const mostly = sweet({ maltitol: 98, 'maltitol-syrup': 2 });
    const { energyKcal, energyKcalBand } = nutrition(mostly, { rules: 'us' }).per100G;
    expect(energyKcalBand[1] - energyKcal).toBeLessThan(2 * 0.9);
    expect(energyKcalBand[1] - energyKcal).toBeGreaterThan(0.5);
  });

  it('says what has no factor, and leaves it out', () => {
    const { per100G, warnings } = nutrition(sweet({ sucrose: 99, 'flavour-propylene-glycol': 1 }), {
      rules: 'eu',
    });
    expect(per100G.energyKcal).toBeCloseTo(99 * 4 + 0.1 * 9, 9);
    expect(warnings).toEqual([
      {
        code: 'species-not-modelled',
        parameter: 'shareOfLabel',
        value: expect.closeTo(0.009, 12),
        limits: [0, 0],
        subject: 'propylene-glycol',
      },
    ]);
  });

  it('scales to a serving and a piece', () => {
    const { per100G, perServing, perPiece } = nutrition(boiled, {
      rules: 'us',
      servingG: 15,
      pieceG: 4,
    });
    for (const key of Object.keys(per100G) as (keyof typeof per100G)[]) {
      if (key === 'energyKcalBand') continue;
      expect(perServing?.[key]).toBeCloseTo(per100G[key] * 0.15, 9);
      expect(perPiece?.[key]).toBeCloseTo(per100G[key] * 0.04, 9);
    }
    expect(perServing?.energyKcalBand[1]).toBeCloseTo(per100G.energyKcalBand[1] * 0.15, 9);
    expect(nutrition(boiled, { rules: 'us' }).perServing).toBeUndefined();
  });
});

describe('claims of the EU', () => {
  const eu = { rules: 'eu' } as const;
  const sugars = (grams: number) => sweet({ xylitol: 100 - grams, sucrose: grams });

  it.each([
    ['sugar-free', 0.5],
    ['low-sugars', 5],
  ] as const)('%s: at the limit yes, just under yes, just over no', (id, limit) => {
    expect(kindOf(id, sugars(limit), eu)).toBe('met');
    expect(kindOf(id, sugars(limit - 0.001), eu)).toBe('met');
    expect(kindOf(id, sugars(limit + 0.001), eu)).toBe('not-met');
    expect(claimOf(id, sugars(limit + 0.001), eu)).toMatchObject({
      quantity: 'sugarsG',
      per: '100G',
      passes: 'at-most',
      value: expect.closeTo(limit + 0.001, 9),
      limit,
      rule: 'eu-1924-2006-annex',
      grade: 'secondary',
    });
  });

  it('no added sugars: not a trace of sugar or of syrup', () => {
    expect(kindOf('no-added-sugars', sweet({ xylitol: 100 }), eu)).toBe('met');
    expect(kindOf('no-added-sugars', sugars(0.001), eu)).toBe('not-met');
    const long = sweet({ xylitol: 90, maltodextrin: 10 });
    expect(claimOf('no-added-sugars', long, eu)).toMatchObject({ kind: 'not-met', limit: 0 });
  });

  it.each([
    ['at 40 kcal', 10, 'met'],
    ['just under', 9.999, 'met'],
    ['just over', 10.001, 'not-met'],
  ] as const)('low energy %s: %f g of sugar in 100', (_, grams, kind) => {
    const thin = sweet({ erythritol: 100 - grams, sucrose: grams });
    expect(kindOf('low-energy', thin, eu)).toBe(kind);
  });

  it('reduced energy: at 30 % less, just more and just less', () => {
    // Of 100 g xylitol saves 160 of 400 kcal: three quarters of it save the thirty per cent.
    const saving = (xylitol: number) => sweet({ xylitol, sucrose: 100 - xylitol });
    expect(kindOf('reduced-energy', saving(75), eu)).toBe('met');
    expect(kindOf('reduced-energy', saving(75.01), eu)).toBe('met');
    expect(kindOf('reduced-energy', saving(74.99), eu)).toBe('not-met');
  });

  it('reduced sugars only beside a sweet that is named, and with no more energy', () => {
    const sugar = sweet({ sucrose: 98, water: 2 });
    expect(claimOf('reduced-sugars', sugars(70), eu)).toBeUndefined();
    const beside = { ...eu, comparedWith: sugar };
    expect(kindOf('reduced-sugars', sugars(98 * 0.7), beside)).toBe('met');
    expect(kindOf('reduced-sugars', sugars(98 * 0.7 - 0.01), beside)).toBe('met');
    expect(kindOf('reduced-sugars', sugars(98 * 0.7 + 0.01), beside)).toBe('not-met');
    const syrup = sweet({ 'dried-glucose-syrup': 100 });
    expect(claimOf('reduced-sugars', syrup, beside)).toMatchObject({
      kind: 'not-met',
      quantity: 'energySavedShare',
    });
  });

  it('asks for an analysis where isomalt keeps a limit of sugars', () => {
    const drop = sweet({ isomalt: 97, 'citric-acid': 1, water: 2 });
    expect(claimOf('sugar-free', drop, eu)).toMatchObject({
      kind: 'needs-analysis',
      because: 'isomalt-may-free-sugar',
      value: 0,
      limit: 0.5,
    });
    expect(kindOf('sugar-free', sweet({ isomalt: 99, sucrose: 1 }), eu)).toBe('not-met');
    expect(kindOf('reduced-energy', drop, eu)).toBe('met');
  });
});

describe('claims of the US', () => {
  const us = { rules: 'us' } as const;
  const sugars = (grams: number) => sweet({ xylitol: 100 - grams, sucrose: grams });

  it('sugar-free: below half a gram in the reference amount, not at it', () => {
    const limit = (0.5 / 15) * 100;
    expect(kindOf('sugar-free', sugars(limit), us)).toBe('not-met');
    expect(kindOf('sugar-free', sugars(limit - 0.001), us)).toBe('met');
    expect(kindOf('sugar-free', sugars(limit + 0.001), us)).toBe('not-met');
  });

  it('sugar-free: in the serving as well', () => {
    const little = sugars(2);
    expect(kindOf('sugar-free', little, us)).toBe('met');
    expect(kindOf('sugar-free', little, { ...us, servingG: 25 })).toBe('not-met');
    expect(claimOf('sugar-free', little, { ...us, servingG: 24.9 })).toMatchObject({
      kind: 'met',
      per: 'serving',
      value: expect.closeTo(0.498, 9),
    });
  });

  it.each([
    [15, 'not-met'],
    [30, 'not-met'],
    [30.1, 'met'],
  ] as const)(
    'low energy looks at 50 g where the reference amount of %f g is small: %s',
    (referenceG, kind) => {
      // 1.2 kcal/g: 36 in 30 g, 60 in 50 g.
      const half = sweet({ erythritol: 50, xylitol: 50 });
      expect(kindOf('low-energy', half, { ...us, referenceG })).toBe(kind);
    },
  );

  it('low energy: at 40 kcal in 50 g yes, just over no', () => {
    const of = (xylitol: number) => sweet({ xylitol, erythritol: 100 - xylitol });
    expect(kindOf('low-energy', of(100 / 3), us)).toBe('met');
    expect(kindOf('low-energy', of(33.3), us)).toBe('met');
    expect(claimOf('low-energy', of(33.4), us)).toMatchObject({ kind: 'not-met', per: '50G' });
  });

  it('calorie-free: below five in the reference amount, not at five', () => {
    const of = (sucrose: number) => sweet({ sucrose, erythritol: 100 - sucrose });
    const limit = (5 / 15 / 4) * 100;
    expect(kindOf('calorie-free', of(limit - 0.001), us)).toBe('met');
    expect(kindOf('calorie-free', of(limit), us)).toBe('not-met');
    expect(kindOf('calorie-free', of(limit + 0.001), us)).toBe('not-met');
  });

  it('reduced energy: a quarter less, to the calorie', () => {
    const of = (xylitol: number) => sweet({ xylitol, sucrose: 100 - xylitol });
    expect(kindOf('reduced-energy', of(62.5), us)).toBe('met');
    expect(kindOf('reduced-energy', of(62.51), us)).toBe('met');
    expect(kindOf('reduced-energy', of(62.49), us)).toBe('not-met');
  });

  it('asks for an analysis where the limit lies inside the band', () => {
    // By its parts it saves a third, as a whole syrup exactly a quarter; a little sugar tips it.
    const syrup = sweet({ 'hydrogenated-starch-hydrolysate': 98, sucrose: 2 });
    expect(claimOf('reduced-energy', syrup, us)).toMatchObject({
      kind: 'needs-analysis',
      because: 'limit-lies-in-the-band',
    });
    const whole = sweet({ 'hydrogenated-starch-hydrolysate': 100 });
    expect(kindOf('reduced-energy', whole, us)).toBe('met');
  });

  it('calls an isomalt sweet reduced and not low in energy', () => {
    const drop = sweet({ isomalt: 98, water: 2 });
    expect(claimOf('low-energy', drop, us)).toMatchObject({
      kind: 'not-met',
      per: '50G',
      value: expect.closeTo(98, 9),
      limit: 40,
    });
    expect(claimOf('reduced-energy', drop, us)?.value).toBeCloseTo(0.5, 9);
  });

  it('has the reference amounts as data', () => {
    const mint = sweet({ xylitol: 90, sucrose: 10 });
    const referenceG = US_REFERENCE_AMOUNTS_G['breath-mints'].value;
    expect(kindOf('sugar-free', mint, us)).toBe('not-met');
    expect(kindOf('sugar-free', mint, { ...us, referenceG })).toBe('met');
  });
});

describe('statements and legal limits', () => {
  const said = (of: Mixture, rules: 'us' | 'eu') =>
    nutrition(of, { rules }).statements.map(({ id }) => id);

  it.each([
    [10, false],
    [9.99, false],
    [10.01, true],
  ])('of the EU: %f %% of sugar alcohols may be laxative: %s', (xylitol, isSaid) => {
    const { statements } = nutrition(sweet({ xylitol, sucrose: 100 - xylitol }), { rules: 'eu' });
    const found = statements.find(({ id }) => id === 'may-be-laxative');
    expect(found !== undefined).toBe(isSaid);
    if (found !== undefined) {
      expect(found.numbers.polyolsMassFraction).toBeCloseTo(0.1001, 9);
      expect(found).toMatchObject({ rule: 'eu-1169-2011-annex-3', grade: 'secondary' });
    }
  });

  it('of the EU: by the name what sweetens it', () => {
    expect(said(sweet({ sucrose: 100 }), 'eu')).toEqual([]);
    expect(said(sweet({ xylitol: 5, sucrose: 95 }), 'eu')).toEqual(['with-sugars-and-sweeteners']);
    expect(said(sweet({ sucralose: 0.01, polydextrose: 99.99 }), 'eu')).toEqual([
      'with-sweeteners',
    ]);
    expect(said(sweet({ xylitol: 99.9, aspartame: 0.1 }), 'eu')).toEqual([
      'with-sweeteners',
      'may-be-laxative',
      'source-of-phenylalanine',
    ]);
  });

  it('of the US: sugar-free is no saving, and sorbitol and mannitol by the day', () => {
    const mostlyDextrin = sweet({ 'citric-acid': 90, sorbitol: 10 });
    const { statements } = nutrition(mostlyDextrin, { rules: 'us' });
    expect(statements.map(({ id }) => id)).toEqual([
      'not-a-reduced-calorie-food',
      'laxative-by-the-day',
    ]);
    expect(statements[1]).toMatchObject({
      subject: 'sorbitol',
      numbers: { limitG: 50, reachedByEatingG: expect.closeTo(500, 6) },
    });
    expect(said(sweet({ xylitol: 100 }), 'us')).toEqual([]);
    expect(said(sweet({ mannitol: 100 }), 'us')).toEqual(['laxative-by-the-day']);
  });

  it('tests a dose only where there is one', () => {
    const dosesOf = (of: Mixture, rules: 'us' | 'eu') => nutrition(of, { rules }).doses;
    expect(dosesOf(sweet({ sucrose: 100 }), 'us')).toEqual([]);
    for (const [mannitol, kind] of [
      [5, 'within'],
      [4.99, 'within'],
      [5.01, 'over'],
    ] as const) {
      expect(dosesOf(sweet({ mannitol, isomalt: 100 - mannitol }), 'us')).toMatchObject([
        { species: 'mannitol', kind, limitMassFraction: 0.05 },
      ]);
    }
    expect(dosesOf(sweet({ isomalt: 99.8, sucralose: 0.2 }), 'eu')).toMatchObject([
      { species: 'sucralose', kind: 'over', limitMassFraction: 0.001, grade: 'memory' },
    ]);
  });
});

describe('rules of your own', () => {
  it('change a factor and nothing else', () => {
    const before2016: NutritionRules = {
      ...US_RULES,
      kcalPerG: {
        ...US_RULES.kcalPerG,
        erythritol: { value: 0.2, source: 'given-by-the-cook', grade: 'assumed' },
      },
    };
    const cool = sweet({ erythritol: 100 });
    expect(nutrition(cool, { rules: before2016 }).per100G.energyKcal).toBeCloseTo(20, 9);
    expect(nutrition(cool, { rules: 'us' }).per100G.energyKcal).toBe(0);
  });

  it('change a limit', () => {
    const [first, ...others] = EU_RULES.claims;
    const strict: NutritionRules = {
      ...EU_RULES,
      claims: [
        {
          ...first,
          conditions: first.conditions.map((one) => ({
            ...one,
            limit: { ...one.limit, value: 0.1 },
          })),
        },
        ...others,
      ],
    };
    const trace = sweet({ xylitol: 99.7, sucrose: 0.3 });
    expect(kindOf('sugar-free', trace, { rules: strict })).toBe('not-met');
    expect(kindOf('sugar-free', trace, { rules: 'eu' })).toBe('met');
  });

  it('warn where they have no factor for a sugar alcohol', () => {
    const { lactitol: _, ...kcalPerG } = US_RULES.kcalPerG;
    const { per100G, warnings } = nutrition(sweet({ lactitol: 50, sucrose: 50 }), {
      rules: { ...US_RULES, kcalPerG },
    });
    expect(per100G.energyKcal).toBeCloseTo(200, 9);
    expect(warnings).toMatchObject([{ subject: 'lactitol', value: 0.5 }]);
  });

  it('are refused where a factor cannot be meant', () => {
    for (const value of [-1, 17, Number.NaN]) {
      const kcalPerG = { ...US_RULES.kcalPerG, carbohydrate: { ...US_RULES.kcalPerG.fat, value } };
      expect(() => nutrition(sweet({ sucrose: 1 }), { rules: { ...US_RULES, kcalPerG } })).toThrow(
        expect.objectContaining({
          name: 'ModelRangeError',
          parameter: 'kcalPerG',
          received: value,
        }),
      );
    }
    const { polyol: _, ...perG } = EU_RULES.kJ.perG;
    expect(() =>
      nutrition(sweet({ xylitol: 1 }), { rules: { ...EU_RULES, kJ: { perG } } }),
    ).toThrow(expect.objectContaining({ parameter: 'kJPerG' }));
  });
});

describe('what cannot be meant', () => {
  const sugar = sweet({ sucrose: 1 });

  it('a mixture that weighs nothing', () => {
    const nothing: Mixture = { ...sugar, solids: [], massG: 0 };
    expect(() => nutrition(nothing, { rules: 'eu' })).toThrow(
      expect.objectContaining({ code: 'outside-range', parameter: 'massG', received: 0 }),
    );
    const broken: Mixture = {
      ...sugar,
      solids: [{ kind: 'pure', species: 'sucrose', massG: Number.NaN }],
    };
    expect(() => nutrition(broken, { rules: 'eu' })).toThrow(ModelRangeError);
  });

  it.each(['servingG', 'pieceG', 'referenceG'] as const)('a %s of nothing', (portion) => {
    for (const grams of [0, -5, 0.009, 100_001, Number.NaN]) {
      expect(() => nutrition(sugar, { rules: 'us', [portion]: grams })).toThrow(
        expect.objectContaining({ name: 'ModelRangeError', parameter: portion, received: grams }),
      );
    }
  });

  it('a law nobody knows', () => {
    expect(() => nutrition(sugar, { rules: 'mars' as 'us' })).toThrow(
      expect.objectContaining({ code: 'unknown-name', parameter: 'rules', received: 'mars' }),
    );
  });

  it('nothing is claimed to be saved beside plain water, or in it', () => {
    const water = solutionOf('sucrose', { drySolidsMassFraction: 0 });
    const beside = nutrition(sugar, { rules: 'eu', comparedWith: water }).claims;
    expect(beside.map(({ id }) => id)).not.toContain('reduced-energy');
    expect(beside.map(({ id }) => id)).not.toContain('reduced-sugars');
    const { per100G, claims } = nutrition(water, { rules: 'eu' });
    expect(per100G.energyKcal).toBe(0);
    expect(claims.map(({ id }) => id)).not.toContain('reduced-energy');
  });
});
