import type { Source } from '../types.js';

/** Sources of water, steam and the air above the pan. */
export const WATER_SOURCES = {
  'wagner-pruss-1993': {
    authors: 'Wagner, W.; Pruss, A.',
    year: '1993',
    title: 'International equations for the saturation properties of ordinary water substance',
    container: 'Journal of Physical and Chemical Reference Data 22:783; IAPWS SR1-86(1992)',
    address: 'http://iapws.org/relguide/Supp-sat.html',
    kind: 'publication',
    did: 'Coefficients seen in several public copies that name the release; the equation reproduces its verification values.',
  },
  'steam-table-interpolation': {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Latent heat of water by the Clapeyron equation from the equations of Wagner and Pruss',
    kind: 'derivation',
    did: 'Computed here; agrees with a printed university steam table within 0.4 kJ/kg.',
  },
  'us-standard-atmosphere-1976': {
    authors: 'NOAA; NASA; USAF',
    year: '1976',
    title: 'U.S. Standard Atmosphere, 1976',
    container: 'U.S. Government Printing Office; the same lowest layer as ISO 2533:1975',
    kind: 'publication',
    did: 'Constants of the lowest layer seen on a university page.',
  },
  'smithsonian-altimeter': {
    authors: 'Smithsonian Institution',
    year: 'n.d.',
    title: 'Smithsonian Meteorological Tables: altimeter setting',
    address: 'http://archive.eol.ucar.edu/weather/weather_nsf/prescorr.html',
    kind: 'publication',
    did: 'Formula seen on the page of a research archive and solved here for the pressure at the pan.',
  },
} as const satisfies Readonly<Record<string, Source>>;
