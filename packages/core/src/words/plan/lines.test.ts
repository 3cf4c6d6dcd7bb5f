import { describe, expect, it } from 'vitest';
import type { PlannedLine } from '../../job/plan/types.js';
import { thingsToWeigh } from './lines.js';

function line(at: number, massG: number, more: Partial<PlannedLine> = {}): PlannedLine {
  return {
    path: `/formula/${at}`,
    ingredient: 'water',
    massG: { value: massG, band: [massG, massG], model: 'given' },
    waterG: massG,
    drySolidsG: 0,
    when: 'start',
    ...more,
  };
}

describe('what is weighed', () => {
  it('is one thing where two lines are the same thing at the same time', () => {
    expect(thingsToWeigh([line(0, 240), line(1, 101)])).toMatchObject([
      { massG: 341, partsG: [240, 101], line: { path: '/formula/0' } },
    ]);
  });

  it.each([
    ['another time', { when: 'off-heat' }],
    ['another place in the boil', { when: { atC: 120 } }],
    ['another ingredient', { ingredient: 'sucrose' }],
    ['another strength', { drySolidsG: 5 }],
    ['words of the cook', { asWritten: '½ cup' }],
    ['a spoon', { form: 'level' }],
  ] as const)('is two things with %s', (_what, more) => {
    expect(thingsToWeigh([line(0, 240), line(1, 101, more)])).toHaveLength(2);
  });
});
