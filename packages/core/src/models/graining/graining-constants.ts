import type { Span } from '../../foundation/results/types.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';

/** How long until sugar grains: decades of days, kelvins above the glass transition. */
export const GRAINING_CONSTANTS = {
  logDaysAtGlass: {
    value: 3.04,
    source: 'graining-time-fit',
    grade: 'derived',
    note: 'set so that spun sucrose 13.9 K above its glass transition grains in 2.8 days',
  },
  growthShareOfViscosity: {
    value: 0.7,
    source: 'recalled-growth-and-viscosity',
    grade: 'memory',
    note: '0.6 to 0.9 in print',
  },
  viscosityDecades: { value: 17.44, source: 'williams-1955', grade: 'secondary' },
  viscosityMidK: { value: 51.6, source: 'williams-1955', grade: 'secondary' },
  mostDecades: { value: 5, source: 'assumption', grade: 'assumed' },
  decadesPerKInGlass: { value: 0.1, source: 'assumption', grade: 'assumed' },
  decadesPerDoctorPercent: {
    value: 0.042,
    source: 'thin-film-2015',
    grade: 'derived',
    note: 'mean of 0.031 to 0.054, syrup of DE 63, 14 to 30 % of the solids',
  },
  seededDecades: {
    value: 1,
    source: 'assumption',
    grade: 'assumed',
    note: 'crystals that are there save the wait for the first; no number was found',
  },
  bandDecades: {
    value: 1,
    source: 'graining-time-fit',
    grade: 'derived',
    note: '0.6 for pure sucrose at 25 °C',
  },
} as const satisfies CitedConstants;

/** From the coldest store to where solubility ends, °C. */
export const GRAINING_DOMAIN_C: Span = [-60, 100];

/** How warm a mass can be while it is worked, °C. */
export const FORMING_DOMAIN_C: Span = [-13, 230];
