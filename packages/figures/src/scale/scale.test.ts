import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { backThroughKnots, throughKnots } from './knots.js';
import { linearScale } from './linear.js';
import { niceStep, niceTicks } from './nice-ticks.js';
import { bandPath, linePath, stripPath } from './path.js';

const span = fc
  .tuple(
    fc.double({ min: -500, max: 500, noNaN: true }),
    fc.double({ min: 0.01, max: 900, noNaN: true }),
  )
  .map(([low, width]) => [low, low + width] as const);
const room = fc.integer({ min: 3, max: 20 });

describe('nice ticks', () => {
  it('stand at 100, 110 … 160 for the boil of a syrup', () => {
    expect(niceTicks(99.5, 163, 8)).toEqual([100, 110, 120, 130, 140, 150, 160]);
  });

  it('are 0.3 where it is meant, not 0.1 three times', () => {
    expect(niceTicks(0, 0.5, 5)).toEqual([0, 0.1, 0.2, 0.3, 0.4, 0.5]);
  });

  it('lie within the span, one step apart, with no more steps than there is room for', () => {
    fc.assert(
      fc.property(span, room, ([low, high], most) => {
        const ticks = niceTicks(low, high, most);
        const step = niceStep(high - low, most);
        const slack = step * 1e-6;
        expect(ticks.length - 1).toBeLessThanOrEqual(most);
        ticks.forEach((tick, at) => {
          expect(tick).toBeGreaterThanOrEqual(low - slack);
          expect(tick).toBeLessThanOrEqual(high + slack);
          const before = ticks[at - 1];
          if (before !== undefined) expect(Math.abs(tick - before - step)).toBeLessThan(slack);
        });
      }),
    );
  });

  it('leave no room for one more at either end', () => {
    fc.assert(
      fc.property(span, room, ([low, high], most) => {
        const ticks = niceTicks(low, high, most);
        const step = niceStep(high - low, most);
        const [first = high, last = low] = [ticks[0], ticks.at(-1)];
        expect(first - step).toBeLessThan(low);
        expect(last + step).toBeGreaterThan(high);
      }),
    );
  });

  it('step by 1, 2 or 5 of a power of ten, never more than two and a half times too coarse', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1e6, noNaN: true }), room, (width, most) => {
        const step = niceStep(width, most);
        const leading = step / 10 ** Math.floor(Math.log10(step) + 1e-9);
        expect([1, 2, 5].some((one) => Math.abs(leading - one) < 1e-6)).toBe(true);
        expect(step).toBeGreaterThanOrEqual((width / most) * (1 - 1e-6));
        expect(step).toBeLessThanOrEqual((width / most) * 2.5 * (1 + 1e-6));
      }),
    );
  });
});

describe('scales', () => {
  it('give back the value they placed', () => {
    fc.assert(
      fc.property(span, span, fc.double({ min: -1, max: 2, noNaN: true }), (values, places, at) => {
        const scale = linearScale(values, places);
        const value = values[0] + at * (values[1] - values[0]);
        expect(scale.valueAt(scale.at(value))).toBeCloseTo(value, 6);
      }),
    );
  });

  it('bend at their knots, and run on beyond the last', () => {
    const knots = [
      [100, 95],
      [150, 144],
      [160, 160],
    ] as const;
    expect(throughKnots(knots, 125)).toBeCloseTo(119.5, 9);
    expect(throughKnots(knots, 155)).toBeCloseTo(152, 9);
    expect(throughKnots(knots, 165)).toBeCloseTo(168, 9);
    for (const value of [90, 100, 133, 150, 158, 160, 171]) {
      expect(backThroughKnots(knots, throughKnots(knots, value))).toBeCloseTo(value, 9);
    }
  });
});

describe('paths', () => {
  it('go through their points in order', () => {
    expect(
      linePath([
        [0, 1],
        [2.04, 3.06],
      ]),
    ).toBe('M0 1L2 3.1');
  });

  it('come back along the lower line of a band', () => {
    expect(
      bandPath(
        [
          [0, 0],
          [9, 0],
        ],
        [
          [0, 4],
          [9, 4],
        ],
      ),
    ).toBe('M0 0L9 0L9 4L0 4Z');
  });

  it('round the upper corners of a strip, and no more than it is high', () => {
    expect(stripPath(0, 0, 40, 6, 12)).toContain('V6Q0 0 6 0');
  });
});
