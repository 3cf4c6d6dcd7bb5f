import fc from 'fast-check';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { anyKeeping } from '../figure/states.fixture.js';
import { describeKeepingBars } from './describe.js';
import { KeepingBars } from './keeping-bars.js';
import { keepingBarsLayout } from './layout.js';
import { roomDots, roomLine } from './room-line.js';
import type { KeepingBarsState } from './state.js';
import { keepingBarsTable } from './table.js';

const DROPS: KeepingBarsState = {
  id: 'a',
  relativeHumidity: 0.55,
  equilibrium: 0.25,
  criticalRelativeHumidity: 0.42,
  stickyFrom: 0.47,
  stickyAt: 0.63,
};
const anyState = fc.constantFrom(320, 1_280).chain(anyKeeping);

describe('the keeping bars', () => {
  it('have a row for each thing that is known, and none for what is not', () => {
    const rows = (state: KeepingBarsState): readonly string[] =>
      keepingBarsLayout(state).rows.map(({ text }) => text);
    expect(rows(DROPS)).toEqual([
      'dries below 25 %, takes up water above',
      'goes soft in time above 42 %',
      'sticks from 47 %, all over from 63 %',
    ]);
    expect(rows({ id: 'a', stickyFrom: 0.5 })).toEqual(['sticks from 50 %']);
    expect(rows({ id: 'a', stickyAt: 0.7 })).toEqual(['sticky all over from 70 %']);
    expect(rows({ id: 'a', relativeHumidity: 0.5 })).toEqual([]);
  });

  it('have a dot where the air of the room does something, and only there', () => {
    expect(roomDots(keepingBarsLayout(DROPS))).toHaveLength(3);
    expect(roomDots(keepingBarsLayout({ ...DROPS, relativeHumidity: 0.44 }))).toHaveLength(2);
    expect(roomDots(keepingBarsLayout({ ...DROPS, relativeHumidity: 0.3 }))).toHaveLength(1);
    expect(roomDots(keepingBarsLayout({ ...DROPS, relativeHumidity: 0.2 }))).toHaveLength(0);
    expect(roomDots(keepingBarsLayout({ ...DROPS, relativeHumidity: 1 }))).toHaveLength(3);
  });

  it('grow with the stickiness: the dot rises in the wedge', () => {
    const dotY = (relativeHumidity: number): number =>
      roomDots(keepingBarsLayout({ id: 'a', stickyFrom: 0.4, stickyAt: 0.8, relativeHumidity })).at(
        0,
      )?.[1] ?? Number.NaN;
    expect(dotY(0.5)).toBeGreaterThan(dotY(0.6));
    expect(dotY(0.7)).toBeGreaterThan(dotY(0.8));
    expect(dotY(0.8)).toBe(dotY(0.9));
  });

  it('never draw the line of the room through words', () => {
    fc.assert(
      fc.property(anyState, (state) => {
        const layout = keepingBarsLayout(state);
        const segments = [...roomLine(layout).matchAll(/M([\d.]+) ([\d.]+)V([\d.]+)/g)].map(
          ([, x, from, to]) => [Number(x), Number(from), Number(to)] as const,
        );
        for (const [x, from, to] of segments) {
          expect(to).toBeGreaterThan(from);
          for (const { textX, textRight, baseline } of layout.rows) {
            const meets = from < baseline && to > baseline - layout.textPx * 0.75;
            expect(meets && x > textX && x < textRight).toBe(false);
          }
        }
      }),
    );
  });

  it('draw nothing where nothing is given', () => {
    const svg = renderToString(KeepingBars({ id: 'a' }));
    expect(svg).not.toContain('vf-room');
    expect(svg).not.toContain('vf-bar');
    expect(svg).toContain('humidity of the air, %');
  });
});

describe('the keeping bars in words', () => {
  it('tell what each air does, and then what this room does', () => {
    expect(describeKeepingBars(DROPS)).toBe(
      'Air drier than 25 % dries a bare sweet; in wetter air it takes up water. ' +
        'Above 42 % it goes soft in time. It begins to stick at 47 % and is sticky all over from 63 %. ' +
        'Your room is at 55 %: there it takes up water, it goes soft in time, and it begins to stick.',
    );
  });

  it('praise a dry room in two words', () => {
    expect(describeKeepingBars({ ...DROPS, relativeHumidity: 0.2 })).toContain(
      'Your room is at 20 %: there it dries.',
    );
  });

  it('own up where nothing is known', () => {
    expect(describeKeepingBars({ id: 'a', relativeHumidity: 0.4 })).toBe(
      'An axis of humidity from 0 to 100 %. What air this sweet bears is not known. Your room is at 40 %.',
    );
  });

  it('have the same numbers in their table, the driest first', () => {
    expect(keepingBarsTable(DROPS).rows.map(([, at]) => at)).toEqual([
      '25 %',
      '42 %',
      '47 %',
      '55 %',
      '63 %',
    ]);
    expect(keepingBarsTable({ id: 'a' }).rows).toEqual([]);
  });
});
