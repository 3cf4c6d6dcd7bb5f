import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Problem } from 'vitrose';
import { readBatch } from 'vitrose/documents';
import { anyBatch, batchDocument, sensibleBatch } from './arbitrary-batch.js';
import { changedSomewhere, placesIn } from './change-somewhere.js';

// The schema that other languages and editors use, checked by a validator that is not ours.
const path = fileURLToPath(new URL('../../packages/core/schemas/batch.json', import.meta.url));
const schema = JSON.parse(readFileSync(path, 'utf8'));
const validate = new Ajv2020({ strict: true, allErrors: false }).compile(schema);

/** What a schema cannot say: which ingredients there are, and which names are taken. */
const isAboutIngredients = ({ code, path }: Problem): boolean =>
  (code === 'unknown-name' && path.endsWith('/ingredient')) ||
  (code === 'one-of' && path.startsWith('/ingredients/'));

const isRead = (input: unknown): boolean => {
  const reading = readBatch(input);
  return reading.kind === 'batch' || reading.problems.every(isAboutIngredients);
};

describe('the reader and the schema', () => {
  it('both take every batch there can be', () => {
    fc.assert(
      fc.property(batchDocument, (batch) => {
        expect(readBatch(batch)).toEqual({ kind: 'batch', batch });
        expect(validate(batch), JSON.stringify(validate.errors)).toBe(true);
      }),
      { numRuns: 1_000 },
    );
  });

  it('both refuse `null` in any place', () => {
    fc.assert(
      fc.property(batchDocument, fc.nat(), (batch, at) => {
        const places = placesIn(batch);
        const place = places[at % places.length] ?? [];
        const broken = changedSomewhere(batch, place, () => null);
        expect(isRead(broken)).toBe(false);
        expect(validate(broken)).toBe(false);
      }),
    );
  });

  it.each(['format', 'formula', 'cook'])('both refuse a batch without its %s', (key) => {
    fc.assert(
      fc.property(batchDocument, (batch) => {
        const broken = Object.fromEntries(Object.entries(batch).filter(([name]) => name !== key));
        expect(isRead(broken)).toBe(false);
        expect(validate(broken)).toBe(false);
      }),
      { numRuns: 20 },
    );
  });

  it('both refuse a field nobody knows, wherever fields are', () => {
    fc.assert(
      fc.property(batchDocument, fc.nat(), (batch, at) => {
        const places = placesIn(
          batch,
          (value) => typeof value === 'object' && !Array.isArray(value),
        );
        const place = places[at % places.length] ?? [];
        const broken = changedSomewhere(batch, place, (held) => ({
          ...(held as object),
          xyzzy: 1,
        }));
        expect(isRead(broken)).toBe(false);
        expect(validate(broken)).toBe(false);
      }),
    );
  });

  it('both refuse a number as text, and one that is out of all reason', () => {
    fc.assert(
      fc.property(batchDocument, fc.nat(), fc.constantFrom('5', -1e9, 1e9), (batch, at, wrong) => {
        const places = placesIn(batch, (value) => typeof value === 'number');
        fc.pre(places.length > 0);
        const broken = changedSomewhere(batch, places[at % places.length] ?? [], () => wrong);
        expect(isRead(broken)).toBe(false);
        expect(validate(broken)).toBe(false);
      }),
    );
  });

  it('both refuse a line with a second amount', () => {
    fc.assert(
      fc.property(sensibleBatch, (batch) => {
        const [first, ...others] = batch.formula;
        const broken = {
          ...batch,
          formula: [{ ...first, massG: 1, shareOfFinished: 0.1 }, ...others],
        };
        expect(isRead(broken)).toBe(false);
        expect(validate(broken)).toBe(false);
      }),
      { numRuns: 50 },
    );
  });

  it('judge alike whatever is put in any place', () => {
    const verdicts = { taken: 0, refused: 0 };
    const anything = fc.oneof(
      fc.jsonValue({ maxDepth: 3 }),
      fc.double({ min: -10, max: 300, noNaN: true }),
      fc.constantFrom('none', 'start', 'hard-crack', 'sucrose', 'oz', true, 0, 1, {}, []),
    );
    fc.assert(
      fc.property(anyBatch, fc.nat(), anything, (batch, at, value) => {
        const places = placesIn(batch);
        const changed = changedSomewhere(batch, places[at % places.length] ?? [], () => value);
        // The reader refuses these keys on principle; a schema has no word for them.
        fc.pre(!/"(?:__proto__|constructor|prototype)":/.test(JSON.stringify(changed)));
        const taken = isRead(changed);
        expect(taken, JSON.stringify(changed)).toBe(validate(changed));
        verdicts[taken ? 'taken' : 'refused']++;
      }),
      { numRuns: 3_000 },
    );
    expect(verdicts.taken).toBeGreaterThan(50);
    expect(verdicts.refused).toBeGreaterThan(1_000);
  });
});
