import fc from 'fast-check';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { anyMass, anyWindows, LEMON_DROP_AXIS, windowsOver } from './axes.fixture.js';
import { barPath } from './bar-path.js';
import { describeTemperatureAxis } from './describe.js';
import { markLabels, windowLabels } from './labels.js';
import { windowLanes } from './lanes.js';
import { placeOf, temperatureAxisLayout } from './layout.js';
import { shownMarks } from './marks.js';
import { temperatureAxisTable } from './table.js';
import { TemperatureAxis } from './temperature-axis.js';

const sizes = [
  { widthPx: 320, wide: false },
  { widthPx: 1_280, wide: false },
  { widthPx: 1_280, wide: true },
];

describe.each(sizes)('a temperature axis of $widthPx px, wide: $wide', (size) => {
  it('names every window of a mass, and every mark', () => {
    fc.assert(
      fc.property(anyMass(size), (state) => {
        const layout = temperatureAxisLayout(state);
        const names = windowLabels(layout).map(({ id }) => id);
        expect(names.sort()).toEqual(state.windows.map(({ id }) => id).sort());
        const marks = markLabels(layout).map(({ mark }) => mark.id);
        expect(marks.sort()).toEqual(
          shownMarks(state)
            .map(({ id }) => id)
            .sort(),
        );
      }),
    );
  });

  it('draws each window from its low end to its high end, and no two over each other', () => {
    fc.assert(
      fc.property(anyWindows(size), (state) => {
        const layout = temperatureAxisLayout(state);
        layout.windows.forEach(({ window, bar }, at) => {
          const { lowC, highC } = window;
          const ends = [bar.from, bar.to];
          if (lowC !== undefined) expect(ends).toContain(placeOf(layout, lowC));
          if (highC !== undefined) expect(ends).toContain(placeOf(layout, highC));
          expect([bar.openFrom, bar.openTo].filter(Boolean)).toHaveLength(
            [lowC, highC].filter((end) => end === undefined).length,
          );
          for (const { bar: other } of layout.windows.slice(at + 1)) {
            const beside = bar.far <= other.near || other.far <= bar.near;
            const apart = bar.to <= other.from + 1e-9 || other.to <= bar.from + 1e-9;
            expect(beside || apart).toBe(true);
          }
        });
      }),
    );
  });

  it('has its marks where its degrees are', () => {
    const layout = temperatureAxisLayout({ ...LEMON_DROP_AXIS, ...size });
    const place = Math.round(placeOf(layout, 143) * 10) / 10;
    const svg = renderToString(TemperatureAxis({ ...LEMON_DROP_AXIS, ...size }));
    const [, d = ''] = /class="vf-hairline" d="([^"]*)"/.exec(svg) ?? [];
    expect(d).toContain(layout.lies ? `M${place} ` : ` ${place}H`);
  });
});

describe('a temperature axis', () => {
  it('lies only where it is wide and has the room', () => {
    const lies = (widthPx: number, wide: boolean): boolean =>
      temperatureAxisLayout({ ...LEMON_DROP_AXIS, widthPx, wide }).lies;
    expect([lies(320, true), lies(639, true), lies(640, true), lies(1_280, false)]).toEqual([
      false,
      false,
      true,
      false,
    ]);
  });

  it('needs three lanes for the windows of a mass, and shares one among those that only touch', () => {
    expect(windowLanes(windowsOver(43))).toEqual([0, 0, 0, 1, 0, 2, 0, 1]);
  });

  it('hardens its corners with the mass', () => {
    const { windows } = temperatureAxisLayout(LEMON_DROP_AXIS);
    const radii = windows.map(({ bar }) => bar.radius);
    expect(radii).toEqual([...radii].sort((one, other) => other - one));
    expect(radii.at(-1)).toBe(0);
  });

  it('is not stretched by a mould that bears more than the mass ever has', () => {
    const layout = (mouldMaxC: number | undefined) =>
      temperatureAxisLayout({ ...LEMON_DROP_AXIS, mouldMaxC });
    expect(layout(230).along.at(100)).toBe(layout(undefined).along.at(100));
    expect(shownMarks({ ...LEMON_DROP_AXIS, mouldMaxC: 230 }).map(({ id }) => id)).not.toContain(
      'mould-max',
    );
  });
});

describe('a bar', () => {
  const bar = { near: 0, far: 20, from: 0, to: 100, radius: 5, lies: true };

  it('is closed where it ends and open where it does not', () => {
    expect(barPath({ ...bar, openFrom: false, openTo: false })).toMatch(/Z$/);
    expect(barPath({ ...bar, openFrom: false, openTo: true })).toBe(
      'M100 0L5 0Q0 0 0 5L0 15Q0 20 5 20L100 20',
    );
    expect(barPath({ ...bar, openFrom: true, openTo: false })).toBe(
      'M0 0L95 0Q100 0 100 5L100 15Q100 20 95 20L0 20',
    );
    expect(barPath({ ...bar, openFrom: true, openTo: true })).toBe('M0 0L100 0M0 20L100 20');
  });
});

describe('the axis in words', () => {
  it('goes down from the stop to the room', () => {
    expect(describeTemperatureAxis(LEMON_DROP_AXIS)).toBe(
      'One axis of temperatures, from the stop at 143 °C down to your room at 22 °C. ' +
        'The mass fills moulds by itself above 122 °C, pours by hand from 122 down to 105 °C, ' +
        'folds from 93 down to 83 °C, pulls from 93 down to 64 °C, ' +
        'is stamped and cut from 83 down to 64 °C, sticks to what it touches above 62 °C, ' +
        'turns out of the mould from 43 °C down, is wrapped from 33 °C down. ' +
        'Its glass point is 43 °C, somewhere from 35 to 51: colder, it stays hard. ' +
        'Your store is at 24 °C. ' +
        'The mould bears 130 °C: let the mass cool to that before it goes in.',
    );
  });

  it('does not warn of a mould that bears the stop', () => {
    expect(describeTemperatureAxis({ ...LEMON_DROP_AXIS, mouldMaxC: 230, units: 'f' })).toContain(
      'The mould bears 446 °F, and the mass is no hotter.',
    );
  });

  it('has the same numbers in its table, and the mould even where it is not drawn', () => {
    const { rows } = temperatureAxisTable({ ...LEMON_DROP_AXIS, mouldMaxC: 230 });
    expect(rows).toContainEqual(['fills moulds', 'open', '122']);
    expect(rows).toContainEqual(['glass point, 43', '51', '35']);
    expect(rows).toContainEqual(['mould limit', '230', '230']);
  });
});
