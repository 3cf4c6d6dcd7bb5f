import {
  sweetnessCheckpointsTable as checkpoints,
  sweetnessFactsheet2008Table as factSheet,
  sweetnessFructoseTemperatureTable as fructoseTable,
  sweetnessGlucoseConcentrationTable as glucoseTable,
  sweetnessRecommendedTable as recommendedTable,
  sweetnessConcentrationResponseTable as responseTable,
  sweetnessReview2014Table as review,
  sweetnessSynergyTable as synergyTable,
  sweetnessGlucoseSyrupDeTable as syrupTable,
} from '@vitrose/evidence';
import { describe, expect, it } from 'vitest';
import {
  type BoosterSweetener,
  boosterForSweetness,
  boosterPairForSweetness,
  INTENSE_RESPONSE,
  type IngredientId,
  type IntenseSweetener,
  isNone,
  mixture,
  type None,
  relativeSweetness,
  SYNERGY_MOST,
  solutionOf,
} from 'vitrose';

/** Printed names that are not those of an ingredient. */
const renamed: Readonly<Record<string, IngredientId>> = {
  hfcs: 'high-fructose-syrup',
  hsh: 'hydrogenated-starch-hydrolysate',
};
const unknown = ['lactulose', 'leucrose', 'maltulose', 'trehalulose'];

function bandOf(species: string): readonly [number, number] {
  const ingredient = renamed[species] ?? (species as IngredientId);
  return relativeSweetness(mixture([{ ingredient, massG: 100 }])).band;
}

const syrup = (dextroseEquivalent: number) =>
  relativeSweetness(mixture([{ ingredient: 'glucose-syrup', massG: 100, dextroseEquivalent }]));

describe(`relativeSweetness against ${review.id}: ${review.source.title}`, () => {
  const rows = review.rows.filter((row) => !unknown.includes(row.species));

  it('has a value for 17 of the 21 printed sweeteners', () => {
    expect(review.rows).toHaveLength(21);
    expect(rows).toHaveLength(17);
  });

  it.each(rows)('meets $species, $sweetnessLow to $sweetnessHigh', (row) => {
    const [low, high] = bandOf(row.species);
    expect(low).toBeLessThanOrEqual(row.sweetnessHigh);
    expect(high).toBeGreaterThanOrEqual(row.sweetnessLow);
  });
});

describe(`relativeSweetness against ${factSheet.id}: ${factSheet.source.title}`, () => {
  it('has a value for all eight', () => {
    expect(factSheet.rows).toHaveLength(8);
  });

  it.each(factSheet.rows)('meets $species, $sweetnessLow to $sweetnessHigh', (row) => {
    const [low, high] = bandOf(row.species);
    expect(low).toBeLessThanOrEqual(row.sweetnessHigh);
    expect(high).toBeGreaterThanOrEqual(row.sweetnessLow);
  });
});

describe(`relativeSweetness against ${syrupTable.id}: ${syrupTable.source.title}`, () => {
  it.each(syrupTable.rows)('meets DE $dextroseEquivalent, $low to $high', (row) => {
    const { band } = syrup(row.dextroseEquivalent);
    expect(band[0]).toBeLessThanOrEqual(row.high);
    expect(band[1]).toBeGreaterThanOrEqual(row.low);
  });

  it('lies within 0.029 of the middles of the bands in the mean', () => {
    const squares = syrupTable.rows.map(
      (row) => (syrup(row.dextroseEquivalent).relativeSweetness - (row.low + row.high) / 2) ** 2,
    );
    const mean = squares.reduce((sum, square) => sum + square, 0) / squares.length;
    expect(Math.sqrt(mean)).toBeLessThanOrEqual(0.029);
  });
});

describe(`relativeSweetness against ${fructoseTable.id}: ${fructoseTable.source.title}`, () => {
  it.each(fructoseTable.rows)('gives fructose $relativeSweetness at $temperatureC °C', (row) => {
    const fructose = mixture([{ ingredient: 'fructose', massG: 100 }]);
    const { relativeSweetness: value } = relativeSweetness(fructose, {
      tastingTemperatureC: row.temperatureC,
    });
    expect(Math.abs(value - row.relativeSweetness)).toBeLessThanOrEqual(0.01);
  });
});

function answered<T extends object>(result: T): Exclude<T, None> {
  if (isNone(result)) throw new Error(`no answer: ${result.reason}`);
  return result as Exclude<T, None>;
}

/** Names of the tables for what the library takes them as. */
const INTENSE: Readonly<Record<string, IntenseSweetener>> = {
  aspartame: 'aspartame',
  'acesulfame-k': 'acesulfame-k',
  'saccharin-na': 'saccharin',
  'rebaudioside-a': 'steviol-glycosides',
  sucralose: 'sucralose',
};

/** Times as sweet as sugar, at a dose as sweet as sugar at so many per cent. */
function potency(sweetener: IntenseSweetener, percent: number): number {
  const salt = mixture([{ ingredient: 'salt', massG: 100, drySolidsMassFraction: 1 }]);
  const targetRelativeSweetness = percent / 50;
  const { massFraction } = answered(
    boosterForSweetness(salt, {
      sweetener,
      targetRelativeSweetness,
      tastingConcentrationGPer100Ml: 50,
    }),
  );
  return targetRelativeSweetness / massFraction;
}

describe(`relativeSweetness against ${glucoseTable.id}: ${glucoseTable.source.title}`, () => {
  const glucose = (sucroseEquivalencePercent: number) =>
    relativeSweetness(mixture([{ ingredient: 'glucose', massG: 100 }]), {
      sucroseEquivalencePercent,
    }).relativeSweetness;

  it.each(glucoseTable.rows.slice(0, 3))('gives $relativeSweetness at $sucrosePercent %', (row) => {
    expect(Math.abs(glucose(row.sucrosePercent) - row.relativeSweetness)).toBeLessThanOrEqual(
      0.014,
    );
  });

  it('misses the row at 40 %, where both are equal, by 0.02', () => {
    expect(glucose(40)).toBeCloseTo(0.98, 2);
  });
});

describe(`the dose curves against ${responseTable.id}: ${responseTable.source.title}`, () => {
  const rows = responseTable.rows.flatMap((row) => {
    const sweetener = INTENSE[row.sweetener];
    return sweetener === undefined ? [] : [{ ...row, species: sweetener }];
  });

  it('has five of the seven; nobody boils cyclamate or neotame here', () => {
    expect(responseTable.rows).toHaveLength(7);
    expect(rows).toHaveLength(5);
  });

  it.each(rows)('holds the row of $sweetener', (row) => {
    expect(INTENSE_RESPONSE[row.species]).toMatchObject({
      maximumPercent: { value: row.maximumPercent, grade: 'memory' },
      halfMgPerL: { value: row.halfMgPerL, grade: 'memory' },
      testedPercent: [row.validFromPercent, row.validToPercent],
    });
  });

  it.each([
    ['aspartame', [250, 196, 143]],
    ['acesulfame-k', [204, 140, 77]],
    ['saccharin', [686, 432, 178]],
    ['steviol-glycosides', [400, 250, 100]],
    ['sucralose', [728, 628, 527]],
  ] as const)('makes %s %j times as sweet as sugar at 2, 5 and 8 %%', (sweetener, times) => {
    for (const [at, percent] of [2, 5, 8].entries()) {
      expect(Math.abs(potency(sweetener, percent) - (times[at] ?? 0))).toBeLessThanOrEqual(0.5);
    }
  });

  it.each(recommendedTable.rows.filter(({ id }) => INTENSE[id] !== undefined))(
    'lies in the printed range of $id, $low to $high, at 5 %',
    ({ id, low, high }) => {
      const times = potency(INTENSE[id] as IntenseSweetener, 5);
      expect(times).toBeGreaterThanOrEqual(low);
      expect(times).toBeLessThanOrEqual(high);
    },
  );
});

describe(`boosterForSweetness against ${checkpoints.id}: ${checkpoints.source.title}`, () => {
  const errors = checkpoints.rows.map(
    (row) =>
      potency(row.sweetener as IntenseSweetener, row.sucroseEquivalencePercent) / row.potency - 1,
  );

  it('is 4.5 % over at 4.3 % and 18 % under at 10 %', () => {
    expect(errors[0]).toBeCloseTo(0.045, 3);
    expect(errors[1]).toBeCloseTo(-0.18, 2);
  });

  it('misses the cold row by a third: cold is not in it', () => {
    expect(errors[2]).toBeCloseTo(-0.33, 2);
  });
});

describe(`synergy against ${synergyTable.id}: ${synergyTable.source.title}`, () => {
  it.each([
    ['acesulfame-k + aspartame', 'acesulfameKWithAspartame'],
    ['xylitol + sorbitol', 'xylitolWithSorbitol'],
  ] as const)('of %s is at most what is printed', (pair, key) => {
    const row = synergyTable.rows.find((one) => one.pair === pair);
    expect(SYNERGY_MOST[key].value).toBe(row?.recommendedMost);
  });
});

describe('boosters that bring isomalt to the sweetness of sugar', () => {
  const ISOMALT = solutionOf('isomalt', { drySolidsMassFraction: 1 });
  const parity = { targetRelativeSweetness: 1 };
  /**
   * Per cent of the finished sweet, with the last printed digit; the printed figures leave out that
   * a booster displaces what it sweetens, 0.7 % of the dose at most.
   */
  const rows: readonly (readonly [BoosterSweetener, number, number, number, number, number])[] = [
    ['sucralose', 0.07, 0.08, 0.048, 0.101, 0.0006],
    ['aspartame', 0.21, 0.25, 0.14, 0.34, 0.006],
    ['acesulfame-k', 0.26, 0.36, 0.17, 0.5, 0.0075],
    ['steviol-glycosides', 0.13, 0.2, 0.085, 0.3, 0.006],
    ['saccharin', 0.078, 0.116, 0.05, 0.17, 0.005],
  ];

  it.each(rows)('takes of %s %f %% weak, %f %% usual, from %f to %f', (...row) => {
    const [sweetener, weak, usual, low, high, digit] = row;
    const at = (tastingConcentrationGPer100Ml?: number) =>
      answered(
        boosterForSweetness(ISOMALT, { sweetener, ...parity, tastingConcentrationGPer100Ml }),
      );
    const near = (fraction: number, percent: number) =>
      expect(Math.abs(fraction * 100 - percent)).toBeLessThanOrEqual(digit);
    near(at(5).massFraction, weak);
    near(at(10).massFraction, usual);
    expect(at().massFraction).toBe(at(10).massFraction);
    near(at().band[0], low);
    near(at().band[1], high);
  });

  it.each([
    [1, 5, 0.11, 0.095, 0.006],
    [1, 10, 0.13, 0.1, 0.006],
    [1.35, 5, 0.082, 0.069, 0.0006],
    [1.35, 10, 0.089, 0.073, 0.0006],
  ])('takes of a pair with synergy %f, tasted at %i, %f and %f %%', (...row) => {
    const [synergy, tastingConcentrationGPer100Ml, first, second, digit] = row;
    const { acesulfameK, aspartame } = answered(
      boosterPairForSweetness(ISOMALT, { ...parity, synergy, tastingConcentrationGPer100Ml }),
    );
    expect(Math.abs(acesulfameK.massFraction * 100 - first)).toBeLessThanOrEqual(digit);
    expect(Math.abs(aspartame.massFraction * 100 - second)).toBeLessThanOrEqual(digit);
  });

  it.each([
    ['sucralose at its cap past sugar', { sucralose: 0.1 }, 1, 1.1],
    ['two others at theirs to 0.85', { 'acesulfame-k': 0.05, aspartame: 0.1 }, 1, 0.85],
    ['the same with synergy to 0.96', { 'acesulfame-k': 0.05, aspartame: 0.1 }, 1.35, 0.96],
  ] as const)('brings %s', (_, grams, acesulfameKWithAspartame, sweet) => {
    const boosted = mixture([
      { ingredient: 'isomalt', massG: 100, drySolidsMassFraction: 1 },
      ...Object.entries(grams).map(([ingredient, massG]) => ({
        ingredient: ingredient as IntenseSweetener,
        massG,
      })),
    ]);
    const options = { synergy: { acesulfameKWithAspartame } };
    const { relativeSweetness: found } = relativeSweetness(boosted, options);
    expect(Math.abs(found - sweet)).toBeLessThanOrEqual(0.006);
  });
});
