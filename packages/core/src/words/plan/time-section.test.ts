import { describe, expect, it } from 'vitest';
import type { PlanDocument, PlannedCooking } from '../../job/plan/types.js';
import { COOK_MOMENTS } from '../names/cook-words.js';
import { ISOMALT_DROPS, LEMON_DROPS } from './plans.fixture.js';
import { stepLines } from './steps-section.js';
import { timeLines } from './time-section.js';

const { cooking } = LEMON_DROPS;
if (cooking === undefined) throw new Error('the lemon drops have a hob');

function cooked(changes: Partial<PlannedCooking>): PlanDocument {
  return { ...LEMON_DROPS, cooking: { ...(cooking as PlannedCooking), ...changes } };
}

describe('against the clock', () => {
  it('says when the stop comes, how fast, and every moment on this thermometer', () => {
    expect(timeLines(LEMON_DROPS, {})).toEqual([
      'On your hob the stop comes about 11 minutes after the cold pan goes on (9 to 14, worked out here).',
      'There it climbs about 15 °C a minute at full heat; turned down to a third you can catch it. At full heat your thermometer would be about 2.4 °C behind.',
      'Minutes from the cold pan, and what your thermometer shows then:',
      '    3 min  first boil, 102 °C (216 °F)',
      '    9 min  turn the heat down, 131 °C (268 °F)',
      '   11 min  stop, 143 °C (289 °F)',
      '   16 min  clear after its rest, 131 °C (268 °F)',
      '   20 min  acid, 123 °C (253 °F)',
      '   21 min  pour, 121 °C (250 °F)',
    ]);
  });

  it('has a word for every moment', () => {
    const moments = Object.keys(COOK_MOMENTS) as (keyof typeof COOK_MOMENTS)[];
    const lines = timeLines(
      cooked({
        moments: moments.map((id) => ({
          id,
          atMin: { value: 5, band: [5, 5], model: 'heat' },
          hereC: 120,
          readingC: 120,
        })),
      }),
      {},
    );
    for (const id of moments)
      expect(lines).toContain(`    5 min  ${COOK_MOMENTS[id]}, 120 °C (248 °F)`);
  });

  it('says that nobody named the hob, and tells no minutes in the steps then', () => {
    const [first] = timeLines(cooked({ hobIsAssumed: true }), {});
    expect(first).toMatch(/^Nobody said which hob\. On one like most the stop comes about 11/);
    expect(stepLines(LEMON_DROPS, {}).join('\n')).toContain('about 11 minutes after the cold pan');
    expect(stepLines(cooked({ hobIsAssumed: true }), {}).join('\n')).not.toContain('minutes after');
  });

  it('asks for no turning down where all of the flame can be caught', () => {
    expect(timeLines(ISOMALT_DROPS, {})[1]).toBe(
      'There it climbs about 5 °C a minute at full heat, slowly enough to catch.',
    );
  });

  it('says nothing of a lag within a degree, or one that an advice tells', () => {
    const slow = timeLines(LEMON_DROPS, {})[1];
    expect(slow).toContain('2.4 °C behind');
    const lagK = { value: 0.9, band: [0.8, 1.1], model: 'thermometer' } as const;
    expect(timeLines(cooked({ lagK }), {})[1]).not.toContain('behind');
    expect(timeLines(cooked({ lagK: undefined }), {})[1]).not.toContain('behind');
    const advice = [{ code: 'reading-lags', severity: 'note', numbers: {}, remedies: [] }] as const;
    expect(timeLines({ ...LEMON_DROPS, advice }, {})[1]).not.toContain('behind');
  });

  it('says so where the hob never gets there', () => {
    const never = { ...LEMON_DROPS, cooking: undefined };
    expect(timeLines(never, {})).toEqual(['This hob never gets there: see what to change.']);
    expect(timeLines(never, { region: 'us' })).toEqual([
      'This stove never gets there: see what to change.',
    ]);
  });

  it('speaks of stoves, °F and colors in the United States, and follows a locale', () => {
    const us = timeLines(ISOMALT_DROPS, { units: 'us' });
    expect(us[0]).toContain('which stove');
    expect(us[1]).toContain('9 °F a minute');
    expect(us).toContain('   25 min  color and flavor, 257 °F (125 °C)');
    expect(timeLines(LEMON_DROPS, { locale: 'de' })[1]).toContain('2,4 °C behind');
  });
});
