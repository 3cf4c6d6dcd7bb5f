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

  it.each(UNITS)('says one temperature in one way in %s units', (units) => {
    const { text } = describePlan(plan, { units });
    const pairs = text
      .replaceAll(/\s+/g, ' ')
      .matchAll(/(−?[\d.]+ °[CF])(?: · | \()(−?[\d.]+ °[CF])/g);
    const seconds = new Map<string, Set<string>>();
    for (const [, first = '', second = ''] of pairs) {
      seconds.set(first, (seconds.get(first) ?? new Set()).add(second));
    }
    expect(seconds.size).toBeGreaterThan(8);
    expect([...seconds].filter(([, others]) => others.size > 1)).toEqual([]);
  });

  it.each(UNITS)('prints shares that sum to a hundred in %s units', (units) => {
    const { sections } = describePlan(plan, { units });
    const made = sections.find(({ id }) => id === 'composition')?.lines.at(-1) ?? '';
    const shares = [...made.matchAll(/([\d.]+) %/g)].map(([, share]) => Number(share));
    expect(shares.length).toBeGreaterThan(1);
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(100, 9);
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
