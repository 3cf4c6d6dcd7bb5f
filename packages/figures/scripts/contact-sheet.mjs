// Draws both figures in many states on pages to look at: reports/figures/<theme>-<width>.html.
// Run after a build: node scripts/contact-sheet.mjs

import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { mixture, solutionOf } from 'vitrose';
import { BoilingCurve, SugarRule } from '../dist/index.js';

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
    ];
    const cells = drawn.map((figure) => `<div class="cell">${renderToString(figure)}</div>`);
    const page = `<!doctype html><html lang="en" data-theme="${theme}"><meta charset="utf-8">
<title>Figures</title><style>${tokens}${figures}
body{background:var(--ground);color:var(--ink);font-family:var(--font);margin:16px;display:flex;flex-wrap:wrap;gap:28px;align-items:start;line-height:1.5}
.cell{max-width:${width}px}</style>${cells.join('\n')}</html>`;
    writeFileSync(here(`../../../reports/figures/${theme}-${width}.html`), page);
  }
}
