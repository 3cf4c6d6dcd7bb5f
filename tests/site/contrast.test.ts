import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Block, blocksOf, contrast } from './contrast.js';

const css = readFileSync(new URL('../../site/src/styles/tokens.css', import.meta.url), 'utf8');
const blocks = blocksOf(css);
const light = blockUnder(':root');

function blockUnder(under: string): Block['tokens'] {
  const found = blocks.find((block) => block.under === under);
  if (found === undefined) throw new Error(`tokens.css has no block ${under}.`);
  return found.tokens;
}

const DARK = '@media (prefers-color-scheme: dark) :root:not([data-theme="light"])';
const MORE = '@media (prefers-contrast: more)';
const MORE_DARK = '@media (prefers-contrast: more) and (prefers-color-scheme: dark)';
const PRINT = '@media print :root, :root[data-theme], :root:not([data-theme="light"]), [data-pan]';

/** What a reader sees in each manner: later blocks over earlier ones. */
const MANNERS = {
  light,
  dark: { ...light, ...blockUnder(':root[data-theme="dark"]') },
  'more contrast, light': { ...light, ...blockUnder(`${MORE} :root`) },
  'more contrast, dark': {
    ...light,
    ...blockUnder(`${MORE} :root`),
    ...blockUnder(`${MORE} :root[data-theme="dark"]`),
  },
  'beside the pan, dark': { ...light, ...blockUnder('[data-pan="dark"]') },
  'beside the pan, light': { ...light, ...blockUnder('[data-pan="light"]') },
  print: { ...light, ...blockUnder(PRINT) },
} as const;

const TEXT = 4.5;
const EDGE = 3;
/** More contrast, and the hob: everything that is read. */
const STRONG = 7;
const BESIDE_THE_PAN = 9.8;

/** Pairs that meet on a page, and the least contrast of each. */
const PAIRS = [
  ...(['ground', 'sheet'] as const).flatMap((under) => [
    ...(['ink', 'quiet', 'loaf', 'heat', 'keeps', 'danger'] as const).map(
      (over) => [over, under, TEXT] as const,
    ),
    ['edge', under, EDGE] as const,
  ]),
  ['ink', 'loaf-tint', TEXT],
  ['danger', 'danger-tint', TEXT],
  ['on-heat-fill', 'heat-fill', TEXT],
] as const;

const colour = (tokens: Block['tokens'], name: string): string => tokens[`--${name}`] ?? '';

describe.each(Object.entries(MANNERS))('in %s', (manner, tokens) => {
  it.each(PAIRS)('%s on %s has a contrast of %d or more', (over, under, least) => {
    expect(contrast(colour(tokens, over), colour(tokens, under))).toBeGreaterThanOrEqual(least);
  });

  if (!manner.startsWith('more') && !manner.startsWith('beside')) return;
  const least = manner.startsWith('more') ? STRONG : BESIDE_THE_PAN;
  it(`everything read has ${least} or more`, () => {
    for (const over of ['ink', 'quiet', 'edge', 'loaf', 'heat', 'keeps', 'danger']) {
      // To one decimal, as contrast is printed.
      const found = contrast(colour(tokens, over), colour(tokens, 'ground')).toFixed(1);
      expect({ over, enough: Number(found) >= least }).toEqual({ over, enough: true });
    }
  });
});

describe('the stylesheet', () => {
  /** The table of the design, contrast on ground and on sheet as printed there. */
  it.each([
    ['ink', 14.0, 15.4, 15.5, 13.9],
    ['quiet', 6.3, 7.0, 8.8, 8.0],
    ['edge', 3.7, 4.0, 4.8, 4.3],
    ['loaf', 6.9, 7.5, 9.7, 8.8],
    ['heat', 6.5, 7.1, 9.8, 8.8],
    ['keeps', 6.6, 7.2, 10.2, 9.2],
    ['danger', 6.9, 7.6, 8.9, 8.0],
  ])('has %s as strong as it was chosen', (name, ...chosen) => {
    const found = (['light', 'dark'] as const).flatMap((manner) =>
      (['ground', 'sheet'] as const).map((under) => {
        const tokens = MANNERS[manner];
        return contrast(colour(tokens, name), colour(tokens, under));
      }),
    );
    for (const [at, value] of found.entries()) {
      expect(Math.abs(value - (chosen[at] ?? 0))).toBeLessThanOrEqual(0.1);
    }
  });

  it('says the same dark whether the device or the reader asks for it', () => {
    expect(blockUnder(DARK)).toEqual(blockUnder(':root[data-theme="dark"]'));
    expect(blockUnder(`${MORE_DARK} :root:not([data-theme="light"])`)).toEqual(
      blockUnder(`${MORE} :root[data-theme="dark"]`),
    );
  });

  it('gives every colour of the light scheme a dark one, but for sugar’s own', () => {
    const colours = Object.keys(light).filter((name) => light[name]?.startsWith('#'));
    const dark = blockUnder(':root[data-theme="dark"]');
    expect(colours.filter((name) => !(name in dark))).toEqual([
      '--sugar-clear',
      '--sugar-amber',
      '--sugar-brown',
    ]);
  });

  it('leaves colour to the system where the system forces it', () => {
    const forced =
      blocks.find(({ under }) => under.startsWith('@media (forced-colors'))?.tokens ?? {};
    expect(Object.values(forced).filter((value) => value.startsWith('#'))).toEqual([]);
    expect(Object.keys(forced).length).toBeGreaterThan(10);
  });
});
