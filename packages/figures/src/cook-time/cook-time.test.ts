import fc from 'fast-check';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { CookTime } from './cook-time.js';
import { anyCook, LEMON_DROPS, pathTo } from './cooks.fixture.js';
import { cookCourse } from './course.js';
import { describeCookTime } from './describe.js';
import { cookTimeLabels, lateLabels } from './labels.js';
import { cookTimeLayout, placeOf } from './layout.js';
import type { CookTimeState } from './state.js';
import { cookTimeTable } from './table.js';

const anyWidth = fc.constantFrom(320, 640, 1_280).chain(anyCook);

function named(state: CookTimeState): readonly string[] {
  const layout = cookTimeLayout(state);
  const late = lateLabels(layout);
  return [
    ...late.map(({ moment }) => moment.id),
    ...cookTimeLabels(layout, late).map(({ id }) => id),
  ].sort();
}

describe('the time line of a cook', () => {
  it('is hot up to the stop and cools from there', () => {
    const { heat, cooling, stop, early, late } = cookCourse(LEMON_DROPS);
    expect(heat.at(-1)).toBe(stop);
    expect(cooling[0]).toBe(stop);
    expect(early.map(({ id }) => id)).toEqual(['first-boil', 'turn-down']);
    expect(late.map(({ id }) => id)).toEqual([
      'stop',
      'rest',
      'colour-and-flavour',
      'acid',
      'pour',
    ]);
  });

  it('stops at the end of its path where nobody names the stop', () => {
    const { stop, cooling } = cookCourse({ ...LEMON_DROPS, moments: [] });
    expect(stop).toEqual({ minutes: 16, temperatureC: 143 });
    expect(cooling).toEqual([stop]);
  });

  it('names every moment and the band of the stop, whatever the cook', () => {
    fc.assert(
      fc.property(anyWidth, (state) => {
        expect(named(state)).toEqual([...state.moments.map(({ id }) => id), 'band'].sort());
      }),
    );
  });

  it('leads to the names from the stop on by lines that rise, and never cross', () => {
    fc.assert(
      fc.property(anyWidth, (state) => {
        const layout = cookTimeLayout(state);
        fc.pre(lateLabels(layout)[0]?.at[1] !== layout.textPx);
        lateLabels(layout).forEach(({ from, at }, place, all) => {
          expect(at[1] - layout.textPx * 0.35).toBeLessThanOrEqual(from[1] + 1e-9);
          const after = all[place + 1];
          if (after === undefined) return;
          expect(after.from[0]).toBeGreaterThanOrEqual(from[0]);
          expect(after.at[1]).toBeGreaterThan(at[1]);
        });
      }),
    );
  });

  it('lays its clock from the cold pan, and ends every line before the names', () => {
    fc.assert(
      fc.property(anyWidth, (state) => {
        const layout = cookTimeLayout(state);
        expect(layout.x.at(0)).toBeCloseTo(layout.left, 9);
        expect(layout.x.at(state.bandMinutes[1])).toBeLessThanOrEqual(layout.right + 1e-9);
        for (const point of [...layout.course.moments, ...(state.other?.path ?? [])])
          expect(placeOf(layout, point)[0]).toBeLessThan(layout.namesLeft);
      }),
    );
  });

  it('draws the band of the stop from its first minute to its last', () => {
    const { x } = cookTimeLayout(LEMON_DROPS);
    const svg = renderToString(CookTime(LEMON_DROPS));
    const [, left, width] = /class="vf-window" x="([\d.]+)"[^>]* width="([\d.]+)"/.exec(svg) ?? [];
    expect(Number(left)).toBeCloseTo(x.at(12), 0);
    expect(Number(width)).toBeCloseTo(x.at(20) - x.at(12), 0);
  });

  it('is amber only where there is heat', () => {
    const svg = renderToString(CookTime(LEMON_DROPS));
    const [x, y] = placeOf(cookTimeLayout(LEMON_DROPS), cookCourse(LEMON_DROPS).stop);
    const stop = `${Math.round(x * 10) / 10} ${Math.round(y * 10) / 10}`;
    expect(svg).toMatch(new RegExp(`class="vf-heating" d="M[^"]*L${stop}"`));
    expect(svg).toMatch(new RegExp(`class="vf-cooling" d="M${stop}L`));
  });
});

describe('the cook in words', () => {
  it('tells when it boils, when it stops, and what the hand does then', () => {
    expect(describeCookTime(LEMON_DROPS)).toBe(
      'It first boils after about 5 minutes and reaches the stop, 143 °C, after about 16 minutes, ' +
        'somewhere from 12 to 20. Turn the heat down at 128 °C, after about 14 minutes. ' +
        'Then it cools: it has rested clear after about 17 minutes at 139 °C, ' +
        'colour and flavour go in after about 20 minutes at 125 °C, ' +
        'the acid goes in after about 21 minutes at 121 °C, ' +
        'it is poured after about 22 minutes at 117 °C.',
    );
  });

  it('does not call one minute a span', () => {
    const sure = { ...LEMON_DROPS, bandMinutes: [15.8, 16.2] as const };
    expect(describeCookTime(sure)).toContain('after about 16 minutes. Turn');
    expect(renderToString(CookTime(sure))).toContain('stop: 16 min<');
  });

  it('says what the dashed line is', () => {
    const other = { label: 'with a lid', path: pathTo([3, 104], [11, 146]) };
    expect(describeCookTime({ ...LEMON_DROPS, units: 'f', other })).toContain(
      'The dashed line is with a lid: its stop, 295 °F, comes after about 11 minutes.',
    );
  });

  it('has the same numbers in its table', () => {
    const { rows } = cookTimeTable(LEMON_DROPS);
    expect(rows).toContainEqual(['stop', '16 min (12 to 20)', '143']);
    expect(rows).toContainEqual(['first boil', '5 min', '103']);
    expect(rows).toHaveLength(LEMON_DROPS.moments.length);
  });
});
