// Draws all figures in many states on pages to look at: reports/figures/<theme>-<width>.html.
// Run after a build: node scripts/contact-sheet.mjs

import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { mixture, solutionOf } from 'vitrose';
import { BoilingCurve, CookTime, KeepingBars, SugarRule, TemperatureAxis } from '../dist/index.js';

const here = (path) => new URL(path, import.meta.url);
const read = (path) => readFileSync(here(path), 'utf8');
const font = here('../../../site/node_modules/@fontsource-variable/hanken-grotesk/').pathname;
const tokens = read('../../../site/src/styles/tokens.css')
  .replaceAll('@fontsource-variable/hanken-grotesk/', `file://${font}`)
  .replace('font-display: optional', 'font-display: block');
const figures = read('../figures.css');

const drops = mixture([
  { ingredient: 'sucrose', massG: 232 },
  { ingredient: 'glucose-syrup', massG: 155 },
  { ingredient: 'water', massG: 116 },
]);
const isomalt = solutionOf('isomalt', { drySolidsMassFraction: 0.7 });

const rules = [
  { elevationM: 1_500, stopHereC: 142, windowHereC: [141, 144] },
  { stopHereC: 148 },
  { elevationM: 3_000, stopHereC: 138, mixture: drops },
  { elevationM: 1_500, stopHereC: 143, units: 'f', readingOffsetK: 1 },
  { stopHereC: 171, elevationM: 500 },
  { stopHereC: 113.5, elevationM: 1_500 },
  { mixture: isomalt, stopHereC: 150 },
  { pressurePa: 30_000, stopHereC: 112 },
  { elevationM: -400 },
];
const curves = [
  { markC: 148 },
  { elevationM: 1_500, markC: 142, mixture: drops, markName: 'Lemon drops' },
  { elevationM: 3_000, markC: 112, units: 'f' },
  { mixture: isomalt, markC: 160, across: 'solids' },
  {},
];

const risingTo = (firstMin, stopMin, stopC) => [
  { minutes: 0, temperatureC: 20 },
  ...Array.from({ length: 11 }, (_, at) => ({
    minutes: firstMin + (stopMin - firstMin) * (at / 10),
    temperatureC: 103 + (stopC - 103) * (at / 10) ** 2.5,
  })),
];
const moments = [
  { id: 'first-boil', minutes: 5, temperatureC: 103 },
  { id: 'turn-down', minutes: 14.2, temperatureC: 128 },
  { id: 'stop', minutes: 16, temperatureC: 143 },
  { id: 'rest', minutes: 17, temperatureC: 139 },
  { id: 'colour-and-flavour', minutes: 19.6, temperatureC: 125 },
  { id: 'acid', minutes: 20.6, temperatureC: 121 },
  { id: 'pour', minutes: 21.6, temperatureC: 117 },
];
const cook = { path: risingTo(5, 16, 143), moments, bandMinutes: [12, 20] };
const cooks = [
  cook,
  { ...cook, other: { label: 'with a lid, on full gas', path: risingTo(3.5, 11, 146) } },
  { ...cook, units: 'f', bandMinutes: [11, 31] },
];

const over = (glassC) => [
  { id: 'deposit', lowC: glassC + 78 },
  { id: 'pour-by-hand', lowC: glassC + 62, highC: glassC + 78 },
  { id: 'fold', lowC: glassC + 40, highC: glassC + 50 },
  { id: 'pull', lowC: glassC + 21, highC: glassC + 50 },
  { id: 'stamp', lowC: glassC + 21, highC: glassC + 40 },
  { id: 'stick', lowC: glassC + 19 },
  { id: 'demould', highC: glassC },
  { id: 'wrap', highC: glassC - 10 },
];
const axes = [
  { windows: over(43), stopC: 143, glassC: 43, glassBandC: [35, 51], roomC: 22, storeC: 24 },
  { windows: over(52), stopC: 148, glassC: 52, glassBandC: [44, 60], roomC: 20, units: 'f' },
  { windows: over(30), stopC: 135, glassC: 30, glassBandC: [20, 40], roomC: 27, mouldMaxC: 120 },
];
const airs = [
  {
    relativeHumidity: 0.55,
    equilibrium: 0.25,
    criticalRelativeHumidity: 0.42,
    stickyFrom: 0.47,
    stickyAt: 0.63,
  },
  { relativeHumidity: 0.3, equilibrium: 0.28, criticalRelativeHumidity: 0.45 },
  {},
];

const sizes = {
  320: { rule: [320, 620], curve: [320] },
  1280: { rule: [360, 900], curve: [1_280] },
};

mkdirSync(here('../../../reports/figures/'), { recursive: true });
for (const [width, { rule, curve }] of Object.entries(sizes)) {
  for (const theme of ['light', 'dark']) {
    const drawn = [
      ...rules.map((state, at) =>
        h(SugarRule, {
          id: `rule-${at}`,
          widthPx: rule[0],
          heightPx: rule[1],
          compact: at > 0,
          ...state,
        }),
      ),
      ...curves.map((state, at) =>
        h(BoilingCurve, { id: `curve-${at}`, widthPx: curve[0], compact: at > 0, ...state }),
      ),
      ...cooks.map((state, at) =>
        h(CookTime, { id: `cook-${at}`, widthPx: curve[0], compact: at > 0, ...state }),
      ),
      ...axes.map((state, at) =>
        h(TemperatureAxis, {
          id: `axis-${at}`,
          widthPx: curve[0],
          wide: true,
          compact: at > 0,
          ...state,
        }),
      ),
      ...airs.map((state, at) =>
        h(KeepingBars, { id: `keeping-${at}`, widthPx: curve[0], compact: at > 0, ...state }),
      ),
    ];
    const cells = drawn.map((figure) => `<div class="cell">${renderToString(figure)}</div>`);
    const page = `<!doctype html><html lang="en" data-theme="${theme}"><meta charset="utf-8">
<title>Figures</title><style>${tokens}${figures}
body{background:var(--ground);color:var(--ink);font-family:var(--font);margin:16px;display:flex;flex-wrap:wrap;gap:28px;align-items:start;line-height:1.5}
.cell{max-width:${width}px}</style>${cells.join('\n')}</html>`;
    writeFileSync(here(`../../../reports/figures/${theme}-${width}.html`), page);
  }
}
