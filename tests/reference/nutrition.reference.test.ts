import {
  nutritionCautionsTable as cautions,
  nutritionEnergyFactorsTable as factors,
  residuals,
  nutritionPolyolToleranceTable as tolerance,
} from '@vitrose/evidence';
import { describe, expect, it } from 'vitest';
import {
  type IngredientId,
  isNone,
  mixture,
  type NutritionRules,
  nutrition,
  type Part,
  polyolShare,
  type SpeciesId,
  solutionOf,
  US_RULES,
  xylitolForDog,
} from 'vitrose';
import { caution } from 'vitrose/words';

const dry = (ingredient: IngredientId, massG: number, more: Partial<Part> = {}): Part => ({
  ingredient,
  massG,
  drySolidsMassFraction: 1,
  ...more,
});

describe(`nutrition against ${factors.id}: ${factors.source.title}`, () => {
  const checks = factors.extra.checkOf15G2PercentWaterUsKcal;
  const water: Part = { ingredient: 'water', massG: 2 };
  const serving = (...parts: readonly Part[]) => {
    const answer = nutrition(mixture([...parts, water]), { rules: 'us', servingG: 15 });
    if (answer.perServing === undefined) throw new RangeError('No serving.');
    return answer.perServing;
  };

  it('gives 58.8 kcal in 15 g of sugar and syrup with 2 % water', () => {
    const { energyKcal } = serving(
      dry('sucrose', 58.8),
      dry('glucose-syrup', 39.2, { dextroseEquivalent: 42 }),
    );
    expect(energyKcal).toBeCloseTo(checks['60:40 sucrose : 42 DE'], 9);
  });

  it.each(['isomalt', 'maltitol', 'xylitol', 'erythritol'] as const)(
    'gives 15 g of %s with 2 % water its printed calories',
    (id) => {
      expect(Math.abs(serving(dry(id, 98)).energyKcal - checks[id])).toBeLessThanOrEqual(0.05);
    },
  );

  it('misses a hydrogenated syrup by its parts, 39.0 for 44.1, and its band ends there', () => {
    const { energyKcal, energyKcalBand } = serving(dry('hydrogenated-starch-hydrolysate', 98));
    const printed = checks['hydrogenated-starch-hydrolysate'];
    expect(energyKcal).toBeCloseTo(39, 1);
    expect(energyKcalBand[1]).toBeCloseTo(printed, 9);
  });

  it('takes the factors of another country', () => {
    const own = (value: number) =>
      ({ value, source: 'given-by-the-cook', grade: 'assumed' }) as const;
    const canada: NutritionRules = {
      ...US_RULES,
      kcalPerG: {
        ...US_RULES.kcalPerG,
        ...Object.fromEntries(
          factors.rows
            .filter(({ id }) => id in US_RULES.kcalPerG)
            .flatMap(({ id, canadaKcalPerG: value }) => (value === null ? [] : [[id, own(value)]])),
        ),
      },
    };
    const of = (species: SpeciesId, rules: NutritionRules) =>
      nutrition(solutionOf(species, { drySolidsMassFraction: 1 }), { rules }).per100G.energyKcal;
    expect(of('maltitol', canada)).toBeCloseTo(300, 9);
    expect(of('xylitol', canada)).toBeCloseTo(300, 9);
    expect(of('sucrose', canada)).toBeCloseTo(400, 9);
    expect(of('maltitol', US_RULES)).toBeCloseTo(210, 9);
  });
});

describe('the printed factors, limits and indices', () => {
  it.each([
    ['nutrition-energy-factors', 'usKcalPerG', 23],
    ['nutrition-energy-factors', 'euKcalPerG', 23],
    ['nutrition-energy-factors', 'euKJPerG', 23],
    ['nutrition-label-rules', 'value', 20],
    ['nutrition-gi', 'glycaemicIndex', 24],
  ] as const)('%s, %s: %i rows are asked, and all keep their limit', (table, column, rows) => {
    const result = residuals(table).find((one) => one.column === column);
    expect(result?.rows).toHaveLength(rows);
    expect(result?.insideLimit).toBe(true);
  });

  it('a mixed syrup is summed from its sugars, a few below what is printed for the whole', () => {
    const [result] = residuals('nutrition-gi');
    const off = Object.fromEntries(
      (result?.rows ?? [])
        .filter(({ difference }) => Math.abs(difference) > 1e-9)
        .map(({ label, difference }) => [label, Number(difference.toFixed(1))]),
    );
    expect(off).toEqual({ 'polyglycitol-hsh': -3.8, 'invert-sugar': -0.5, 'hfcs-55': -2.7 });
  });
});

describe(`polyolShare against ${tolerance.id}: ${tolerance.source.title}`, () => {
  const guide = Object.entries(tolerance.constants.guideGPerKg).filter(
    ([id]) => id !== 'maltitol-syrup',
  );
  const speciesOf = (id: string) =>
    (id === 'hsh' ? 'hydrogenated-oligosaccharides' : id) as SpeciesId;

  it.each(guide)('one kilogram bears %s to %f g', (id, grams) => {
    const pure = solutionOf(speciesOf(id), { drySolidsMassFraction: 1 });
    const answer = polyolShare(pure, { pieceG: grams, bodyMassKg: 1 });
    expect(isNone(answer)).toBe(false);
    if (!isNone(answer)) expect(answer.share).toBeCloseTo(1, 9);
  });

  it('never allows more than the lowest dose without effect in print', () => {
    for (const row of tolerance.rows) {
      if (row.measure !== 'no-effect single dose') continue;
      const pure = solutionOf(row.id as SpeciesId, { drySolidsMassFraction: 1 });
      const answer = polyolShare(pure, { pieceG: row.maleGPerKg ?? Number.NaN, bodyMassKg: 1 });
      expect(isNone(answer), row.id).toBe(false);
      if (!isNone(answer)) expect(answer.share, row.id).toBeGreaterThanOrEqual(1 - 1e-9);
    }
  });
});

describe(`the cautions against ${cautions.id}`, () => {
  const printedValue = (id: string): number => {
    const value = cautions.rows.find((row) => row.id === id)?.value;
    if (typeof value !== 'number') throw new RangeError(id);
    return value;
  };

  it('a dog reaches the printed lines at the printed doses', () => {
    const dose = (mgPerKg: number) =>
      xylitolForDog({ eatenG: mgPerKg / 50, xylitolMassFraction: 1, dogKg: 20 }).reached;
    expect(dose(printedValue('dog-xylitol-hypoglycaemia'))).toBe('low-blood-sugar');
    expect(dose(printedValue('dog-xylitol-hypoglycaemia') - 0.1)).toBe('careful-line');
    expect(dose(printedValue('dog-xylitol-liver'))).toBe('liver');
    expect(dose(printedValue('dog-xylitol-liver') - 0.1)).toBe('low-blood-sugar');
  });

  it('one sweet of 3 g reaches 0.1 g/kg in a dog of 29 kg and 0.5 g/kg in one under 6', () => {
    const { heaviestDogKg } = xylitolForDog({ eatenG: 3, xylitolMassFraction: 0.97, dogKg: 29 });
    expect(Math.round(heaviestDogKg.lowBloodSugar)).toBe(29);
    expect(Math.round(heaviestDogKg.liver)).toBe(6);
  });

  it('the daily limits are those in print', () => {
    const { text } = caution('sweetener-daily-limits');
    for (const [row, name] of [
      ['aspartame-adi-eu', 'aspartame'],
      ['acesulfame-k-adi-eu', 'acesulfame-K'],
      ['saccharin-adi-eu', 'saccharin'],
      ['steviol-adi', 'steviol'],
      ['cyclamate-adi-eu', 'cyclamate'],
      ['neotame-adi-eu', 'neotame'],
      ['neohesperidine-adi-eu', 'neohesperidine'],
      ['advantame-adi-eu', 'advantame'],
    ] as const) {
      expect(text).toContain(`${name} ${printedValue(row)}`);
    }
    expect(text).toContain(`${printedValue('sucralose-adi')} for sucralose`);
    expect(text).toContain(`Erythritol: ${printedValue('erythritol-adi-eu')} g`);
    const oils = caution('strong-oils').text;
    expect(oils).toContain(`${printedValue('menthol-adi')} mg of menthol`);
    expect(oils).toContain(`${printedValue('eugenol-adi')} mg of the eugenol`);
    expect(oils).toContain(`${printedValue('coumarin-tdi')} mg of the coumarin`);
    expect(oils).toContain(`${printedValue('citrus-oil-flash')} °C`);
  });
});
