import fc from 'fast-check';
import {
  type BatchDocument,
  type Cook,
  type FormulaLine,
  type Pieces,
  WRAP_FILM_IDS,
  type Wrap,
} from 'vitrose';
import * as field from './arbitrary-fields.js';
import { between, countWithin, group, within } from './arbitrary-fields.js';
import { anyLine, lateLines, syrupLine } from './arbitrary-formula.js';

const ownNames = ['orchard-syrup', 'bench sugar/2', 'Zucker~grob'] as const;

const underVacuumPa = within('cook/underVacuumPa');

const anyCook: fc.Arbitrary<Cook> = fc.oneof(
  group(
    {
      toStage: fc.constantFrom(
        'thread',
        'soft-ball',
        'firm-ball',
        'hard-ball',
        'soft-crack',
        'hard-crack',
        'clear-liquid',
        'brown-liquid',
      ),
      aim: fc.constantFrom('low', 'middle', 'high'),
      underVacuumPa,
    },
    ['toStage'],
  ),
  group({ toSeaLevelC: within('cook/toSeaLevelC'), underVacuumPa }, ['toSeaLevelC']),
  group({ toMoistureMassFraction: within('cook/toMoistureMassFraction'), underVacuumPa }, [
    'toMoistureMassFraction',
  ]),
  group({ toGlassTransitionC: within('cook/toGlassTransitionC'), underVacuumPa }, [
    'toGlassTransitionC',
  ]),
);

const wrap: fc.Arbitrary<Wrap> = fc.oneof(
  fc.constantFrom('none', 'twist'),
  group(
    {
      film: fc.constantFrom(...WRAP_FILM_IDS),
      areaCm2: within('wrap/areaCm2'),
      sealFactor: within('wrap/sealFactor'),
    },
    ['film', 'areaCm2'],
  ),
);

const anyPieces: fc.Arbitrary<Pieces> = group({
  massG: within('pieces/massG'),
  cavityMl: within('pieces/cavityMl'),
  count: countWithin('pieces/count'),
  finishedMassG: within('pieces/finishedMassG'),
  lossFraction: within('pieces/lossFraction'),
  breakFraction: within('pieces/breakFraction'),
});

/** Everything but formula and cook, any of it left out. */
const surroundings = {
  name: fc.constantFrom('Harbour lemon drops', 'Tin roof mints', 'Übungsblech', '🍬'),
  note: fc.string({ maxLength: 40 }),
  kitchen: field.kitchen,
  thermometer: field.thermometer,
  hob: field.hob,
  pan: field.pan,
  room: field.room,
  store: group({
    temperatureC: within('store/temperatureC'),
    relativeHumidity: within('store/relativeHumidity'),
    forDays: within('store/forDays'),
  }),
  wrap,
  handling: group({ stirredAfterBoil: fc.boolean() }),
  water: group({ alkalinityMmolPerL: within('water/alkalinityMmolPerL') }),
  mould: field.mould,
};

/** Any document the format allows, most of them no recipe anyone would cook. */
export const anyBatch: fc.Arbitrary<BatchDocument> = fc
  .uniqueArray(fc.tuple(fc.constantFrom(...ownNames), field.ownIngredient), {
    selector: ([name]) => name,
    maxLength: 2,
  })
  .chain((own) => {
    const names = own.map(([name]) => name);
    const ingredients = Object.fromEntries(own);
    return group(
      {
        format: fc.constant('vitrose.batch/1' as const),
        formula: fc.array(anyLine(names), { minLength: 1, maxLength: 6 }),
        cook: anyCook,
        ...surroundings,
        pieces: anyPieces,
        ingredients: fc.constant(ingredients),
      },
      names.length > 0
        ? ['format', 'formula', 'cook', 'ingredients']
        : ['format', 'formula', 'cook'],
    );
  });

const line = (ingredient: FormulaLine['ingredient'], massG: number): FormulaLine => ({
  ingredient,
  massG,
});

/** Sugar, a syrup, water, something sour: a boiled sweet of the usual kind. */
const sugarFormula: fc.Arbitrary<readonly FormulaLine[]> = fc
  .tuple(between(150, 400), syrupLine(between(60, 260)), between(60, 200), lateLines)
  .map(([sugarG, syrup, waterG, late]) => [
    line('sucrose', sugarG),
    syrup,
    line('water', waterG),
    ...late,
  ]);

/** Isomalt with a little xylitol. */
const polyolFormula: fc.Arbitrary<readonly FormulaLine[]> = fc
  .tuple(between(200, 500), fc.constantFrom(0, 0.03, 0.08), between(50, 150), lateLines)
  .map(([isomaltG, xylitol, waterG, late]) => [
    line('isomalt', isomaltG),
    ...(xylitol > 0 ? [line('xylitol', isomaltG * xylitol)] : []),
    line('water', waterG),
    ...late,
  ]);

/** The same sweets written in shares, for a number of pieces. */
const shareFormula: fc.Arbitrary<readonly FormulaLine[]> = fc
  .tuple(between(0.5, 0.8), between(0.25, 0.5), fc.boolean())
  .map(([sugar, water, sour]) => [
    { ingredient: 'sucrose', shareOfDrySolids: sugar },
    { ingredient: 'dried-glucose-syrup', shareOfDrySolids: 1 - sugar },
    { ingredient: 'water', shareOfIngredient: { ingredient: 'sucrose', share: water } },
    ...(sour
      ? [{ ingredient: 'citric-acid', shareOfFinished: 0.01, when: 'off-heat' } as const]
      : []),
  ]);

const sugarCook: fc.Arbitrary<Cook> = fc.oneof(
  between(142, 156).map((toSeaLevelC) => ({ toSeaLevelC })),
  group(
    {
      toStage: fc.constantFrom('soft-crack', 'hard-crack'),
      aim: fc.constantFrom('low', 'middle', 'high'),
    },
    ['toStage'],
  ),
  between(0.01, 0.03).map((toMoistureMassFraction) => ({ toMoistureMassFraction })),
);

const polyolCook: fc.Arbitrary<Cook> = fc.oneof(
  between(155, 170).map((toSeaLevelC) => ({ toSeaLevelC })),
  between(40, 52).map((toGlassTransitionC) => ({ toGlassTransitionC })),
);

const goodKitchen = {
  kitchen: between(0, 2_500).map((elevationM) => ({ elevationM })),
  hob: fc.constant({ kind: 'timed', waterG: 500, fromC: 20, boilsInMin: 4 } as const),
  pan: fc.constant({ diameterMm: 160, capacityMl: 1_500, emptyMassG: 780 }),
  room: group({ temperatureC: between(18, 26), relativeHumidity: between(0.3, 0.65) }, [
    'temperatureC',
  ]),
  mould: fc.constant({ kind: 'silicone', cavityMl: 4, cavities: 15, maxC: 220 } as const),
};

const recipe = (
  formula: fc.Arbitrary<readonly FormulaLine[]>,
  cook: fc.Arbitrary<Cook>,
  pieces: fc.Arbitrary<Pieces>,
): fc.Arbitrary<BatchDocument> =>
  group(
    {
      format: fc.constant('vitrose.batch/1' as const),
      name: surroundings.name,
      formula,
      cook,
      ...goodKitchen,
      pieces,
    },
    ['format', 'formula', 'cook', 'pieces'],
  );

const counted = fc.integer({ min: 20, max: 200 }).map((count) => ({ massG: 4, count }));
const weighed = between(100, 900).map((finishedMassG) => ({ cavityMl: 3, finishedMassG }));

/** Batches a kitchen could cook. */
export const sensibleBatch: fc.Arbitrary<BatchDocument> = fc.oneof(
  recipe(sugarFormula, sugarCook, counted),
  recipe(polyolFormula, polyolCook, counted),
  recipe(shareFormula, sugarCook, fc.oneof(counted, weighed)),
);

/** Readable batches of every kind, half of them sensible. */
export const batchDocument: fc.Arbitrary<BatchDocument> = fc.oneof(sensibleBatch, anyBatch);
