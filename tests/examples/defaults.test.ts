import { describe, expect, it } from 'vitest';
import { type BatchDocument, planBatch } from 'vitrose';
import { readBatch } from 'vitrose/documents';
import { batchOf, EXAMPLES } from './batches.js';

/** The cook's own words: the plan computes nothing from them, so nothing stands in for them. */
const FREE_WORDS = /\/(name|note|asWritten)$/;

/** Every place in a document, as JSON Pointers. */
function placesIn(value: unknown, path = ''): readonly string[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, held]) => {
    const here = `${path}/${key.replaceAll('~', '~0').replaceAll('/', '~1')}`;
    return [here, ...placesIn(held, here)];
  });
}

/** The document without one place; `undefined` where it is no field of an object. */
function without(batch: BatchDocument, path: string): unknown {
  const copy: unknown = structuredClone(batch);
  const keys = path.split('/').slice(1);
  const last = keys.pop() ?? '';
  let holder = copy as Record<string, unknown>;
  for (const key of keys) holder = holder[key] as Record<string, unknown>;
  if (Array.isArray(holder)) return undefined;
  delete holder[last];
  return copy;
}

/** The places one can do without, each with the batch that does. */
function optionalPlaces(batch: BatchDocument) {
  return placesIn(batch)
    .filter((path) => !FREE_WORDS.test(path))
    .flatMap((path) => {
      const reading = readBatch(without(batch, path));
      return reading.kind === 'batch' ? [{ path, rest: reading.batch }] : [];
    });
}

/** What stands in for a place, whatever the plan took: the field itself, its group or a part of it. */
function standIns(batch: BatchDocument, path: string): readonly string[] | 'refused' {
  const answer = planBatch(batch);
  if (answer.kind === 'refused') return 'refused';
  const isAbout = (other: string) =>
    other === path || other.startsWith(`${path}/`) || path.startsWith(`${other}/`);
  return answer.plan.defaults
    .filter((one) => isAbout(one.path))
    .map((one) => `${one.path} = ${one.value}`);
}

describe.each(EXAMPLES)('%s', (name) => {
  const batch = batchOf(name);
  const places = optionalPlaces(batch);

  it('has fields one can leave out', () => {
    expect(places.length).toBeGreaterThan(3);
  });

  it.each(places)('says what stands in for $path', ({ path, rest }) => {
    const before = standIns(batch, path);
    const after = standIns(rest, path);
    // Without its size a batch of shares is no batch: that is a problem, not a default.
    if (after === 'refused') {
      expect(planBatch(rest)).toHaveProperty('problems.0.path');
      return;
    }
    expect(after.filter((one) => !before.includes(one))).not.toEqual([]);
  });
});
