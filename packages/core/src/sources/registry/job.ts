import type { Source } from '../types.js';

/** Sources of the plan's own rules. */
export const JOB_SOURCES = {
  'candy-viscosity-landmarks': {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Temperatures to pour, pull and set a sugar glass, from two WLF viscosity curves',
    kind: 'derivation',
    did: 'Computed: where the viscosity passes 10, 100 and 10^7 Pa s above the glass point, halfway between two curves.',
  },
  'polyol-guide': {
    authors: 'Koizumi, N. et al.; Oku, T. & Nakamura, S.; Makinen, K. K.',
    year: '1983–2016',
    title: 'Single doses of sugar alcohols without effect in adults',
    container: 'Chemosphere 12:45–53 (1983); J. Jpn Food Chem. Soc. 5:218–225 (1998); reviews',
    kind: 'publication',
    did: 'Seen quoted; the lowest dose without effect is used.',
  },
  'vavrinecz-1962': {
    authors: 'Vavrinecz, G.',
    year: '1962',
    title: 'Solubility of pure sucrose in water',
    container: 'Zeitschrift für die Zuckerindustrie',
    kind: 'publication',
    did: 'The polynomial was seen in public copies that agree; the paper itself was not read.',
  },
} as const satisfies Readonly<Record<string, Source>>;
