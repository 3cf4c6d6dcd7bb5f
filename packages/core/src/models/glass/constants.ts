import type { Span } from '../../foundation/results/types.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';

/** Dry syrup solids as one component, and what water does to each. */
export const GLASS_CONSTANTS = {
  waterGlassC: { value: -135, source: 'johari-1987', grade: 'secondary' },
  sugarKPerC: { value: 0.0293, source: 'roos-1993', grade: 'memory' },
  sugarKAt0C: { value: 3.61, source: 'roos-1993', grade: 'memory' },
  syrupK: { value: 6, source: 'roos-karel-1991', grade: 'memory' },
  syrupGlassAtZeroC: { value: 274.406, source: 'syrup-glass-fit', grade: 'derived' },
  syrupGlassFall: { value: 50.2565, source: 'syrup-glass-fit', grade: 'derived' },
  syrupGlassPower: { value: 0.342914, source: 'syrup-glass-fit', grade: 'derived' },
} as const satisfies CitedConstants;

/** How far the model errs: see `glassBandK`. */
export const GLASS_BAND_CONSTANTS = {
  oneSugarK: { value: 4, source: 'glass-band', grade: 'derived' },
  mixingK: { value: 1, source: 'glass-band', grade: 'derived' },
  waterInMixtureK: { value: 3, source: 'glass-band', grade: 'derived' },
  syrupK: { value: 10, source: 'glass-band', grade: 'derived', note: 'DE does not fix the chains' },
  fullyMixed: {
    value: 0.18,
    source: 'glass-band',
    grade: 'derived',
    note: 'one part in ten of a second substance counts as a mixture',
  },
  fullyWetMassFraction: { value: 0.01, source: 'glass-band', grade: 'derived' },
} as const satisfies CitedConstants;

/** Starch syrups with a published dry glass transition lie between these. */
export const GLASS_TESTED_DEXTROSE_EQUIVALENT: Span = [5, 100];
/** Water in the mass; the measured points end at 7.6 per cent. */
export const GLASS_TESTED_WATER_MASS_FRACTION: Span = [0, 0.1];
