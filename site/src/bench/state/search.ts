import { INGREDIENT_IDS, type IngredientId } from 'vitrose';
import { ingredientName, shopName } from 'vitrose/words';
import { SHOP_NAMES_TO_SEARCH } from '../../words/bench-later.js';
import type { Manner } from './read/types.js';

/** One thing to choose in the list of ingredients. */
export type Found = {
  /** Unique in the list. */
  readonly key: string;
  /** As it is read in the list. */
  readonly label: string;
  /** What it is in the document; more than one where the label on the packet has to be read. */
  readonly candidates: readonly IngredientId[];
  readonly question?: string | undefined;
  readonly note?: string | undefined;
  readonly taken?: NonNullable<ReturnType<typeof shopName>>['taken'] | undefined;
  /** What it is called in the other region. */
  readonly also?: string | undefined;
};

const MOST = 12;

/** Ingredients by any name they are sold under, in both regions. The best fit comes first. */
export function searchIngredients(
  typed: string,
  { region }: Pick<Manner, 'region'>,
): readonly Found[] {
  const sought = plain(typed);
  const known = INGREDIENT_IDS.map((id) => entry(id, region));
  const shop = SHOP_NAMES_TO_SEARCH.flatMap((name) => shopEntry(name) ?? []);
  if (sought === '') return known;
  const scored = [...known, ...shop]
    .map((found) => ({ found, score: scoreOf(found, sought) }))
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score);
  const seen = new Set<string>();
  return scored
    .map(({ found }) => found)
    .filter(({ label }) => !seen.has(label) && seen.add(label))
    .slice(0, MOST);
}

function entry(id: IngredientId, region: 'world' | 'us'): Found {
  const own = ingredientName(id, { region });
  const other = ingredientName(id, { region: region === 'us' ? 'world' : 'us' });
  const note = shopName(own)?.question === undefined ? undefined : shopName(own);
  return {
    key: id,
    label: own,
    candidates: [id],
    // The plain name of a syrup still has its question about the label.
    ...(note === undefined || note.candidates.length !== 1
      ? {}
      : { question: note.question, note: note.note, taken: note.taken }),
    ...(other === own ? {} : { also: other }),
  };
}

function shopEntry(name: string): Found | undefined {
  const sold = shopName(name);
  if (sold === undefined) return undefined;
  const { candidates, question, note, taken } = sold;
  return { key: plain(name), label: name.trim(), candidates, question, note, taken };
}

function scoreOf(found: Found, sought: string): number {
  const { also } = found;
  const names = [found.label, found.key, ...(also === undefined ? [] : [also])].map(plain);
  return Math.max(...names.map((name) => fit(name, sought)));
}

function fit(name: string, sought: string): number {
  if (name === sought) return 4;
  if (name.startsWith(sought)) return 3;
  if (name.split(' ').some((word) => word.startsWith(sought))) return 2;
  return name.includes(sought) ? 1 : 0;
}

function plain(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replace(/[’']/g, '')
    .replace(/[\s_-]+/g, ' ');
}
