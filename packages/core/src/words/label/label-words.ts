import type { Catalogue } from '../types.js';

/** What each claim is called, between quotes: words of law, not of praise. */
export const CLAIM_NAMES = {
  'sugar-free': 'sugar-free',
  'low-sugars': 'low in sugars',
  'no-added-sugars': 'with no added sugars',
  'reduced-sugars': 'reduced in sugars',
  'calorie-free': 'free of calories',
  'low-energy': 'low in energy',
  'reduced-energy': 'reduced in energy',
} as const satisfies Catalogue['claims'];

/** What a claim looked at. */
export const CLAIM_QUANTITIES = {
  energyKcal: 'energy, kcal',
  sugarsG: 'sugars, g',
  sweeteningG: 'sugars and syrup solids, g',
  energySavedShare: 'energy saved',
  sugarsSavedShare: 'sugars saved',
} as const satisfies Catalogue['claimQuantities'];

/** How much of the sweet a claim looked at. */
export const CLAIM_PORTIONS = {
  '100G': 'in 100 g',
  '50G': 'in 50 g',
  reference: 'in the reference amount',
  serving: 'in a serving',
} as const satisfies Catalogue['claimPortions'];

/** How a test came out, and why a figure could not decide it. */
export const CLAIM_SENTENCES = {
  met: '‘{claim}’: these figures keep the limit ({facts}). That is a test, not a permission.',
  'not-met': '‘{claim}’: no ({facts}).',
  'needs-analysis': '‘{claim}’ needs an analysis ({facts}): {because}.',
} as const satisfies Catalogue['claimSentences'];

export const ANALYSIS_REASONS = {
  'isomalt-may-free-sugar': 'isomalt frees sugar in heat and acid, so the finished {sweet} decides',
  'limit-lies-in-the-band': 'the limit lies within what the factors leave open',
} as const satisfies Catalogue['analysisReasons'];

/** What a label may have to say. */
export const STATEMENT_WORDS = {
  'may-be-laxative':
    '{polyolsMassFraction} of it is added sugar alcohols: above {limitMassFraction} the label says that eating much of it may be laxative.',
  'with-sweeteners': 'Beside the name the label says that it is made with sweeteners.',
  'with-sugars-and-sweeteners':
    'Beside the name the label says that it is made with sugars and sweeteners.',
  'source-of-phenylalanine': 'The label says that aspartame is in it, a source of phenylalanine.',
  'not-a-reduced-calorie-food':
    '‘Sugar-free’ would need beside it that this is not a food reduced in calories.',
  'laxative-by-the-day':
    'Where {limitG} of {subject} may be eaten in a day, which is {reachedByEatingG} of this, the label says that it may be laxative.',
} as const satisfies Catalogue['statements'];

/** Under every label. */
export const LABEL_NOTE =
  'An estimate from the recipe, neither an analysis nor legal advice. Food law differs and changes: check with your authority before you print or claim anything. No figure here is about an illness.';
