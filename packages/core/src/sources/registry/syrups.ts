import type { Source } from '../types.js';

/** Sources of starch syrups. */
export const SYRUP_SOURCES = {
  'belitz-2009': {
    authors: 'Belitz, H.-D.; Grosch, W.; Schieberle, P.',
    year: '2009',
    title: 'Food Chemistry',
    container: '4th ed., Springer',
    kind: 'publication',
    did: 'Read: Table 19.7.',
  },
  'pancoast-junk-1980': {
    authors: 'Pancoast, H.M.; Junk, W.R.',
    year: '1980',
    title: 'Handbook of Sugars',
    container: '2nd ed., AVI',
    kind: 'publication',
    did: 'Trade table of syrup profiles and factors of the reducing power, recalled.',
  },
  'baines-seal-2012': {
    authors: 'Baines, D.; Seal, R. (eds)',
    year: '2012',
    title: 'Natural Food Additives, Ingredients and Flavourings',
    container: 'Woodhead',
    kind: 'publication',
    did: 'Seen in an excerpt: the profile of a 42 DE syrup, Table 13.1.',
  },
  'vink-hard-candy': {
    authors: 'Vink, W.',
    year: 'n.d.',
    title: 'The Technology of Hard Candy',
    container: 'Resident Course in Confectionery Technology, slides',
    kind: 'publication',
    did: 'Seen; the syrup was worked out of the composition of a mixture.',
  },
  'codex-212-1999': {
    authors: 'Codex Alimentarius Commission',
    year: '1999',
    title: 'Standard for Sugars, CXS 212-1999',
    kind: 'publication',
    did: 'Seen.',
  },
  'eu-2001-111': {
    authors: 'Council of the European Union',
    year: '2001',
    title: 'Directive 2001/111/EC relating to certain sugars intended for human consumption',
    container: 'Annex, part A',
    kind: 'publication',
    did: 'Figures of glucose syrups and of invert sugar solution seen in a national food code; that of invert sugar syrup recalled.',
  },
  'us-21-cfr-184-1444': {
    authors: 'United States Food and Drug Administration',
    year: 'n.d.',
    title: 'Code of Federal Regulations, title 21, section 184.1444: maltodextrin',
    kind: 'publication',
    did: 'Seen.',
  },
  'syrup-profile-fit': {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Dextrose equivalent and molar mass from a saccharide profile',
    kind: 'derivation',
    did: 'Fitted here to eight published profiles; within 1.3 DE of each.',
  },
} as const satisfies Readonly<Record<string, Source>>;
