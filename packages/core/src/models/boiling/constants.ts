import type { Pedigree } from '../../foundation/numeric/pedigree.js';
import type { Span } from '../../foundation/results/types.js';

/** Constants of the boiling model, fitted together; the two molar masses are by formula. */
export const BOILING_CONSTANTS = {
  source: 'boiling-fit',
  grade: 'derived',
  a0: -6.924,
  a1: 7.364,
  a2: -0.738,
  b: -4.32,
  kappa: 0.62,
  referenceTemperatureK: 298.15,
  waterMolarMassGPerMol: 18.01528,
  sucroseMolarMassGPerMol: 342.2965,
} as const satisfies Pedigree & Readonly<Record<string, unknown>>;

/** Dissolved solids in solids and water: a trace of water is needed to boil. */
export const DISSOLVED_DOMAIN: Span = [0, 0.99999];
/** Above this the fit was held against nothing. */
export const DISSOLVED_TESTED: Span = [0, 0.995];
/** Temperatures of a boil the model was held against, °C. */
export const BOIL_TESTED_C: Span = [20, 200];
/** Pressures at the pan the model was held against, Pa. */
export const BOIL_TESTED_PA: Span = [2_000, 120_000];
/** Above this, °C, sucrose decomposes as it boils: the mass is no longer sucrose and water. */
export const SUCROSE_DECOMPOSES_ABOVE_C = 165;
