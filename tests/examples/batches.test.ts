import { describe, expect, it } from 'vitest';
import { describePlan } from 'vitrose/words';
import { EXAMPLES, planOf } from './batches.js';
import { expectGolden, goldenNames } from './golden-text.js';
import { PROGRAMS } from './programs.js';

const UNITS = ['metric', 'us'] as const;
const COLUMNS = 78;

describe.each(EXAMPLES)('%s', (name) => {
  const plan = planOf(name);

  it.each(UNITS)('reads in %s units as it was approved', (units) => {
    expectGolden(`${name}.${units}`, describePlan(plan, { units }).text);
  });

  it.each(UNITS)('fits a terminal in %s units', (units) => {
    const lines = describePlan(plan, { units }).text.split('\n');
    expect(lines.filter((line) => line.length > COLUMNS)).toEqual([]);
  });

  it('answers in five lines first', () => {
    const { answer } = describePlan(plan);
    expect(answer.map(({ id }) => id)).toEqual(['stop', 'weighs', 'makes', 'keeps', 'watch']);
  });

  it('carries nothing that JSON would lose', () => {
    const { readable } = { readable: JSON.parse(JSON.stringify(plan)) };
    expect(JSON.stringify(readable)).not.toContain('null');
    expect(describePlan(readable).text).toBe(describePlan(plan).text);
  });
});

it('keeps no approved text of something that is gone', () => {
  const wanted = EXAMPLES.flatMap((name) => UNITS.map((units) => `${name}.${units}`));
  expect(
    goldenNames()
      .filter((name) => !PROGRAMS.includes(name))
      .sort(),
  ).toEqual(wanted.sort());
});
