import { deflateRawSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import type { BatchDocument } from 'vitrose';
import * as documents from 'vitrose/documents';
import {
  arrive,
  emptyTable,
  inTheirKitchen,
  startWith,
} from '../../site/src/bench/state/arrive.js';
import { setValue } from '../../site/src/bench/state/edits.js';
import { undo } from '../../site/src/bench/state/history.js';
import {
  KITCHEN_KEY,
  keepKitchen,
  keepRecipe,
  keptKitchen,
  keptRecipe,
} from '../../site/src/bench/state/kitchen-store.js';
import {
  inKitchen,
  KITCHEN_PARTS,
  kitchenOf,
  recipeOf,
} from '../../site/src/bench/state/recipe.js';
import {
  LONGEST_FRAGMENT,
  MOST_INFLATED_BYTES,
  packed,
  SHARE_PREFIX,
  unpacked,
} from '../../site/src/bench/state/share-link.js';
import { EXAMPLES, example, planOf } from './examples.js';

const METRIC = { units: 'metric', region: 'world' } as const;

/** A fragment made by hand, as somebody with bad intentions would. */
function fragmentOf(text: string, prefix = SHARE_PREFIX): string {
  return prefix + deflateRawSync(Buffer.from(text)).toString('base64url');
}

async function fragment(text: string): Promise<string> {
  const made = await packed(text);
  if (made.kind === 'too-long') throw new Error('too long');
  return made.fragment;
}

describe('a recipe without its kitchen', () => {
  it.each(EXAMPLES)('%s names none of its parts', (_, batch) => {
    const recipe = recipeOf(batch);
    for (const part of KITCHEN_PARTS) expect(part in recipe).toBe(false);
    expect(recipe.formula).toBe(batch.formula);
    expect(recipe.cook).toBe(batch.cook);
  });

  it.each(EXAMPLES)('%s laid into its own kitchen is what it was', (_, batch) => {
    const before = planOf(batch);
    const after = planOf(inKitchen(recipeOf(batch), kitchenOf(batch)));
    expect(after.target).toEqual(before.target);
    expect(after.yield).toEqual(before.yield);
  });

  it('keeps the size of its pieces when the mould stays at home', () => {
    const recipe = recipeOf(example('harbour'));
    expect(recipe.pieces).toEqual({ count: 60, cavityMl: 4 });
    expect(planOf(recipe).yield.pieceG?.value).toBe(planOf(example('harbour')).yield.pieceG?.value);
  });

  it('takes the mould it finds', () => {
    const recipe = recipeOf(example('harbour'));
    const mine = { format: 'vitrose.kitchen/1', mould: { cavityMl: 3, cavities: 20 } } as const;
    expect(planOf(inKitchen(recipe, mine)).yield.cavityMl).toBe(3);
  });
});

describe('a fragment', () => {
  it.each(EXAMPLES)('%s comes back as it went', async (_, batch) => {
    const text = documents.batchText(batch);
    const back = await unpacked(await fragment(text));
    expect(back).toEqual({ kind: 'text', text });
    const reading = documents.readBatch(text);
    expect(reading).toEqual({ kind: 'batch', batch });
  });

  it('holds what other tools pack', async () => {
    expect(await unpacked(fragmentOf('{"é":"½"}'))).toEqual({ kind: 'text', text: '{"é":"½"}' });
  });

  it('that is none is left alone', async () => {
    for (const hash of ['', '#', '#steps', '#b', '#bx.']) {
      expect(await unpacked(hash)).toEqual({ kind: 'none' });
    }
  });

  it('of another version says so', async () => {
    expect(await unpacked(fragmentOf('{}', '#b2.'))).toEqual({ kind: 'refused', why: 'version' });
  });

  it('longer than any recipe is refused before it is unpacked', async () => {
    const long = SHARE_PREFIX + 'A'.repeat(LONGEST_FRAGMENT);
    expect(await unpacked(long)).toEqual({ kind: 'refused', why: 'too-long' });
  });

  it('that is a bomb never goes off', async () => {
    const bomb = fragmentOf('0'.repeat(10_000_000));
    expect(bomb.length).toBeLessThan(LONGEST_FRAGMENT);
    expect(await unpacked(bomb)).toEqual({ kind: 'refused', why: 'too-large' });
    const just = 'x'.repeat(MOST_INFLATED_BYTES);
    expect(await unpacked(fragmentOf(just))).toEqual({ kind: 'text', text: just });
    expect(await unpacked(fragmentOf(`${just}x`))).toEqual({ kind: 'refused', why: 'too-large' });
  });

  it('that is damaged is refused', async () => {
    const good = fragmentOf(documents.batchText(example('harbour')));
    const hurt = [
      good.slice(0, -20),
      `${good.slice(0, 40)}!!${good.slice(42)}`,
      SHARE_PREFIX,
      `${SHARE_PREFIX}AAAA`,
    ];
    for (const one of hurt) expect(await unpacked(one)).toEqual({ kind: 'refused', why: 'broken' });
    const notText =
      SHARE_PREFIX + deflateRawSync(Buffer.from([0xff, 0xfe, 0xff])).toString('base64url');
    expect(await unpacked(notText)).toEqual({ kind: 'refused', why: 'broken' });
  });

  it('is not made of what is too long for one', async () => {
    let noise = '';
    let seed = 1;
    while (noise.length < 40_000) {
      seed = (seed * 16_807) % 2_147_483_647;
      noise += seed.toString(36);
    }
    expect(await packed(noise)).toEqual({ kind: 'too-long' });
  });
});

describe('a recipe that was opened', () => {
  const theirs = example('harbour');
  const mine = { format: 'vitrose.kitchen/1', kitchen: { elevationM: 0 } } as const;

  it('is computed in the reader’s kitchen', () => {
    const state = arrive(startWith(example('crooked'), METRIC, 'mine'), theirs, 'link', mine);
    expect(state.now.whose).toBe('mine');
    expect(state.now.batch.kitchen).toEqual({ elevationM: 0 });
    expect(state.now.batch.thermometer).toBeUndefined();
    expect(planOf(state.now.batch).target.readingC.value).toBeCloseTo(148, 0);
    expect(state.arrival?.theirs).toBe(theirs);
  });

  it('can be looked at in the one it came with, and undo comes home', () => {
    const state = arrive(startWith(example('crooked'), METRIC, 'mine'), theirs, 'link', mine);
    const away = inTheirKitchen(state);
    expect(away.now.whose).toBe('theirs');
    expect(away.now.batch).toBe(theirs);
    expect(undo(away).now.whose).toBe('mine');
  });

  it('is computed in its own kitchen for a reader who has none', () => {
    const state = arrive(
      startWith(example('crooked'), METRIC, 'nobodys'),
      theirs,
      'link',
      undefined,
    );
    expect(state.now.whose).toBe('theirs');
    expect(planOf(state.now.batch).target.readingC.value).toBeCloseTo(142.9, 1);
  });

  it('stays borrowed however much its kitchen is changed', () => {
    const state = arrive(
      startWith(example('crooked'), METRIC, 'nobodys'),
      theirs,
      'link',
      undefined,
    );
    expect(setValue(state, '/room/temperatureC', 30).now.whose).toBe('theirs');
  });
});

it('whoever says something about the kitchen is at home in it', () => {
  const state = startWith(example('harbour'), METRIC, 'nobodys');
  expect(setValue(state, '/cook/toSeaLevelC', 150).now.whose).toBe('nobodys');
  expect(setValue(state, '/kitchen/elevationM', 300).now.whose).toBe('mine');
});

it('an empty table has a kitchen, a question and nothing else', () => {
  const mine = kitchenOf(example('harbour'));
  expect(emptyTable(mine)).toMatchObject({ formula: [], cook: { toStage: 'hard-crack' }, pan: {} });
  expect(emptyTable(undefined)).toEqual({
    format: 'vitrose.batch/1',
    formula: [],
    cook: { toStage: 'hard-crack' },
  });
});

describe('the shelf of the device', () => {
  const shelf = () => {
    const held = new Map<string, string>();
    return {
      held,
      getItem: (key: string) => held.get(key) ?? null,
      setItem: (key: string, value: string) => void held.set(key, value),
      removeItem: (key: string) => void held.delete(key),
    };
  };

  it.each(EXAMPLES)('keeps kitchen and recipe of %s apart', (_, batch) => {
    const own = shelf();
    keepKitchen(own, batch, documents);
    keepRecipe(own, batch, documents);
    expect(keptKitchen(own, documents)).toEqual(kitchenOf(batch));
    expect(keptRecipe(own, documents)).toEqual(recipeOf(batch));
  });

  it('gives nothing for what somebody else put there', () => {
    const own = shelf();
    for (const text of [
      '',
      '{',
      '{"format":"vitrose.kitchen/9"}',
      '{"__proto__":{"pan":1}}',
      '[]',
    ]) {
      own.held.set(KITCHEN_KEY, text);
      expect(keptKitchen(own, documents)).toBeUndefined();
    }
  });

  it('is cleared by a batch without a kitchen', () => {
    const own = shelf();
    keepKitchen(own, example('harbour'), documents);
    keepKitchen(own, recipeOf(example('harbour')) as BatchDocument, documents);
    expect(own.held.has(KITCHEN_KEY)).toBe(false);
  });

  it('may be forbidden, and nothing breaks', () => {
    const forbidden = () => {
      throw new Error('denied');
    };
    const own = { getItem: forbidden, setItem: forbidden, removeItem: forbidden };
    expect(keptKitchen(own, documents)).toBeUndefined();
    expect(() => keepKitchen(own, example('harbour'), documents)).not.toThrow();
  });
});
