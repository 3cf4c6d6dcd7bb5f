import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import type { JSX } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { BoilingCurve } from '../boiling-curve/boiling-curve.js';
import { describeBoilingCurve } from '../boiling-curve/describe.js';
import { CookTime } from '../cook-time/cook-time.js';
import { anyCook, LEMON_DROPS } from '../cook-time/cooks.fixture.js';
import { describeCookTime } from '../cook-time/describe.js';
import { describeKeepingBars } from '../keeping-bars/describe.js';
import { KeepingBars } from '../keeping-bars/keeping-bars.js';
import { overlap } from '../labels/place-labels.js';
import { describeSugarRule } from '../sugar-rule/describe.js';
import { ruleFaviconSvg } from '../sugar-rule/favicon.js';
import { SugarRule } from '../sugar-rule/sugar-rule.js';
import { anyMass, anyWindows, LEMON_DROP_AXIS } from '../temperature-axis/axes.fixture.js';
import { describeTemperatureAxis } from '../temperature-axis/describe.js';
import { TemperatureAxis } from '../temperature-axis/temperature-axis.js';
import { drawnTexts } from './drawn-text.fixture.js';
import { anyCurve, anyKeeping, anyRule } from './states.fixture.js';

const drawing = (figure: JSX.Element): string =>
  renderToString(figure).replace(/^.*?(<svg.*<\/svg>).*$/s, '$1');

type Drawn = { readonly name: string; readonly least?: number; readonly any: fc.Arbitrary<string> };

const drawings: readonly Drawn[] = [
  {
    name: 'a rule of 320 px',
    any: anyRule({ widthPx: 320, heightPx: 620 }).map((state) => drawing(SugarRule(state))),
  },
  {
    name: 'a rule of a page of 1 280 px',
    any: anyRule({ widthPx: 1_280, heightPx: 900 }).map((state) => drawing(SugarRule(state))),
  },
  { name: 'a curve of 320 px', any: anyCurve(320).map((state) => drawing(BoilingCurve(state))) },
  {
    name: 'a curve of 1 280 px',
    any: anyCurve(1_280).map((state) => drawing(BoilingCurve(state))),
  },
  ...[320, 1_280].flatMap((widthPx) => [
    {
      name: `a cook of ${widthPx} px`,
      any: anyCook(widthPx).map((state) => drawing(CookTime(state))),
    },
    {
      name: `a standing axis of ${widthPx} px`,
      any: anyMass({ widthPx, wide: false }).map((state) => drawing(TemperatureAxis(state))),
    },
    {
      name: `an axis of odd windows of ${widthPx} px`,
      any: anyWindows({ widthPx, wide: widthPx > 320 }).map((state) =>
        drawing(TemperatureAxis(state)),
      ),
    },
    {
      name: `keeping bars of ${widthPx} px`,
      // Six numbers and the unit of the axis, where nothing is known.
      least: 7,
      any: anyKeeping(widthPx).map((state) => drawing(KeepingBars(state))),
    },
  ]),
  {
    name: 'a lying axis of 1 280 px',
    any: anyMass({ widthPx: 1_280, wide: true }).map((state) => drawing(TemperatureAxis(state))),
  },
];

describe.each(drawings)('$name', ({ any, least = 9 }) => {
  it('never writes over its own words, nor out of its frame', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(any, (svg) => {
        const [, width = 0, height = 0] = (/viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? []).map(
          Number,
        );
        const texts = drawnTexts(svg);
        expect(texts.length).toBeGreaterThanOrEqual(least);
        texts.forEach(({ text, box, sizePx }, at) => {
          expect(sizePx, text).toBeGreaterThanOrEqual(12);
          expect(box.left, text).toBeGreaterThanOrEqual(0);
          expect(box.right, text).toBeLessThanOrEqual(width);
          expect(box.top, text).toBeGreaterThanOrEqual(0);
          expect(box.bottom, text).toBeLessThanOrEqual(height);
          for (const other of texts.slice(at + 1)) {
            expect(overlap(box, other.box), `“${text}” over “${other.text}”`).toBe(false);
          }
        });
      }),
      { numRuns: 200 },
    );
  });

  it('says what it is and shows, under ids of its own, without a style attribute', () => {
    fc.assert(
      fc.property(any, (svg) => {
        const ids = [...svg.matchAll(/ id="([^"]*)"/g)].map(([, id = '']) => id);
        expect(new Set(ids).size).toBe(ids.length);
        for (const id of ids) expect(id).toMatch(/^(rule|curve|cook|axis|keeping)-/);
        for (const [, id = ''] of svg.matchAll(/(?:labelledby="|describedby="|url\(#)([^")]*)/g)) {
          expect(ids).toContain(id);
        }
        expect(svg).toMatch(/^<svg[^>]* role="img"/);
        expect(svg).toMatch(/<title id="[^"]+">[^<]+\?<\/title><desc id="[^"]+">[^<]{60,}<\/desc>/);
        expect(svg).not.toMatch(/\sstyle=/);
        expect(svg).not.toMatch(/NaN|undefined|Infinity/);
      }),
      { numRuns: 30 },
    );
  });
});

describe('a figure', () => {
  it('shows its question, what it leaves out, its sources and its numbers', () => {
    for (const html of [
      renderToString(SugarRule({ id: 'a' })),
      renderToString(BoilingCurve({ id: 'a' })),
      renderToString(CookTime(LEMON_DROPS)),
      renderToString(TemperatureAxis(LEMON_DROP_AXIS)),
      renderToString(KeepingBars({ id: 'a', equilibrium: 0.25 })),
    ]) {
      expect(html).toMatch(/^<figure[^>]* aria-labelledby="a-question"/);
      expect(html).toMatch(/<figcaption id="a-question"[^>]*>[^<]+\?<\/figcaption>/);
      expect(html).toContain('Left out: ');
      expect(html).toMatch(/model, an estimate/);
      expect(html).toContain('<details');
      expect(html).toMatch(/<th scope="col">/);
    }
  });

  it('is a drawing and nothing else where the page has no room', () => {
    const html = renderToString(SugarRule({ id: 'a', compact: true }));
    expect(html).toMatch(/^<div class="vf vf-rule"><svg[^>]*>.*<\/svg><\/div>$/s);
  });

  it('speaks the sentence that is drawn into it', () => {
    const rule = { id: 'a', elevationM: 1_500, stopHereC: 142 };
    expect(renderToString(SugarRule(rule))).toContain(describeSugarRule(rule));
    const curve = { id: 'a', markC: 148 };
    expect(renderToString(BoilingCurve(curve))).toContain(describeBoilingCurve(curve));
    expect(renderToString(CookTime(LEMON_DROPS))).toContain(describeCookTime(LEMON_DROPS));
    const axis = LEMON_DROP_AXIS;
    expect(renderToString(TemperatureAxis(axis))).toContain(describeTemperatureAxis(axis));
    const air = { id: 'a', equilibrium: 0.25, relativeHumidity: 0.55 };
    expect(renderToString(KeepingBars(air))).toContain(describeKeepingBars(air));
  });

  it('uses no class the style sheet does not know', () => {
    const css = readFileSync(new URL('../../figures.css', import.meta.url), 'utf8');
    const html = [
      SugarRule({ id: 'a', elevationM: 1_500, stopHereC: 142, windowHereC: [141, 144] }),
      SugarRule({ id: 'b', stopHereC: 119 }),
      BoilingCurve({ id: 'c', markC: 148, widthPx: 1_280 }),
      CookTime({ ...LEMON_DROPS, other: { label: 'with a lid', path: LEMON_DROPS.path } }),
      TemperatureAxis(LEMON_DROP_AXIS),
      TemperatureAxis({ ...LEMON_DROP_AXIS, wide: true, widthPx: 1_280 }),
      KeepingBars({ id: 'd', equilibrium: 0.25, stickyFrom: 0.5, relativeHumidity: 0.55 }),
    ].map((figure) => renderToString(figure));
    const used = [...html.join('').matchAll(/class="([^"]*)"/g)].flatMap(([, names = '']) =>
      names.split(' '),
    );
    // For whoever wants to style or find a part: they need no rule of ours.
    const structural = [
      ...['rule', 'texture', 'degrees', 'stop', 'flag', 'heads', 'water', 'axes'],
      ...['axis', 'keeping'],
    ].map((name) => `vf-${name}`);
    for (const name of new Set(used)) {
      if (!structural.includes(name)) expect(css, name).toMatch(new RegExp(`\\.${name}\\b`));
    }
  });
});

describe('the favicon', () => {
  it('is two offset strips and one line, for light and dark', () => {
    const svg = ruleFaviconSvg();
    expect(svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
    expect(svg).toContain('prefers-color-scheme:dark');
    expect(svg).not.toMatch(/\sstyle=/);
  });
});
