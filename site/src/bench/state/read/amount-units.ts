import type { MeasureUnit } from 'vitrose';

/** What the unit of an amount can be on the page: grams, a measure, or a share. */
export type AmountUnit = 'g' | MeasureUnit | '%';

/** How a unit is shown in the list beside the field. */
export const AMOUNT_UNIT_SIGNS: Readonly<Record<AmountUnit, string>> = {
  g: 'g',
  '%': '%',
  kg: 'kg',
  oz: 'oz',
  lb: 'lb',
  ml: 'ml',
  'us-cup': 'US cup',
  'metric-cup': 'cup 250',
  'us-tablespoon': 'US tbsp',
  'metric-tablespoon': 'tbsp 15',
  'au-tablespoon': 'tbsp 20',
  'us-teaspoon': 'US tsp',
  'metric-teaspoon': 'tsp 5',
  'us-fluid-ounce': 'US fl oz',
  'us-fluid-dram': 'fl dram',
  drop: 'drop',
};

/** Words for units that mean one thing everywhere. */
const PLAIN: Readonly<Record<string, AmountUnit>> = {
  g: 'g',
  gr: 'g',
  gram: 'g',
  gramme: 'g',
  '%': '%',
  percent: '%',
  'per cent': '%',
  kg: 'kg',
  kilo: 'kg',
  kilogram: 'kg',
  oz: 'oz',
  ounce: 'oz',
  lb: 'lb',
  pound: 'lb',
  ml: 'ml',
  millilitre: 'ml',
  milliliter: 'ml',
  cc: 'ml',
  'us cup': 'us-cup',
  'metric cup': 'metric-cup',
  'cup 250': 'metric-cup',
  'us tablespoon': 'us-tablespoon',
  'us tbsp': 'us-tablespoon',
  'metric tablespoon': 'metric-tablespoon',
  'metric tbsp': 'metric-tablespoon',
  'tbsp 15': 'metric-tablespoon',
  'australian tablespoon': 'au-tablespoon',
  'australian tbsp': 'au-tablespoon',
  'au tbsp': 'au-tablespoon',
  'tbsp 20': 'au-tablespoon',
  'us teaspoon': 'us-teaspoon',
  'us tsp': 'us-teaspoon',
  'metric teaspoon': 'metric-teaspoon',
  'metric tsp': 'metric-teaspoon',
  'tsp 5': 'metric-teaspoon',
  'fl oz': 'us-fluid-ounce',
  'fluid oz': 'us-fluid-ounce',
  'fluid ounce': 'us-fluid-ounce',
  'us fl oz': 'us-fluid-ounce',
  'us fluid ounce': 'us-fluid-ounce',
  'fluid dram': 'us-fluid-dram',
  'fl dram': 'us-fluid-dram',
  'fl dr': 'us-fluid-dram',
  'us fluid dram': 'us-fluid-dram',
  drop: 'drop',
};

/** Spoons and cups whose size depends on where the recipe was written; the region's own first. */
const BY_REGION: Readonly<
  Record<string, { readonly world: readonly AmountUnit[]; readonly us: readonly AmountUnit[] }>
> = {
  cup: { world: ['metric-cup', 'us-cup'], us: ['us-cup', 'metric-cup'] },
  tbsp: {
    world: ['metric-tablespoon', 'us-tablespoon', 'au-tablespoon'],
    us: ['us-tablespoon', 'metric-tablespoon', 'au-tablespoon'],
  },
  tsp: { world: ['metric-teaspoon', 'us-teaspoon'], us: ['us-teaspoon', 'metric-teaspoon'] },
};

const SPOON_WORDS: Readonly<Record<string, string>> = {
  cup: 'cup',
  tbsp: 'tbsp',
  tbs: 'tbsp',
  tablespoon: 'tbsp',
  tsp: 'tsp',
  teaspoon: 'tsp',
};

/** A dram is one of two things, and nobody can tell which from the word. */
export const DRAM_OF_WEIGHT_G = 1.7718451953125;

/** What a unit word can mean. */
export type UnitWord =
  | { readonly kind: 'unit'; readonly unit: AmountUnit; readonly others: readonly AmountUnit[] }
  | { readonly kind: 'dram-of-weight' }
  | { readonly kind: 'which-dram' }
  | { readonly kind: 'unknown' };

/** Reads a unit as it is typed after a number, plurals and full stops included. */
export function unitWord(typed: string, region: 'world' | 'us'): UnitWord {
  const plain = typed
    .toLowerCase()
    .replaceAll('.', '')
    .replace(/[\s-]+/g, ' ')
    .trim();
  for (const word of [plain, plain.replace(/s$/, '')]) {
    if (Object.hasOwn(PLAIN, word)) {
      return { kind: 'unit', unit: PLAIN[word] ?? 'g', others: [] };
    }
    const spoon = Object.hasOwn(SPOON_WORDS, word) ? BY_REGION[SPOON_WORDS[word] ?? ''] : undefined;
    const [unit, ...others] = spoon?.[region] ?? [];
    if (unit !== undefined) return { kind: 'unit', unit, others };
    if (['avoirdupois dram', 'weight dram', 'dram of weight', 'dram weight'].includes(word)) {
      return { kind: 'dram-of-weight' };
    }
    if (word === 'dram' || word === 'dr' || word === 'drachm') return { kind: 'which-dram' };
  }
  return { kind: 'unknown' };
}
