import type { Source } from '../types.js';

/** Sources of the stages topic. */
export const STAGE_SOURCES = {
  'ahea-1993': {
    authors: 'American Home Economics Association',
    year: '1993',
    title: 'Handbook of Food Preparation',
    container: '9th edition, temperatures and tests for syrups and candies',
    kind: 'publication',
    did: 'Recalled; identical figures seen without a name, and medians of seven charts agree.',
  },
  'mcgee-2004': {
    authors: 'McGee, H.',
    year: '2004',
    title: 'On Food and Cooking',
    container: '2nd edition, sugar syrups',
    kind: 'publication',
    did: 'Stage chart, dry sugar and the altitude line read.',
  },
  'stage-chart-medians': {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Medians of seven published stage charts',
    kind: 'derivation',
    did: 'Set to the values of a home-economics handbook; the charts share one ancestry.',
  },
  'csu-candy-altitude': {
    authors: 'Colorado State University Extension',
    year: 'n.d.',
    title: 'Candy making at high elevation',
    address:
      'https://foodsmartcolorado.colostate.edu/recipes/cooking-and-baking/candy-making-at-high-elevation',
    kind: 'publication',
    did: 'Page read: 1 °F per 500 ft off the finish temperature.',
  },
  'usu-candy-altitude-2006': {
    authors: 'Williams, P.',
    year: '2006',
    title: 'Adjusting candy temperatures for altitude',
    container: 'Utah State University Extension, 12 September 2006',
    address: 'http://extension.usu.edu/htm/faq/faq_q=453',
    kind: 'publication',
    did: 'Answer read; the title is a description of it.',
  },
} as const satisfies Readonly<Record<string, Source>>;
