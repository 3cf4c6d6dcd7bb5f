import type { Source } from '../types.js';

/** Sources of heat: specific and latent heat, hobs, cooling. */
export const HEAT_SOURCES = {
  'bubnik-1995': {
    authors: 'Bubnik, Z.; Kadlec, P.; Urban, D.; Bruhns, M.',
    year: '1995',
    title:
      'Sugar Technologists Manual: Chemical and Physical Data for Sugar Manufacturers and Users',
    container: 'Bartens, Berlin, 8th ed.',
    kind: 'publication',
    did: 'The law of specific heat was seen as copied into public model code, not in the book.',
  },
  'mohos-2010': {
    authors: 'Mohos, F.A.',
    year: '2010',
    title: 'Confectionery and Chocolate Engineering: Principles and Applications',
    container: 'Wiley-Blackwell, Chichester, Appendix 2',
    kind: 'publication',
    did: 'The line for crystalline sucrose was seen quoted and turned from kcal to kJ.',
  },
  'dry-melt-heat': {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Specific heat of the dry sugar melt, and the way to it from the law of solutions',
    kind: 'derivation',
    did: 'Sugar glass, about 1.4 kJ/(kg K) and recalled, and the step at its glass transition, 0.6, make 2.0 within 0.3. Between 85 and 98 % of solids a straight line joins the two.',
  },
  'heat-above-the-boil': {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Heat of evaporation out of a syrup hotter than steam of its pressure',
    kind: 'derivation',
    did: 'Latent heat of water at its own boil, less for each kelvin what liquid water takes more than steam: 4.2 − 2.0 = 2.2 kJ/(kg K).',
  },
  'hob-efficiency-2021': {
    authors: 'US Environmental Protection Agency',
    year: '2021',
    title: 'ENERGY STAR Emerging Technology Award: Residential Induction Cooking Tops',
    address:
      'https://www.energystar.gov/partner_resources/brand_owner_resources/spec_dev_effort/2021_residential_induction_cooking_tops',
    kind: 'publication',
    did: 'Its 32, 75 to 80 and 85 % were seen. The value used lies between them and an older test of the US Department of Energy, 40, 74 and 84 %, known second-hand.',
  },
  'boil-down-spread': {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'How far the minutes of a boil may be off',
    kind: 'assumption',
    did: 'Burner, pan and open surface differ from kitchen to kitchen; a quarter either way was judged honest until boils are timed.',
  },
} as const satisfies Readonly<Record<string, Source>>;
