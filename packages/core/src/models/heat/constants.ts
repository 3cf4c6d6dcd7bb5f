import type { Pedigree } from '../../foundation/numeric/pedigree.js';
import type { Span } from '../../foundation/results/types.js';
import type { CitedConstants, CitedRange } from '../../foundation/validity/constants.js';

type PedigreedNumbers = Pedigree & Readonly<Record<string, unknown>>;

/** The law of the specific heat of sugar solutions. */
export const SPECIFIC_HEAT_CONSTANTS = {
  source: 'bubnik-1995',
  grade: 'secondary',
  waterKJPerKgK: 4.1868,
  perBrix: -0.0297,
  perBrixPurity: 4.6e-5,
  perBrixC: 7.5e-5,
} as const satisfies PedigreedNumbers;

/**
 * The dry melt the law is led over to, its heat within 0.3. It also serves while a sweet cools,
 * although glass takes about 1.4. The spreads are shares of a specific heat.
 */
export const DRY_MELT_CONSTANTS = {
  source: 'dry-melt-heat',
  grade: 'derived',
  lawEndsAtMassFraction: 0.85,
  meltFromMassFraction: 0.98,
  meltKJPerKgK: 2,
  spreadTo90Brix: 0.1,
  spreadAbove90Brix: 0.15,
} as const satisfies PedigreedNumbers;

/** Sugar before it dissolves. */
export const SUGAR_CRYSTAL_CONSTANTS = {
  source: 'mohos-2010',
  grade: 'secondary',
  at0CKJPerKgK: 1.1355,
  perC: 0.004312,
} as const satisfies PedigreedNumbers;

/** Steam out of a syrup leaves with this much less for each kelvin above the boil of water. */
export const STEAM_CONSTANTS = {
  lessPerKAboveBoilKJPerKgK: { value: 2.2, source: 'heat-above-the-boil', grade: 'derived' },
} as const satisfies CitedConstants;

/** Heat crystals take as they dissolve, and their molar masses by formula. */
export const DISSOLUTION_CONSTANTS = {
  source: 'belitz-2009',
  grade: 'primary',
  locator: 'p. 879',
  sucroseKJPerMol: 6.21,
  xylitolKJPerMol: 23.27,
  sucroseGPerMol: 342.2965,
  xylitolGPerMol: 152.1458,
} as const satisfies PedigreedNumbers;

/** Share of a burner's power that reaches a fitting pan. */
export const HOB_EFFICIENCY = {
  gas: { value: 0.36, low: 0.32, high: 0.4, source: 'hob-efficiency-2021', grade: 'secondary' },
  resistance: {
    value: 0.75,
    low: 0.74,
    high: 0.8,
    source: 'hob-efficiency-2021',
    grade: 'secondary',
  },
  induction: {
    value: 0.85,
    low: 0.84,
    high: 0.85,
    source: 'hob-efficiency-2021',
    grade: 'secondary',
  },
} as const satisfies Readonly<Record<string, CitedRange>>;

/** How far a kettle test may be off: where the boil begins is judged by eye. */
export const KETTLE_TEST_SPREAD = { value: 0.1, source: 'assumption', grade: 'assumed' } as const;

/**
 * The pan: what its steel takes for a kelvin; what its open surface and wetted side lose in still
 * air, radiation counted; how much hotter its base may be than a fast boil, from low to usual.
 */
export const PAN_CONSTANTS = {
  source: 'common-practice',
  grade: 'practice',
  steelKJPerKgK: 0.5,
  surfaceWPerM2K: 15,
  baseHotterLowK: 10,
  baseHotterK: 30,
} as const satisfies PedigreedNumbers;

/** The kitchen around a hot pan, and how thick a charge is, which says how deep it stands. */
export const PAN_ASSUMPTIONS = {
  source: 'assumption',
  grade: 'assumed',
  kitchenC: 20,
  chargeGPerMl: 1.35,
} as const satisfies PedigreedNumbers;

/** How far the minutes of a boil may be off, as a share of them. */
export const BOIL_DOWN_SPREAD = {
  value: 0.25,
  source: 'boil-down-spread',
  grade: 'assumed',
} as const;

/** How far the minutes of cooling may be off: this many times more or less. */
export const COOLING_SPREAD_TIMES = {
  value: 1.5,
  source: 'common-practice',
  grade: 'practice',
} as const;

/** Heat passed on for each square metre and kelvin, W. */
export const COOLING_W_PER_M2K = {
  'still-air': { value: 10, low: 8, high: 12, source: 'common-practice', grade: 'practice' },
  fan: { value: 25, low: 20, high: 40, source: 'common-practice', grade: 'practice' },
  slab: { value: 100, low: 50, high: 200, source: 'common-practice', grade: 'practice' },
} as const satisfies Readonly<Record<string, CitedRange>>;

/** The piece itself; its heat conduction lies between 0.25 and 0.35. */
export const PIECE_CONSTANTS = {
  source: 'common-practice',
  grade: 'practice',
  conductivityWPerMK: 0.3,
  glassGPerMl: 1.5,
} as const satisfies PedigreedNumbers;

/** The room sweets cool in, where none is given. */
export const COOLING_AIR_C = { value: 22, source: 'assumption', grade: 'assumed' } as const;

/** Up to here a piece has about one temperature; beyond, its middle lags. */
export const COOLING_TESTED_BIOT: Span = [0, 0.2];
/** Temperatures of a sugar mass in hand, °C. */
export const HEAT_DOMAIN_C: Span = [0, 250];
/** From a vacuum pan to a pressure cooker, Pa: steam stays within its table. */
export const BOIL_DOWN_DOMAIN_PA: Span = [1_000, 1_000_000];
/** A hob of nothing up to a factory kettle, W. */
export const HOB_DOMAIN_W: Span = [0, 1e6];
