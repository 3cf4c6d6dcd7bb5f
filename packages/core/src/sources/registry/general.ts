import type { Source } from '../types.js';

/** Sources that belong to no one topic. */
export const GENERAL_SOURCES = {
  'common-practice': {
    authors: '',
    year: 'n.d.',
    title: 'Common practice of the trade',
    kind: 'practice',
    did: 'Trade lore, known to many kitchens; no publication stands behind it.',
  },
  assumption: {
    authors: '',
    year: 'n.d.',
    title: 'Assumed here',
    kind: 'assumption',
    did: 'A guess, named as one, until something better is found.',
  },
  'given-by-the-cook': {
    authors: '',
    year: 'n.d.',
    title: 'Given by the cook',
    kind: 'assumption',
    did: 'What the label, the certificate or the cook says; taken as it stands.',
  },
  definition: {
    authors: '',
    year: 'n.d.',
    title: 'By definition or by formula',
    kind: 'derivation',
    did: 'Follows from a definition or from a chemical formula.',
  },
} as const satisfies Readonly<Record<string, Source>>;
