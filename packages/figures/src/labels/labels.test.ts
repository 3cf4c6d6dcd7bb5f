import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { overlap, placeLabels, type WantedLabel } from './place-labels.js';
import { textWidthPx } from './text-width.js';

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
