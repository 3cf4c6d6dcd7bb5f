import {
  type ClaimId,
  glycaemicIndex,
  type Ingredient,
  type IngredientId,
  type Mixture,
  mixture,
  nutrition,
  type SpeciesId,
  US_REFERENCE_AMOUNTS_G,
} from 'vitrose';
import type { EvidenceRow } from '../types.js';
import type { Answer, Comparison } from './types.js';
import { answered, textIn } from './types.js';

const dry = (ingredient: IngredientId | Ingredient, massG = 100): Mixture =>
  mixture([{ ingredient, massG, drySolidsMassFraction: 1 }]);

const given = { source: 'given-by-the-cook', grade: 'assumed' } as const;

/** Something nobody sells pure. */
const pure = (content: Pick<Ingredient, 'solids' | 'apart'>): Ingredient => ({
  kind: 'food',
  drySolidsMassFraction: { value: 1, ...given },
  compositionGrade: 'assumed',
  ...content,
});

/** Rows of the factors that are not called as an ingredient is. */
const FACTOR_ROWS: Readonly<Record<string, Ingredient | IngredientId>> = {
  'digestible-carbohydrate': 'sucrose',
  protein: pure({ solids: { protein: 1 } }),
  fat: pure({ apart: { fat: 1 } }),
  ethanol: pure({ apart: { ethanol: 1 } }),
  'organic-acid': 'citric-acid',
  hsh: 'hydrogenated-starch-hydrolysate',
  'inulin-oligofructose': 'inulin',
  'water-ash-other-high-intensity': pure({ solids: { ash: 0.5, sucralose: 0.5 } }),
};

/** No ingredient stands for these: a fat nobody boils with, and fibre in general. */
const NO_INGREDIENT: readonly string[] = ['salatrim', 'dietary-fibre'];

/** Without the last binary digits of a sum. */
const settled = (value: number): number => Math.round(value * 1e9) / 1e9;

function factor(
  row: EvidenceRow,
  column: string,
  rules: 'us' | 'eu',
  unit: 'energyKcal' | 'energyKJ',
): Answer | undefined {
  const id = textIn(row, 'id');
  if (NO_INGREDIENT.includes(id) || row[column] === null) return undefined;
  const { per100G } = nutrition(dry(FACTOR_ROWS[id] ?? (id as IngredientId)), { rules });
  const [low, high] = per100G.energyKcalBand;
  return {
    label: id,
    computed: per100G[unit] / 100,
    ...(unit === 'energyKcal' ? { band: [settled(low / 100), settled(high / 100)] as const } : {}),
  };
}

/** Rows of the indices that are not called as an ingredient is. */
const INDEX_ROWS: Readonly<Record<string, IngredientId>> = {
  'polyglycitol-hsh': 'hydrogenated-starch-hydrolysate',
  'glucose-syrup-solids': 'dried-glucose-syrup',
  'hfcs-55': 'high-fructose-syrup',
};

const INVERT = pure({ solids: { glucose: 0.5, fructose: 0.5 } });

/** The claim a printed rule sets the limit of, and how the rule prints it. */
const CLAIM_ROWS: Readonly<
  Record<string, readonly [rules: 'us' | 'eu', id: ClaimId, times: number]>
> = {
  'us-sugar-free': ['us', 'sugar-free', 1],
  'us-low-calorie': ['us', 'low-energy', 1],
  'us-calorie-free': ['us', 'calorie-free', 1],
  'us-reduced': ['us', 'reduced-energy', 100],
  'eu-sugars-free': ['eu', 'sugar-free', 1],
  'eu-low-sugars': ['eu', 'low-sugars', 1],
  'eu-low-energy': ['eu', 'low-energy', 1],
  'eu-energy-reduced': ['eu', 'reduced-energy', 100],
  'eu-reduced-sugars': ['eu', 'reduced-sugars', 100],
};

const REFERENCE_ROWS: Readonly<Record<string, keyof typeof US_REFERENCE_AMOUNTS_G>> = {
  'us-racc-breath-mint': 'breath-mints',
  'us-racc-hard-candy-roll-or-mini-dispenser': 'hard-candy-in-rolls',
  'us-racc-hard-candy-other': 'hard-candy',
  'us-racc-after-dinner-confection': 'after-dinner-sweets',
  'us-racc-baking-candies': 'baking-candies',
  'us-racc-all-other-candies': 'other-candies',
};

/** The number behind a claim, a statement or a legal limit, asked of a sweet that is all of it. */
function printedFor(rule: string): number | undefined {
  const claim = CLAIM_ROWS[rule];
  if (claim !== undefined) {
    const [rules, id, times] = claim;
    const sugar = dry('sucrose');
    // Sugar keeps no claim beside sugar, so the first condition decides and its limit is told.
    const found = nutrition(sugar, { rules, comparedWith: sugar }).claims.find(
      (one) => one.id === id,
    );
    return found === undefined ? undefined : found.limit * times;
  }
  const reference = REFERENCE_ROWS[rule];
  if (reference !== undefined) return US_REFERENCE_AMOUNTS_G[reference].value;
  const ofUs = /^us-(laxative|max)-(sorbitol|mannitol)/.exec(rule);
  if (ofUs !== null) {
    const species = ofUs[2] as SpeciesId & IngredientId;
    const { statements, doses } = nutrition(dry(species), { rules: 'us' });
    return ofUs[1] === 'laxative'
      ? statements.find(({ subject }) => subject === species)?.numbers.limitG
      : (doses.find((dose) => dose.species === species)?.limitMassFraction ?? Number.NaN) * 100;
  }
  if (rule === 'eu-laxative-statement') {
    const { statements } = nutrition(dry('xylitol'), { rules: 'eu' });
    const found = statements.find(({ id }) => id === 'may-be-laxative');
    return (found?.numbers.limitMassFraction ?? Number.NaN) * 100;
  }
  return undefined;
}

/** The library against the nutrition tables. */
export const NUTRITION_COMPARISONS: readonly Comparison[] = [
  {
    table: 'nutrition-energy-factors',
    column: 'usKcalPerG',
    model: 'nutrition',
    answer: (row) => factor(row, 'usKcalPerG', 'us', 'energyKcal'),
  },
  {
    table: 'nutrition-energy-factors',
    column: 'euKcalPerG',
    model: 'nutrition',
    answer: (row) => factor(row, 'euKcalPerG', 'eu', 'energyKcal'),
  },
  {
    table: 'nutrition-energy-factors',
    column: 'euKJPerG',
    model: 'nutrition',
    answer: (row) => factor(row, 'euKJPerG', 'eu', 'energyKJ'),
  },
  {
    table: 'nutrition-label-rules',
    column: 'value',
    model: 'nutrition',
    answer: (row) => {
      const rule = textIn(row, 'rule');
      const computed = printedFor(rule);
      return computed === undefined ? undefined : { label: rule, computed };
    },
  },
  {
    table: 'nutrition-gi',
    column: 'glycaemicIndex',
    model: 'glycaemicIndex',
    answer: (row) => {
      const id = textIn(row, 'id');
      const asked = id === 'invert-sugar' ? INVERT : (INDEX_ROWS[id] ?? (id as IngredientId));
      const answer = answered(glycaemicIndex(dry(asked)));
      return { label: id, computed: answer.glycaemicIndex, band: answer.band };
    },
  },
];
