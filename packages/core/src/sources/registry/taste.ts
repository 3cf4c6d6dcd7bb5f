import type { Source } from '../types.js';

/** Sources of taste: concentration, temperature, boosters. */
export const TASTE_SOURCES = {
  'dubois-1991': {
    authors: 'DuBois, G. E., Walters, D. E., Schiffman, S. S. and others',
    year: '1991',
    title: 'Concentration–response relationships of sweeteners: a systematic study',
    container: 'ACS Symposium Series 450:261–276',
    kind: 'publication',
    did: 'The coefficients are recalled and were not found again; the form of the curve was read in the abstract of a later paper.',
  },
  'sucralose-response-fit': {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Sweetness of sucralose against dose',
    kind: 'derivation',
    did: 'Fitted to recalled potencies of 750, 600 and 500 at 2, 5 and 9 % of sugar; the maximum of 1991 is recalled as 14.7.',
  },
  'dose-spread': {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'How far a single dose of an intense sweetener can be trusted',
    kind: 'derivation',
    did: 'The curve of aspartame beside two printed potencies, 5 % over and 18 % under; saccharin twice as badly known.',
  },
  'glucose-strength-fit': {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Sweetness of glucose against strength',
    kind: 'derivation',
    did: 'Fitted to three pairs of equally sweet solutions on an unsigned trade page; a panel study found straight lines instead.',
  },
  'eu-sweetener-caps': {
    authors: 'European Union',
    year: 'n.d.',
    title: 'Highest amounts of sweeteners in confectionery without added sugar',
    kind: 'publication',
    did: 'Recalled, not looked up; local rules decide.',
  },
} as const satisfies Readonly<Record<string, Source>>;
