import type { SourceId } from '../../sources/ids.js';
import type { Catalogue } from '../types.js';

/** The sources a plan rests on, as a reader would ask a library for them; the bibliography says more. */
export const SHORT_CITATIONS = {
  'boiling-fit': 'a fit made here to published measurements',
  'chattopadhyay-2014': 'Chattopadhyay et al. 2014',
  'common-practice': 'common practice',
  definition: 'definition',
  'given-by-the-cook': 'the cook',
  'polyol-guide': 'Koizumi et al., Oku & Nakamura and Makinen, 1983–2016',
  'robinson-stokes-1961': 'Robinson & Stokes 1961',
  'roos-1993': 'Roos 1993',
  'roos-karel-1991': 'Roos & Karel 1991',
  'smithsonian-altimeter': 'Smithsonian Meteorological Tables',
  'stage-chart-medians': 'medians of seven published charts',
  'starzak-peacock-1997': 'Starzak & Peacock 1997',
  'us-standard-atmosphere-1976': 'U.S. Standard Atmosphere 1976',
  'wagner-pruss-1993': 'Wagner & Pruss 1993',
} as const satisfies Catalogue['shortCitations'];

/** Authors and year; the key in the bibliography where the words have none. */
export function shortCitation(id: SourceId): string {
  return Object.hasOwn(SHORT_CITATIONS, id)
    ? SHORT_CITATIONS[id as keyof typeof SHORT_CITATIONS]
    : id;
}
