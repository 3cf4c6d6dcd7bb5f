// biome-ignore-all format: one sugar a line, to be held against its source

import type { Span } from '../../foundation/results/types.js';
import type { CitedConstants, CitedRange } from '../../foundation/validity/constants.js';

/** How fast heat counts; no published constant turns it into a colour. */
export const THERMAL_LOAD_CONSTANTS = {
  referenceC: { value: 150, source: 'definition', grade: 'derived' },
  gasConstantJPerMolK: { value: 8.314462618, source: 'definition', grade: 'derived' },
} as const satisfies CitedConstants;

/** Activation energy of browning, kJ/mol. */
export const BROWNING_ENERGY_KJ_PER_MOL = {
  sugar: { value: 120, low: 105, high: 140, source: 'browning-energy-choice', grade: 'derived', note: 'sucrose 104.7 to breakdown of glucose 140.2' },
  reducing: { value: 140, low: 110, high: 180, source: 'browning-energy-choice', grade: 'derived', note: 'glucose with amino acids 110 to 180' },
} as const satisfies Readonly<Record<string, CitedRange>>;

/**
 * Where textbooks let caramel begin, °C. Rules of thumb: browning is a rate without a threshold, and
 * time counts. Low and high are the two textbooks apart.
 */
export const BROWNING_ONSETS = {
  fructose: { value: 110, low: 105, high: 110, source: 'common-practice', grade: 'practice' },
  glucose: { value: 160, low: 150, high: 160, source: 'common-practice', grade: 'practice' },
  sucrose: { value: 160, low: 160, high: 170, source: 'common-practice', grade: 'practice' },
  maltose: { value: 180, source: 'common-practice', grade: 'practice' },
} as const satisfies Readonly<Record<string, CitedRange>>;

/** Browning was measured between these, in one study or another. */
export const THERMAL_LOAD_TESTED_C: Span = [60, 160];
/** From ice to the hottest caramel. */
export const THERMAL_LOAD_DOMAIN_C: Span = [0, 220];
/** A day and a night on the hob. */
export const THERMAL_LOAD_DOMAIN_S: Span = [0, 86_400];
