import type { Span } from '../../foundation/results/types.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';

/** Where one model hands over to the other, and who may be asked. */
export const SORPTION_CONSTANTS = {
  isothermUpToWaterMassFraction: { value: 0.1, source: 'moisture-band', grade: 'derived' },
  boilingFromWaterMassFraction: { value: 0.15, source: 'moisture-band', grade: 'derived' },
  unknownShare: {
    value: 0.1,
    source: 'assumption',
    grade: 'assumed',
    note: 'of the dissolved solids; up to here what nobody measured counts as sucrose',
  },
  polyolShare: {
    value: 0.1,
    source: 'assumption',
    grade: 'assumed',
    note: 'of the dissolved solids; above, the glass may form a dry skin',
  },
} as const satisfies CitedConstants;

/** What the water on an isotherm may be wrong by, as a fraction. */
export const SORPTION_BAND = {
  measured: { value: 0.15, source: 'moisture-band', grade: 'derived' },
  standIn: { value: 0.3, source: 'assumption', grade: 'assumed' },
} as const satisfies CitedConstants;

/** How far over its glass transition a surface sticks, K. */
export const STICKY_CONSTANTS = {
  startsK: { value: 10, source: 'downton-1982', grade: 'memory' },
  stickyK: { value: 20, source: 'downton-1982', grade: 'memory' },
} as const satisfies CitedConstants;

/** From the freezer to a car in the sun, °C. */
export const SORPTION_DOMAIN_C: Span = [-40, 60];
/** The isotherms are of 25 °C and hold about as far as this. */
export const SORPTION_TESTED_C: Span = [15, 35];
/** From dry air to fog. */
export const RELATIVE_HUMIDITY_DOMAIN: Span = [0, 1];
