import {
  grainingAnchorsTable as anchorsTable,
  grainingSolubilityOthersTable as othersTable,
  grainingSaturationTable as saturationTable,
  grainingSucroseSolubilityTable as sucroseTable,
} from '@vitrose/evidence';
import { describe, expect, it } from 'vitest';
import {
  dissolvingTemperature,
  grainingScore,
  grainingTime,
  grainingTimeInProcess,
  type IngredientId,
  isNone,
  type Mixture,
  mixture,
  type None,
  type Part,
  SOLUBILITY_ROWS,
  type SpeciesId,
  SUPERSATURATION_ZONES,
  solubility,
  solutionOf,
  sucroseSolubility,
  sucroseSupersaturation,
  waterAtRelativeHumidity,
} from 'vitrose';

const dry = (ingredient: IngredientId, massG: number): Part => ({
  ingredient,
  massG,
  drySolidsMassFraction: 1,
});
const syrup = (dextroseEquivalent: number, massG: number): Part => ({
  ...dry('maltodextrin', massG),
  dextroseEquivalent,
});
/** Solids that weigh 100 g, at some water. */
const wet = (parts: readonly Part[], waterMassFraction: number): Mixture =>
  mixture([
    ...parts,
    { ingredient: 'water', massG: (100 * waterMassFraction) / (1 - waterMassFraction) },
  ]);

function answered<T extends object>(result: T): Exclude<T, None> {
  if (isNone(result)) throw new Error(`no answer: ${result.reason}`);
  return result as Exclude<T, None>;
}

describe(`sucroseSolubility against ${sucroseTable.id}: ${sucroseTable.source.title}`, () => {
  it.each(sucroseTable.rows)('gives both computed columns at $temperatureC °C', (row) => {
    const percent = (equation: 'vavrinecz' | 'charles') =>
      sucroseSolubility(row.temperatureC, { equation }).sucroseMassFraction * 100;
    expect(Math.abs(percent('vavrinecz') - row.byVavrineczPercent)).toBeLessThanOrEqual(0.005);
    expect(Math.abs(percent('charles') - row.byCharlesPercent)).toBeLessThanOrEqual(0.005);
  });

  it.each([
    ['vavrinecz', 0.24, 0.5],
    ['charles', 0.31, 0.6],
  ] as const)('of %s misses the old printed column by %f in the mean, %f at most', (...row) => {
    const [equation, mean, most] = row;
    const misses = sucroseTable.rows.map(({ temperatureC, solubilityPercent }) =>
      Math.abs(
        sucroseSolubility(temperatureC, { equation }).sucroseMassFraction * 100 - solubilityPercent,
      ),
    );
    expect(misses.reduce((sum, miss) => sum + miss, 0) / misses.length).toBeCloseTo(mean, 2);
    expect(Math.max(...misses)).toBeLessThanOrEqual(most);
  });

  it('differs from one equation to the other by −0.12 to 0.53 points', () => {
    const apart = (temperatureC: number) =>
      100 *
      (sucroseSolubility(temperatureC, { equation: 'charles' }).sucroseMassFraction -
        sucroseSolubility(temperatureC).sucroseMassFraction);
    expect(apart(25)).toBeCloseTo(-0.12, 2);
    expect(apart(74)).toBeCloseTo(0, 1);
    expect(apart(100)).toBeCloseTo(0.53, 2);
  });
});

describe(`solubility against ${othersTable.id}: ${othersTable.source.title}`, () => {
  const reviewed = othersTable.rows.filter(({ publication }) => publication.startsWith('Hartel'));

  it.each(reviewed.filter(({ solute }) => solute === 'sucrose'))(
    'gives sucrose $solubilityPercent % at $temperatureC °C within 0.31 points',
    ({ temperatureC, solubilityPercent }) => {
      const { massFraction } = answered(solubility('sucrose', temperatureC));
      expect(Math.abs(massFraction * 100 - solubilityPercent)).toBeLessThanOrEqual(0.31);
    },
  );

  it.each(reviewed.filter(({ solute }) => solute !== 'sucrose'))(
    'gives $solute $solubilityPercent % at $temperatureC °C within 0.31 points',
    ({ solute, temperatureC, solubilityPercent }) => {
      const { massFraction } = answered(solubility(solute as SpeciesId, temperatureC));
      expect(Math.abs(massFraction * 100 - solubilityPercent)).toBeLessThanOrEqual(0.31);
    },
  );

  it('has no row that is not printed', () => {
    for (const [species, rows] of Object.entries(SOLUBILITY_ROWS)) {
      for (const [temperatureC, solubilityPercent] of rows) {
        expect(othersTable.rows).toContainEqual(
          expect.objectContaining({ solute: species, temperatureC, solubilityPercent }),
        );
      }
    }
  });

  it('passes by two printed rows: the second values in print of erythritol and mannitol', () => {
    const passedBy = othersTable.rows.filter(({ solute, temperatureC, solubilityPercent }) => {
      const found = solubility(solute as SpeciesId, temperatureC);
      return isNone(found) || Math.abs(found.massFraction * 100 - solubilityPercent) > 0.31;
    });
    expect(passedBy.map(({ solute, temperatureC }) => `${solute} ${temperatureC}`)).toEqual([
      'erythritol 25',
      'mannitol 20',
    ]);
  });

  it.each(['isomalt', 'xylitol', 'maltitol', 'sorbitol', 'mannitol', 'lactitol'] as const)(
    'has too few rows for a dissolving temperature of %s',
    (species) => {
      expect(dissolvingTemperature(species, { massFraction: 0.3 })).toMatchObject({
        reason: 'too-few-points',
      });
    },
  );
});

describe(`sucroseSupersaturation against ${saturationTable.id}: ${saturationTable.source.title}`, () => {
  const of = (q: number, equation: 'long' | 'linear') =>
    answered(
      sucroseSupersaturation(
        mixture([dry('sucrose', 1), dry('glucose', q), { ingredient: 'water', massG: 1 }]),
        { temperatureC: 20, equation },
      ),
    ).supersaturation;
  const ratio = (q: number, equation: 'long' | 'linear') => of(0, equation) / of(q, equation);

  it.each(saturationTable.rows)('gives y = $saturationLinear at $nonSucroseGPerGWater', (row) => {
    expect(ratio(row.nonSucroseGPerGWater, 'linear')).toBeCloseTo(row.saturationLinear, 9);
  });

  const totals: readonly (readonly [otherG: number, totalPercent: number])[] = [
    [0, 66.7],
    ...saturationTable.rows.flatMap((row) =>
      row.totalSolidsAt20CPercent === null
        ? []
        : [[row.nonSucroseGPerGWater, row.totalSolidsAt20CPercent] as const],
    ),
  ];

  it.each(totals)('holds, beside %f g of other solids, %f %% in all', (q, totalPercent) => {
    const percent = (equation: 'long' | 'linear') => {
      const solidsG = 1 / of(q, equation) + q;
      return (100 * solidsG) / (1 + solidsG);
    };
    expect(Math.abs(percent('linear') - totalPercent)).toBeLessThanOrEqual(0.1);
    // Printed as 0.3: to that digit.
    expect(Math.abs(percent('long') - percent('linear'))).toBeLessThan(0.35);
  });

  it('agrees from one form to the other within 0.01 to q = 1 and 0.03 at 2, as printed at 3', () => {
    for (const q of [0.25, 0.5, 0.75, 1]) {
      expect(Math.abs(ratio(q, 'long') - ratio(q, 'linear'))).toBeLessThanOrEqual(0.01);
    }
    expect(Math.abs(ratio(2, 'long') - ratio(2, 'linear'))).toBeLessThanOrEqual(0.035);
    expect(ratio(3, 'long')).toBeCloseTo(saturationTable.constants.atQ3.long, 3);
    expect(ratio(3, 'linear')).toBeCloseTo(saturationTable.constants.atQ3.linear, 3);
    expect(ratio(15.6, 'long')).toBeCloseTo(saturationTable.constants.atQ3.long, 3);
  });

  it('parts the zones as printed', () => {
    expect(saturationTable.constants.zones.map(({ from }) => from)).toEqual([
      SUPERSATURATION_ZONES.metastable.value,
      SUPERSATURATION_ZONES.intermediate.value,
      SUPERSATURATION_ZONES.labile.value,
    ]);
  });
});

describe(`grainingTime against ${anchorsTable.id}: ${anchorsTable.source.title}`, () => {
  /** Spun sucrose with the water that air gives it. */
  function inAir(relativeHumidity: number) {
    const sucrose = solutionOf('sucrose', { drySolidsMassFraction: 0.99 });
    const { moistureMassFraction } = answered(
      waterAtRelativeHumidity(sucrose, { relativeHumidity, temperatureC: 25 }),
    );
    const skin = solutionOf('sucrose', { drySolidsMassFraction: 1 - moistureMassFraction });
    return answered(grainingTime(skin, { temperatureC: 25 }));
  }

  it.each([
    [0.11, 5, -20],
    [0.33, Math.log10(2.8), 13.9],
    [0.45, Math.log10(0.017), undefined],
    [0.75, Math.log10(0.011), undefined],
  ])('gives air of %f, in decades of days, %f', (relativeHumidity, decades, aboveGlassK) => {
    const { log10Days, aboveGlassK: found } = inAir(relativeHumidity);
    expect(Math.abs(log10Days - decades)).toBeLessThanOrEqual(0.1);
    if (aboveGlassK !== undefined) expect(Math.abs(found - aboveGlassK)).toBeLessThanOrEqual(1);
  });

  it.each(anchorsTable.rows.flatMap((row) => ('relativeHumidityPercent' in row ? [row] : [])))(
    'keeps $id within an order of magnitude',
    ({ relativeHumidityPercent, observedFromDays, observedToDays }) => {
      const { band } = inAir(relativeHumidityPercent / 100);
      if (observedFromDays !== null) expect(band[1]).toBeGreaterThanOrEqual(observedFromDays);
      if (observedToDays !== null) expect(band[0]).toBeLessThanOrEqual(observedToDays);
    },
  );

  it('slows growth by 16 % more of a DE 63 syrup as was seen, 3.1 to 7.2 times', () => {
    const at = (percent: number) =>
      answered(
        grainingTimeInProcess(wet([dry('sucrose', 100 - percent), syrup(63, percent)], 0.1), {
          formingC: [90, 120],
        }),
      ).days;
    const slower = at(30) / at(14);
    expect(slower).toBeGreaterThan(3.1);
    expect(slower).toBeLessThan(7.2);
  });
});

describe('grainingTime against values worked out for this model', () => {
  /** Decades of days at 5 % of water and 25 °C, with 10, 20 and 40 % of doctor. */
  const rows: readonly (readonly [
    string,
    (massG: number) => readonly Part[],
    readonly number[],
  ])[] = [
    ['invert sugar', (g) => [dry('glucose', g / 2), dry('fructose', g / 2)], [1.49, 1.43, 1.45]],
    ['fructose', (g) => [dry('fructose', g)], [1.32, 1.12, 0.98]],
    ['sorbitol', (g) => [dry('sorbitol', g)], [1.11, 0.77, 0.47]],
    ['xylitol', (g) => [dry('xylitol', g)], [0.78, 0.25, -0.23]],
    ['syrup of DE 42', (g) => [syrup(42, g)], [2.41, 3.22, 4.82]],
    ['syrup of DE 62', (g) => [syrup(62, g)], [2.06, 2.49, 3.35]],
  ];
  const decades = (parts: readonly Part[]) =>
    answered(grainingTime(wet(parts, 0.05), { temperatureC: 25 })).log10Days;

  it('gives plain sugar 1.62', () => {
    expect(decades([dry('sucrose', 100)])).toBeCloseTo(1.62, 2);
  });

  it.each(rows)('gives %s as it is written', (_, doctor, expected) => {
    const found = [10, 20, 40].map((g) => decades([dry('sucrose', 100 - g), ...doctor(g)]));
    for (const [at, value] of expected.entries()) expect(found[at]).toBeCloseTo(value, 2);
  });

  it.each([
    [0, 16],
    [10, 42],
    [20, 1.8 * 60],
    [30, 4.8 * 60],
    [40, 12.6 * 60],
  ])('lets a mass with %i %% of doctor be worked for %f minutes', (percent, minutes) => {
    const mass = wet([dry('sucrose', 100 - percent), syrup(42, percent)], 0.02);
    const worked = answered(grainingTimeInProcess(mass, { formingC: [70, 120] }));
    expect(worked.atTheCap).toBe(true);
    expect((worked.days * 1440) / minutes).toBeCloseTo(1, 1);
    const seeded = answered(grainingTimeInProcess(mass, { formingC: [70, 120], seeded: true }));
    expect((seeded.days * 14_400) / minutes).toBeCloseTo(1, 1);
  });

  it.each([
    [10, [11, 79, 209, 549]],
    [20, [0.4, 3, 8, 20]],
  ] as const)('gives 0, 20, 30 and 40 %% of doctor, %i K above the glass, its days', (...row) => {
    const [aboveK, days] = row;
    for (const [at, percent] of [0, 20, 30, 40].entries()) {
      const mass = wet([dry('sucrose', 100 - percent), syrup(42, percent)], 0.08);
      const glassC = -answered(grainingTime(mass, { temperatureC: 0 })).aboveGlassK;
      const { days: found } = answered(grainingTime(mass, { temperatureC: glassC + aboveK }));
      expect(found / (days[at] ?? Number.NaN)).toBeCloseTo(1, aboveK === 10 ? 1 : 0);
    }
  });

  it('says low for a wrapped sweet of 60:40, near certain for an open one', () => {
    const sixtyForty = (w: number) => wet([dry('sucrose', 60), syrup(42, 40)], w);
    const core = answered(grainingTime(sixtyForty(0.02), { temperatureC: 25 }));
    expect(core.log10Days).toBeGreaterThan(6.5);
    expect(grainingScore({ days: core.days, targetDays: 365 })).toMatchObject({
      score: 0,
      word: 'low',
    });
    const { moistureMassFraction } = answered(
      waterAtRelativeHumidity(sixtyForty(0.02), { relativeHumidity: 0.55, temperatureC: 25 }),
    );
    const skin = answered(grainingTime(sixtyForty(moistureMassFraction), { temperatureC: 25 }));
    expect(skin.days).toBeGreaterThan(0.2);
    expect(skin.days).toBeLessThan(1.2);
    expect(grainingScore({ days: skin.days, targetDays: 365 })).toMatchObject({
      score: 100,
      word: 'near-certain',
    });
  });
});
