import fc from 'fast-check';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { boilingPoint, solutionOf } from 'vitrose';
import { BoilingCurve } from './boiling-curve.js';
import { describeBoilingCurve } from './describe.js';
import { curveLabels } from './labels.js';
import { curveLayout, yOf } from './layout.js';
import { boilingCurveTable, CURVE_TABLE_PERCENT } from './table.js';

const pressure = fc.integer({ min: 40_000, max: 110_000 });

describe('the boiling curve', () => {
  it('rises as the water goes, inside its band', () => {
    fc.assert(
      fc.property(pressure, (pressurePa) => {
        const { points } = curveLayout({ id: 'a', pressurePa });
        points.forEach(({ waterG, boilsAtC, lowC, highC }, at) => {
          const before = points[at - 1];
          if (before !== undefined) {
            expect(waterG).toBeLessThan(before.waterG);
            expect(boilsAtC).toBeGreaterThan(before.boilsAtC);
          }
          expect(lowC).toBeLessThan(boilsAtC);
          expect(highC).toBeGreaterThan(boilsAtC);
        });
      }),
    );
  });

  it('passes through the batch', () => {
    const layout = curveLayout({ id: 'a', markC: 148 });
    const { mark, x } = layout;
    expect(mark?.waterG).toBeCloseTo(3.16, 1);
    const dissolved = 1 - (mark?.waterG ?? 0) / 100;
    const { boilingPointC } = boilingPoint(
      solutionOf('sucrose', { drySolidsMassFraction: dissolved }),
    );
    expect(boilingPointC).toBeCloseTo(148, 6);
    const svg = renderToString(BoilingCurve({ id: 'a', markC: 148 }));
    const [, dotX, dotY] = /class="vf-dot" cx="([\d.]+)" cy="([\d.]+)"/.exec(svg) ?? [];
    expect(Number(dotX)).toBeCloseTo(x.at(mark?.waterG ?? 0), 0);
    expect(Number(dotY)).toBeCloseTo(yOf(layout, 148), 0);
  });

  it('has no mark where the temperature tells no water, and says so', () => {
    expect(curveLayout({ id: 'a', markC: 90 }).mark).toBeUndefined();
    expect(describeBoilingCurve({ id: 'a', markC: 90 })).toContain(
      'At 90 °C the boil tells no water.',
    );
  });

  it('names the batch and most stages in its own words, at every width', () => {
    for (const widthPx of [320, 640, 1_280]) {
      const layout = curveLayout({
        id: 'a',
        markC: 142,
        markName: 'Lemon drops',
        elevationM: 1_500,
        widthPx,
      });
      const ids = curveLabels(layout).map(({ id }) => id);
      expect(ids[0]).toBe('mark');
      expect(ids).toEqual(
        expect.arrayContaining(['hard-crack', 'soft-crack', 'hard-ball', 'soft-ball']),
      );
    }
  });

  it('can be read from the back of a room at 1 280 px', () => {
    const { textPx } = curveLayout({ id: 'a', widthPx: 1_280 });
    expect(textPx).toBe(28);
    expect(renderToString(BoilingCurve({ id: 'a', widthPx: 1_280 }))).toContain('vf-large');
  });
});

describe('the curve in words', () => {
  it('tells its ends and the batch', () => {
    expect(describeBoilingCurve({ id: 'a', markC: 148, markName: 'Harbour lemon drops' })).toBe(
      'The less water is left, the hotter it boils, and ever more steeply: ' +
        '105 °C with 30 g of water in 100 g, 159 °C with 1 g of water in 100 g. ' +
        'Harbour lemon drops is stopped at 148 °C with 3.2 g of water left in 100 g. ' +
        'Early hard crack, where most boiled drops are stopped (143 to 149 °C, 290 to 300 °F at sea level). ' +
        'For: boiled drops, lollipops.',
    );
  });
});

describe('the table behind the curve', () => {
  it('prints what the library answers, to the last digit', () => {
    fc.assert(
      fc.property(pressure, (pressurePa) => {
        const { rows } = boilingCurveTable({ id: 'a', pressurePa });
        CURVE_TABLE_PERCENT.forEach((percent, at) => {
          const syrup = solutionOf('sucrose', { drySolidsMassFraction: percent / 100 });
          const { boilingPointC, band } = boilingPoint(syrup, { pressurePa });
          expect(rows[at]).toEqual([
            `${(100 - percent).toFixed(1)} g`,
            boilingPointC.toFixed(1),
            `${band[0].toFixed(0)} to ${band[1].toFixed(0)}`,
          ]);
        });
      }),
    );
  });
});
