import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Problem } from 'vitrose';
import { batchText, readBatch, readKitchen } from 'vitrose/documents';
import { batchDocument } from './arbitrary-batch.js';
import { changedSomewhere, placesIn } from './change-somewhere.js';

// The whole is a long run: VITROSE_FUZZ_RUNS=200000 npx vitest run tests/documents/fuzz-documents.test.ts
const numRuns = Number(process.env.VITROSE_FUZZ_RUNS ?? '10000');

const weird = fc.oneof(
  fc.jsonValue(),
  fc.anything({
    withBigInt: true,
    withDate: true,
    withMap: true,
    withSet: true,
    withSparseArray: true,
  }),
  fc.constantFrom(Number.NaN, Number.NEGATIVE_INFINITY, -0, Number.MAX_VALUE, Number.MIN_VALUE),
);

/** A batch with something weird in one place, so that reading gets far. */
const nearlyRight = fc.tuple(batchDocument, fc.nat(), weird).map(([batch, at, value]) => {
  const places = placesIn(batch);
  return changedSomewhere(batch, places[at % places.length] ?? [], () => value);
});

/** A text of a batch with some signs lost, doubled or replaced. */
const nearlyJson = fc
  .tuple(
    batchDocument,
    fc.array(fc.tuple(fc.nat(), fc.nat({ max: 3 }), fc.string({ maxLength: 3 })), { maxLength: 3 }),
  )
  .map(([batch, slips]) =>
    slips.reduce((text, [place, length, instead]) => {
      const at = place % (text.length + 1);
      return text.slice(0, at) + instead + text.slice(at + length);
    }, JSON.stringify(batch)),
  );

const input = fc.oneof(
  batchDocument,
  nearlyRight,
  nearlyJson,
  weird,
  fc.string({ maxLength: 200 }),
);

const holdsNonNumber = (value: unknown): boolean =>
  placesIn(value, (held) => typeof held === 'number' && !Number.isFinite(held)).length > 0;

/** What is wrong with a list of problems itself, in words. One `expect` a problem would take minutes. */
const faultsOf = (problems: readonly Problem[]): readonly string[] => {
  const told = new Set(problems.map(({ code, path }) => `${code} ${path}`));
  return [
    ...(problems.length === 0 ? ['no problem is named'] : []),
    ...(told.size < problems.length ? ['something is said twice'] : []),
    ...problems.flatMap(({ code, path, limits, numbers }) => [
      ...(/^(?:\/(?:[^~/]|~[01])*)*$/.test(path) ? [] : [`${path} is no pointer`]),
      ...(holdsNonNumber({ limits, numbers }) ? [`${code} at ${path} is told in no numbers`] : []),
    ]),
  ];
};

it(
  'every input is read or refused with a reason and a place, in no time, and nothing is thrown',
  () => {
    const kinds = { batch: 0, problems: 0 };
    let slowestMs = 0;
    fc.assert(
      fc.property(input, (one) => {
        const start = performance.now();
        const reading = readBatch(one);
        const kitchen = readKitchen(one);
        slowestMs = Math.max(slowestMs, performance.now() - start);
        kinds[reading.kind]++;
        const faults = [reading, kitchen].flatMap((either) =>
          either.kind === 'problems' ? faultsOf(either.problems) : [],
        );
        if (reading.kind === 'batch') {
          if (holdsNonNumber(reading.batch)) faults.push('a number is none');
          const text = batchText(reading.batch);
          const again = readBatch(text);
          const stays = again.kind === 'batch' && batchText(again.batch) === text;
          if (!stays) faults.push('it does not come back as it was written');
        }
        if (faults.length > 0) throw new Error(faults.join('; '));
      }),
      { numRuns },
    );
    expect(kinds.batch).toBeGreaterThan(numRuns / 20);
    expect(kinds.problems).toBeGreaterThan(numRuns / 20);
    expect(slowestMs).toBeLessThan(5_000);
  },
  60_000 + 10 * numRuns,
);
