import fc from 'fast-check';
import type { Amount, FormulaLine, IngredientId, MeasureUnit, When } from 'vitrose';
import { between, group, profile, within } from './arbitrary-fields.js';

export const starchSyrups = [
  'glucose-syrup',
  'dried-glucose-syrup',
  'maltodextrin',
  'high-fructose-syrup',
] as const satisfies readonly IngredientId[];

/** Everything the library knows but the starch syrups, which can say more about themselves. */
const others = [
  'water',
  'sucrose',
  'glucose',
  'dextrose-monohydrate',
  'fructose',
  'maltose',
  'lactose',
  'lactose-monohydrate',
  'trehalose',
  'trehalose-dihydrate',
  'isomaltulose',
  'allulose',
  'tagatose',
  'invert-syrup',
  'honey',
  'golden-syrup',
  'isomalt',
  'isomalt-dry',
  'maltitol',
  'maltitol-syrup',
  'xylitol',
  'sorbitol',
  'sorbitol-syrup',
  'mannitol',
  'erythritol',
  'lactitol',
  'lactitol-monohydrate',
  'hydrogenated-starch-hydrolysate',
  'glycerol',
  'polydextrose',
  'inulin',
  'citric-acid',
  'citric-acid-monohydrate',
  'malic-acid',
  'tartaric-acid',
  'lactic-acid',
  'cream-of-tartar',
  'sodium-citrate',
  'sodium-lactate',
  'sodium-bicarbonate',
  'salt',
  'sucralose',
  'acesulfame-k',
  'aspartame',
  'saccharin',
  'steviol-glycosides',
  'flavour-oil',
  'flavour-alcohol',
  'flavour-glycerol',
  'flavour-propylene-glycol',
  'colour-liquid',
  'colour-powder',
  'butter',
  'cream',
  'whole-milk',
  'condensed-milk',
  'nuts',
  'gelatin',
  'egg-white',
] as const satisfies readonly IngredientId[];

const units: readonly MeasureUnit[] = [
  'kg',
  'oz',
  'lb',
  'ml',
  'us-cup',
  'metric-cup',
  'us-tablespoon',
  'metric-tablespoon',
  'au-tablespoon',
  'us-teaspoon',
  'metric-teaspoon',
  'us-fluid-ounce',
  'us-fluid-dram',
  'drop',
];

const when: fc.Arbitrary<When> = fc.oneof(
  fc.constantFrom('start', 'first-boil', 'off-heat'),
  within('formula/*/when/atC').map((atC) => ({ atC })),
);

/** One of the six ways to say how much, of any size the format allows. */
const amount = (names: readonly string[]): fc.Arbitrary<Amount> => {
  const name = fc.constantFrom(...names);
  return fc.oneof(
    { weight: 4, arbitrary: within('formula/*/massG').map((massG) => ({ massG })) },
    group(
      {
        quantity: within('formula/*/measure/quantity'),
        unit: fc.constantFrom(...units),
        form: fc.constantFrom('granulated', 'brown-packed'),
      },
      ['quantity', 'unit'],
    ).map((measure) => ({ measure })),
    within('formula/*/shareOfDrySolids').map((shareOfDrySolids) => ({ shareOfDrySolids })),
    within('formula/*/shareOfFinished').map((shareOfFinished) => ({ shareOfFinished })),
    fc
      .tuple(name, within('formula/*/shareOfIngredient/share'))
      .map(([ingredient, share]) => ({ shareOfIngredient: { ingredient, share } })),
    fc
      .tuple(name, within('formula/*/makeUpWaterFor/drySolidsMassFraction'))
      .map(([ingredient, drySolidsMassFraction]) => ({
        makeUpWaterFor: { ingredient, drySolidsMassFraction },
      })),
  );
};

/** Any line: an ingredient of the library or one of these names, and whatever may be said of it. */
export const anyLine = (ownNames: readonly string[]): fc.Arbitrary<FormulaLine> => {
  const names: readonly string[] = [...starchSyrups, ...others, ...ownNames];
  const details = group(
    {
      ingredient: fc.oneof(fc.constantFrom(...names), fc.constantFrom('sucrose', 'water')),
      drySolidsMassFraction: within('formula/*/drySolidsMassFraction'),
      dextroseEquivalent: within('formula/*/dextroseEquivalent'),
      conversion: fc.constantFrom('acid', 'enzyme', 'high-maltose'),
      profile,
      when,
      asWritten: fc.constantFrom('½ cup', 'a good pinch', 'nach Gefühl', ''),
    },
    ['ingredient'],
  );
  return fc.tuple(details, amount(names)).map(([line, much]) => ({ ...line, ...much }));
};

/** A syrup one can buy, with as much of its label as the cook has read. */
export const syrupLine = (massG: fc.Arbitrary<number>): fc.Arbitrary<FormulaLine> =>
  fc.oneof(
    group(
      {
        ingredient: fc.constant('glucose-syrup' as const),
        drySolidsMassFraction: between(0.76, 0.84),
        dextroseEquivalent: between(36, 63),
        massG,
      },
      ['ingredient', 'massG'],
    ),
    group(
      {
        ingredient: fc.constant('dried-glucose-syrup' as const),
        drySolidsMassFraction: between(0.93, 0.98),
        dextroseEquivalent: between(20, 47),
        conversion: fc.constantFrom('acid', 'enzyme'),
        massG,
      },
      ['ingredient', 'massG'],
    ),
    fc.tuple(profile, massG).map(([chains, mass]) => ({
      ingredient: 'glucose-syrup' as const,
      profile: chains,
      massG: mass,
    })),
  );

/** What goes in once the heat is off: acid, flavour, colour, a pinch of each. */
export const lateLines: fc.Arbitrary<readonly FormulaLine[]> = fc.subarray<FormulaLine>([
  { ingredient: 'citric-acid', massG: 5, when: 'off-heat' },
  { ingredient: 'flavour-oil', massG: 1, when: 'off-heat' },
  {
    ingredient: 'flavour-alcohol',
    measure: { quantity: 1, unit: 'us-fluid-dram' },
    when: 'off-heat',
  },
  { ingredient: 'colour-liquid', measure: { quantity: 8, unit: 'drop' }, when: 'off-heat' },
  { ingredient: 'malic-acid', shareOfFinished: 0.012, when: { atC: 130 } },
]);
