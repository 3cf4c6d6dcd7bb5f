import type { Source } from '../types.js';

/** Sources of the boiling point and the water activity of sugar masses. */
export const BOILING_SOURCES = {
  'boiling-fit': {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Margules reference for sucrose with a corresponding-solids rule for mixtures',
    kind: 'derivation',
    did: 'Weighted least squares on the isopiestic data at 25 °C, the correlation of 1997 and, lightly, the isotherm of amorphous sucrose; then rounded.',
  },
  'boiling-spread': {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Spread of the printed boiling points of sucrose about the model',
    kind: 'derivation',
    did: 'Every printed row held here lies inside, but for two that are named.',
  },
  'robinson-stokes-1961': {
    authors: 'Robinson, R.A.; Stokes, R.H.',
    year: '1961',
    title:
      'Activity coefficients in aqueous solutions of sucrose, mannitol and their mixtures at 25°',
    container: 'Journal of Physical Chemistry 65:1954',
    kind: 'publication',
    did: 'Recalled.',
  },
  'starzak-peacock-1997': {
    authors: 'Starzak, M.; Peacock, S.D.',
    year: '1997',
    title:
      'Water activity coefficient in aqueous solutions of sucrose: a comprehensive data analysis',
    container: 'Zuckerindustrie 122:380',
    kind: 'publication',
    did: 'Constants seen in an industry summary.',
  },
  'makower-dye-1956': {
    authors: 'Makower, B.; Dye, W.B.',
    year: '1956',
    title: 'Equilibrium moisture content and crystallization of amorphous sucrose and glucose',
    container: 'Journal of Agricultural and Food Chemistry 4:72',
    kind: 'publication',
    did: 'Title and summary seen; the five points, of low weight in the fit, are recalled.',
  },
  'norrish-1966': {
    authors: 'Norrish, R.S.',
    year: '1966',
    title:
      'An equation for the activity coefficients and equilibrium relative humidities of water in confectionery syrups',
    container: 'Journal of Food Technology 1:25',
    kind: 'publication',
    did: 'Constants of the sugars recalled, also through Chirife, Ferro Fontan and Benmergui 1980.',
  },
  'polyol-review-2010': {
    authors: 'Makinen, K.K.',
    year: '2010',
    title: 'Sugar alcohols, caries incidence, and remineralization of caries lesions',
    container: 'International Journal of Dentistry 2010:981072',
    address: 'https://pmc.ncbi.nlm.nih.gov/articles/PMC2836749/table/tab3',
    kind: 'publication',
    did: 'Seen: Norrish constants of polyols, Table 3.',
  },
  'sloan-labuza-1975': {
    authors: 'Sloan, A.E.; Labuza, T.P.',
    year: '1975',
    title: 'Investigating alternative humectants for use in foods',
    container: 'Food Product Development 9(7):75',
    kind: 'publication',
    did: 'Seen as reproduced in a thesis.',
  },
  'chandrupatla-1997': {
    authors: 'Chandrupatla, T.R.',
    year: '1997',
    title:
      'A new hybrid quadratic/bisection algorithm for finding the zero of a nonlinear function without using derivatives',
    container: 'Advances in Engineering Software 28:145',
    kind: 'publication',
    did: 'Recalled; written anew from the description and tested on published functions.',
  },
} as const satisfies Readonly<Record<string, Source>>;
