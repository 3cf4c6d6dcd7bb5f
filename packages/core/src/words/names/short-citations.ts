import type { SourceId } from '../../sources/ids.js';
import type { Catalogue } from '../types.js';

/** The sources a plan rests on, as a reader would ask a library for them; the bibliography says more. */
export const SHORT_CITATIONS = {
  'acid-constant-tables': 'public tables of acid constants',
  'boil-down-spread': 'a spread judged here',
  'boiling-fit': 'a fit made here to published measurements',
  'browning-energy-choice': 'an energy chosen here between printed ones',
  'bubnik-1995': 'Bubnik et al. 1995',
  'chattopadhyay-2014': 'Chattopadhyay et al. 2014',
  'common-practice': 'common practice',
  definition: 'definition',
  'dry-end-guess': 'a guess for the dry end',
  'dry-melt-heat': 'heat of dry sugar worked out here',
  'food-packages': 'Food Package Engineering',
  'given-by-the-cook': 'the cook',
  'graining-time-fit': 'a fit made here to spun sugar',
  'hob-efficiency-2021': 'US Environmental Protection Agency 2021',
  'labuza-hyman-1998': 'Labuza & Hyman 1998',
  'polyol-guide': 'Koizumi et al., Oku & Nakamura and Makinen, 1983–2016',
  'recalled-films': 'recalled films',
  'robinson-stokes-1961': 'Robinson & Stokes 1961',
  'roos-1993': 'Roos 1993',
  'roos-karel-1991': 'Roos & Karel 1991',
  'smithsonian-altimeter': 'Smithsonian Meteorological Tables',
  'sorption-fit': 'a fit made here to printed isotherms',
  'stage-chart-medians': 'medians of seven published charts',
  'starzak-peacock-1997': 'Starzak & Peacock 1997',
  'thin-film-2015': 'a thin-film study of 2015',
  'us-standard-atmosphere-1976': 'U.S. Standard Atmosphere 1976',
  'vukov-1965': 'Vukov 1965',
  'wagner-pruss-1993': 'Wagner & Pruss 1993',
  'zobrist-2011': 'Zobrist et al. 2011',
} as const satisfies Catalogue['shortCitations'];

/** Authors and year; the key in the bibliography where the words have none. */
export function shortCitation(id: SourceId): string {
  return Object.hasOwn(SHORT_CITATIONS, id)
    ? SHORT_CITATIONS[id as keyof typeof SHORT_CITATIONS]
    : id;
}
