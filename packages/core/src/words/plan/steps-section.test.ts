import { describe, expect, it } from 'vitest';
import type { PlannedStep } from '../../job/plan/types.js';
import { ISOMALT_DROPS, LEMON_DROPS } from './plans.fixture.js';
import { stepLines } from './steps-section.js';

function told(step: Partial<PlannedStep> & Pick<PlannedStep, 'id'>, options = {}): string {
  const steps = [{ lines: [], numbers: {}, cautions: [], ...step }];
  return stepLines({ ...LEMON_DROPS, steps }, options)
    .join(' ')
    .replace(/^ 1\. /, '');
}

describe('a step', () => {
  it('stirs a powder and its water to a syrup before the rest', () => {
    expect(told({ id: 'make-syrup', lines: ['/formula/1', '/formula/2'] })).toBe(
      'Stir 155 g dried glucose syrup and 116 g water to a smooth syrup in the pan; the rest joins it.',
    );
  });

  it('turns the flame down by a share that a hand can set', () => {
    const numbers = { readingC: 131, flameShare: 0.24 };
    expect(told({ id: 'turn-down', numbers })).toContain('turn the heat down to about a quarter:');
  });

  it('tells at the stop what the thermometer and the pan still hold back, where they do', () => {
    const bare = told({ id: 'stop' });
    expect(bare).not.toMatch(/minutes|behind|base of the pan/);
    const numbers = { atMin: 14, lagK: 1.6, carryOverK: 2.1 };
    expect(told({ id: 'stop', numbers })).toContain(
      'That is about 14 minutes after the cold pan goes on. Your thermometer is still about 1.6 °C behind by then: stop that much earlier. The base of the pan gives another 2.1 °C or so: allow for that, or stand the pan on cold dry metal.',
    );
    expect(told({ id: 'stop', numbers }, { units: 'us' })).toMatch(/2\.9 °F behind.*4 °F or so/);
  });

  it('waits for a mass to clear and to cool', () => {
    expect(told({ id: 'rest', numbers: { minutes: 5, belowC: 120 } })).toBe(
      'Let it stand until it is clear, about 5 minutes, and down to 120 °C (248 °F).',
    );
  });

  it('tells of a warm room only where it is too warm', () => {
    const set = (roomC: number) => told({ id: 'set', numbers: { demouldBelowC: 25, roomC } });
    expect(set(24)).not.toContain('warmer');
    expect(set(28)).toContain('Your room, at 28 °C (82 °F), is warmer than that.');
    expect(told({ id: 'wrap', numbers: { wrapBelowC: 20, withinMin: 30, roomC: 22 } })).toContain(
      'is warmer than that',
    );
  });

  it('promises no minutes on a hob that nobody named', () => {
    expect(stepLines(ISOMALT_DROPS, {}).join(' ')).not.toContain('cold pan goes on');
  });
});
