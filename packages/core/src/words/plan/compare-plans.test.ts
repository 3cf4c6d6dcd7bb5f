import { describe, expect, it } from 'vitest';
import type { PlanDocument } from '../../job/plan/types.js';
import { comparePlans } from './compare-plans.js';
import { ISOMALT_DROPS, LEMON_DROPS } from './plans.fixture.js';

function loaded(thermalLoadMin: number): PlanDocument {
  const { cooking } = LEMON_DROPS;
  if (cooking === undefined) throw new Error('the lemon drops have a hob');
  const load = { ...cooking.thermalLoadMin, value: thermalLoadMin };
  return { ...LEMON_DROPS, cooking: { ...cooking, thermalLoadMin: load } };
}

const line = (id: string, plan: PlanDocument, other: PlanDocument, options = {}) =>
  comparePlans(plan, other, options).find((one) => one.id === id);

describe('two plans side by side', () => {
  it('say the same where they are the same', () => {
    const lines = comparePlans(LEMON_DROPS, LEMON_DROPS);
    expect(lines.map(({ id }) => id)).toEqual([
      'stop',
      'minutes',
      'water',
      'hard',
      'late',
      'inverted',
      'air',
      'graining',
      'wrap',
      'sweet',
      'pieces',
      'mass',
      'load',
    ]);
    for (const { differs } of lines) expect(differs).toBe(false);
    for (const { id, here, there } of lines) if (id !== 'load') expect(here).toBe(there);
  });

  it('have a line for what both can say, and none for what only one can', () => {
    const ids = comparePlans(LEMON_DROPS, ISOMALT_DROPS).map(({ id }) => id);
    expect(ids).toEqual(['stop', 'minutes', 'water', 'hard', 'sweet', 'pieces', 'mass', 'load']);
  });

  it('give every number its unit, in the reader’s own', () => {
    expect(line('stop', LEMON_DROPS, ISOMALT_DROPS)).toEqual({
      id: 'stop',
      label: 'Stop at',
      here: '143 °C',
      there: '161 °C',
      differs: true,
    });
    const us = { units: 'us' };
    expect(line('stop', LEMON_DROPS, ISOMALT_DROPS, us)).toMatchObject({ here: '290 °F' });
    expect(line('late', LEMON_DROPS, LEMON_DROPS)?.here).toBe('5 °C');
    expect(line('hard', LEMON_DROPS, ISOMALT_DROPS)).toMatchObject({
      here: '43 °C',
      there: '21 °C',
    });
    expect(line('minutes', LEMON_DROPS, ISOMALT_DROPS)?.there).toBe('13 minutes');
    expect(line('air', LEMON_DROPS, LEMON_DROPS)?.here).toBe('30 %');
    expect(line('wrap', LEMON_DROPS, LEMON_DROPS)?.here).toBe('212 days');
    expect(line('mass', LEMON_DROPS, ISOMALT_DROPS, us)).toMatchObject({ here: '348 g (12.3 oz)' });
    expect(line('graining', LEMON_DROPS, LEMON_DROPS)?.here).toBe('low');
  });

  it('keep silent about minutes where a hob never gets there', () => {
    const never = { ...LEMON_DROPS, cooking: undefined };
    expect(line('minutes', LEMON_DROPS, never)).toBeUndefined();
    expect(line('load', LEMON_DROPS, never)).toBeUndefined();
    expect(line('load', never, LEMON_DROPS)).toBeUndefined();
  });

  it('tell the load on the colour only as a ratio, and only where it can tell them apart', () => {
    const there = (value: number) => line('load', loaded(2), loaded(value))?.there;
    expect(there(2.4)).toBe('about the same');
    expect(there(1.7)).toBe('about the same');
    expect(there(4.6)).toBe('2.3 times that');
    expect(there(0.5)).toBe('0.25 times that');
    expect(line('load', loaded(2), loaded(0))).toBeUndefined();
    expect(line('load', loaded(2), loaded(4), { units: 'us' })?.label).toBe('Heat on the color');
    expect(line('load', loaded(2), loaded(4.6), { locale: 'de' })?.there).toBe('2,3 times that');
  });
});
