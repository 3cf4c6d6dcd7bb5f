import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutToWidth } from './cut-to-width.js';
import { lineBoxes } from './line-boxes.js';
import { overlap, placeLabels, type WantedLabel } from './place-labels.js';
import { spread } from './spread.js';
import { textWidthPx } from './text-width.js';
import { uncovered } from './uncovered.js';

// Measured in Chromium, Hanken Grotesk, weight 600, thousandths of an em.
const MEASURED = [
  ['early hard crack', 7_429],
  ['0123456789', 5_600],
  ['soft ball', 3_672],
  ['brown liquid', 5_578],
  ['Lemon drops: 142 °C', 9_432],
  ['3.0 g of water left', 7_954],
  ['your kitchen', 5_646],
] as const;

describe('the width of a text', () => {
  it.each(MEASURED)('of “%s” is not less than it is drawn, nor much more', (text, milliEm) => {
    const drawnPx = (milliEm / 1_000) * 16;
    expect(textWidthPx(text, 16)).toBeGreaterThanOrEqual(drawnPx);
    expect(textWidthPx(text, 16)).toBeLessThanOrEqual(drawnPx * 1.25);
  });
});

describe('labels', () => {
  const within = { left: 0, top: 0, right: 320, bottom: 200 };
  const label = fc.record({
    lines: fc.array(fc.string({ maxLength: 14 }), { minLength: 1, maxLength: 3 }),
    sizePx: fc.integer({ min: 12, max: 28 }),
    anchor: fc.constantFrom('start' as const, 'middle' as const, 'end' as const),
    places: fc.array(
      fc.tuple(fc.integer({ min: -20, max: 340 }), fc.integer({ min: -20, max: 220 })),
      { maxLength: 6 },
    ),
  });

  it('never cover each other or what is taken, and never leave the drawing', () => {
    fc.assert(
      fc.property(fc.array(label, { maxLength: 30 }), (wishes) => {
        const taken = [{ left: 100, top: 50, right: 140, bottom: 120 }];
        const wanted = wishes.map((wish, at): WantedLabel => ({ id: `${at}`, ...wish }));
        const placed = placeLabels(wanted, within, taken);
        placed.forEach(({ box }, at) => {
          const others = [...taken, ...placed.slice(at + 1).map((other) => other.box)];
          expect(others.some((other) => overlap(box, other))).toBe(false);
          expect(box.left).toBeGreaterThanOrEqual(within.left);
          expect(box.right).toBeLessThanOrEqual(within.right);
          expect(box.top).toBeGreaterThanOrEqual(within.top);
          expect(box.bottom).toBeLessThanOrEqual(within.bottom);
        });
      }),
    );
  });

  it('go to the first free place they like, and the earlier label first', () => {
    const wish = (id: string, ...places: [number, number][]): WantedLabel => ({
      id,
      lines: ['hard crack'],
      sizePx: 16,
      anchor: 'start',
      places,
    });
    const placed = placeLabels(
      [wish('one', [10, 50]), wish('two', [10, 52], [10, 90]), wish('three', [12, 48])],
      within,
    );
    expect(placed.map(({ id, y }) => [id, y])).toEqual([
      ['one', 50],
      ['two', 90],
    ]);
  });
});

describe('things spread along a line', () => {
  const wishes = fc
    .array(
      fc.record({
        middle: fc.double({ min: -50, max: 350, noNaN: true }),
        size: fc.double({ min: 1, max: 30, noNaN: true }),
      }),
      { maxLength: 9 },
    )
    .map((all) => [...all].sort((one, other) => one.middle - other.middle));

  it('keep their order, cover nothing, and stay where they may be', () => {
    fc.assert(
      fc.property(wishes, (all) => {
        let end = 0;
        spread(all, [0, 300]).forEach((middle, at) => {
          const size = all[at]?.size ?? 0;
          expect(middle - size / 2).toBeGreaterThanOrEqual(end - 1e-6);
          end = middle + size / 2;
        });
        expect(end).toBeLessThanOrEqual(300 + 1e-6);
      }),
    );
  });

  it('do not move where there is room, and share the way where there is none', () => {
    const two = (one: number, other: number) =>
      spread(
        [
          { middle: one, size: 20 },
          { middle: other, size: 20 },
        ],
        [0, 300],
      );
    expect(two(50, 90)).toEqual([50, 90]);
    expect(two(50, 54)).toEqual([42, 62]);
    expect(two(2, 4)).toEqual([10, 30]);
    expect(two(297, 299)).toEqual([270, 290]);
  });
});

describe('a line in boxes', () => {
  it('is covered by them from end to end, and closely', () => {
    const boxes = lineBoxes(
      [
        [0, 0],
        [100, 100],
        [200, 100],
      ],
      2,
    );
    for (const along of [0, 25, 50, 99, 130, 200]) {
      const y = Math.min(along, 100);
      expect(
        boxes.some(
          ({ left, right, top, bottom }) =>
            left <= along && along <= right && top <= y && y <= bottom,
        ),
        `${along}`,
      ).toBe(true);
    }
    expect(boxes.some(({ left, right, top }) => left <= 80 && right >= 80 && top < 60)).toBe(false);
  });
});

describe('a text that is not ours', () => {
  it('stays whole where it fits, and ends in an ellipsis where it does not', () => {
    expect(cutToWidth('lemon drops', 16, 200)).toBe('lemon drops');
    fc.assert(
      fc.property(
        fc.string({ maxLength: 60 }),
        fc.integer({ min: 20, max: 200 }),
        (text, width) => {
          const cut = cutToWidth(text, 16, width);
          expect(textWidthPx(cut, 16)).toBeLessThanOrEqual(width);
          if (cut !== text) expect(cut).toMatch(/…$/);
        },
      ),
    );
  });
});

describe('a line that steps over words', () => {
  it('leaves out what is covered and nothing else', () => {
    expect(uncovered([0, 100], [])).toEqual([[0, 100]]);
    expect(
      uncovered(
        [0, 100],
        [
          [60, 70],
          [20, 40],
          [30, 50],
        ],
      ),
    ).toEqual([
      [0, 20],
      [50, 60],
      [70, 100],
    ]);
    expect(
      uncovered(
        [0, 100],
        [
          [-10, 20],
          [90, 120],
        ],
      ),
    ).toEqual([[20, 90]]);
  });
});
