import type { Span } from '../../foundation/results/types.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';

/** log10 k = 16.91 + log10(W) − 5670/T − pH, k in 1/min, W in g of water per mL, T in kelvin. */
export const INVERSION_CONSTANTS = {
  log10PerMin: { value: 16.91, source: 'vukov-1965', grade: 'secondary' },
  slopeK: { value: 5670, source: 'vukov-1965', grade: 'secondary' },
  waterPerSucrose: {
    value: 0.05263,
    source: 'definition',
    grade: 'derived',
    note: 'one water to one sucrose, by mass',
  },
} as const satisfies CitedConstants;

/** How the law is slowed where hardly any water is left: a guess, named as one. */
export const DRY_END_CONSTANTS = {
  fromMassFraction: { value: 0.85, source: 'dry-end-guess', grade: 'assumed' },
  tenfoldPerMassFraction: { value: 0.13, source: 'dry-end-guess', grade: 'assumed' },
  middleOverLow: { value: 3, source: 'dry-end-guess', grade: 'assumed' },
} as const satisfies CitedConstants;

/** Rates were measured between these. */
export const INVERSION_TESTED_C: Span = [23, 105];
/** Above this nothing was measured; the law is slowed by a guess. */
export const INVERSION_TESTED_DISSOLVED: Span = [0, 0.85];
/** From ice to the hottest melt. */
export const INVERSION_DOMAIN_C: Span = [0, 200];
/** The pH the rate law can be asked with. */
export const INVERSION_DOMAIN_PH: Span = [-2, 14];
/** No solution holds more water than water does. */
export const INVERSION_DOMAIN_WATER_G_PER_ML: Span = [0, 1];
/** A day and a night on the hob. */
export const INVERSION_DOMAIN_S: Span = [0, 86_400];
/** Equal steps over the whole path, or over what is left of it once late acid has joined. */
export const INVERSION_STEPS = 200;
/** Equal steps over the time before late acid joins, when little happens. */
export const STEPS_BEFORE_LATE_ACID = 100;
