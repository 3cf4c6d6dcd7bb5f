import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type PlanDocument, planBatch } from 'vitrose';
import { readBatch } from 'vitrose/documents';
import { describePlan } from 'vitrose/words';
import { batchDocument } from '../documents/arbitrary-batch.js';

const runs = Number(process.env.VITROSE_FUZZ_RUNS ?? '10000');

/** A plan takes a few milliseconds, also on a busy machine. */
const patienceMs = 60_000 + 30 * runs;

/** Every number anywhere in a value, with its path. */
function numbersIn(value: unknown, path = ''): readonly (readonly [string, number])[] {
  if (typeof value === 'number') return [[path, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, child]) => numbersIn(child, `${path}/${key}`));
}

/** Every figure anywhere in a plan, with its path. */
function figuresIn(
  value: unknown,
  path = '',
): readonly (readonly [string, PlanDocument['composition']['chargeG']])[] {
  if (typeof value !== 'object' || value === null) return [];
  const here = 'band' in value && 'model' in value ? [[path, value as never] as const] : [];
  return [
    ...here,
    ...Object.entries(value).flatMap(([key, child]) => figuresIn(child, `${path}/${key}`)),
  ];
}

it(
  'answers every readable document with a plan or with problems, never a throw or a number that is none',
  () => {
    let plans = 0;
    fc.assert(
      fc.property(batchDocument, (document) => {
        const read = readBatch(JSON.stringify(document));
        if (read.kind === 'problems')
          throw new Error(`unreadable: ${JSON.stringify(read.problems)}`);
        const result = planBatch(read.batch);
        if (result.kind === 'refused') {
          expect(result.problems.length).toBeGreaterThan(0);
          return;
        }
        plans += 1;
        for (const [path, number] of numbersIn(result.plan)) {
          if (!Number.isFinite(number)) throw new Error(`${path} is ${number}`);
        }
        for (const [path, { value, band }] of figuresIn(result.plan)) {
          const room = 1e-9 * Math.max(1, Math.abs(value));
          if (band[0] > value + room || band[1] < value - room)
            throw new Error(`${path}: ${value} outside ${band}`);
        }
        expect(describePlan(result.plan).text).not.toMatch(/NaN|undefined|Infinity/);
      }),
      { numRuns: runs },
    );
    // A test that refuses everything would prove nothing.
    expect(plans).toBeGreaterThan(runs / 10);
  },
  patienceMs,
);

it('gives the same plan for the same batch', () => {
  fc.assert(
    fc.property(batchDocument, (batch) => {
      expect(planBatch(batch)).toEqual(planBatch(batch));
    }),
    { numRuns: 200 },
  );
});
