import type { Span } from '../../foundation/results/types.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';

/** WLF: how the viscosity of a glass former falls above its glass transition, by three pairs. */
export const VISCOSITY_CONSTANTS = {
  glassLog10PaS: { value: 12, source: 'glass-points', grade: 'memory' },
  candyC1: { value: 17.84, source: 'viscosity-fit', grade: 'derived' },
  candyC2K: { value: 48.8, source: 'viscosity-fit', grade: 'derived' },
  universalC1: { value: 17.44, source: 'williams-1955', grade: 'secondary' },
  universalC2K: { value: 51.6, source: 'williams-1955', grade: 'secondary' },
  syrupC1: { value: 18.31, source: 'viscosity-fit', grade: 'derived' },
  syrupC2K: { value: 45.84, source: 'viscosity-fit', grade: 'derived' },
} as const satisfies CitedConstants;

const source = 'mathlouthi-genotelle-1995',
  grade = 'memory';

/** Sucrose solutions, log₁₀ of mPa·s. */
export const SYRUP_VISCOSITY_CONSTANTS = {
  perMoleFraction: { value: 22.46, source, grade },
  atZero: { value: -0.114, source, grade },
  referenceC: { value: 30, source, grade },
  singularBelowZeroC: { value: 91, source, grade },
  slope: { value: 1.1, source, grade },
  slopePerPower: { value: 43.1, source, grade },
  power: { value: 1.25, source, grade },
  sucroseMolarMassGPerMol: { value: 342.2965, source: 'definition', grade: 'derived' },
  waterMolarMassGPerMol: { value: 18.01528, source: 'definition', grade: 'derived' },
} as const satisfies CitedConstants;

/** Where one curve hands over to the other, and how far both err. */
export const VISCOSITY_JOIN_CONSTANTS = {
  syrupUpTo: {
    value: 0.74,
    source: 'viscosity-band',
    grade: 'derived',
    note: 'the handbook rows end here; the equation is not to be carried beyond 0.78',
  },
  candyFrom: { value: 0.9, source: 'viscosity-band', grade: 'derived' },
  sucroseSyrupDecades: { value: 0.06, source: 'viscosity-band', grade: 'derived' },
  otherSyrupDecades: { value: 0.5, source: 'viscosity-band', grade: 'derived' },
  candyDecades: { value: 0.6, source: 'viscosity-band', grade: 'derived' },
} as const satisfies CitedConstants;

/** °C. Colder, the equation for syrups runs off; hotter, sugar is burnt. */
export const VISCOSITY_DOMAIN_C: Span = [-20, 200];
/** Temperatures with measured rows, °C. Nobody could be found who measured candy mass at 110 to 150. */
export const VISCOSITY_TESTED_C: Span = [0, 100];
/** Dissolved solids with measured points: handbook rows, and sucrose down to 7 % of water. */
export const VISCOSITY_TESTED_DISSOLVED: Span = [0.5, 0.93];
