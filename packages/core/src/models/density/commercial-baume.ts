import { interpolate, type Point } from '../../foundation/numeric/interpolate.js';
import type { Pedigree } from '../../foundation/numeric/pedigree.js';
import { around } from '../../foundation/results/band.js';
import type { Checked, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';
import { baumeAtGravity, gravityAtBaume } from './baume.js';
import {
  type GlucoseSyrup,
  requireGlucoseSyrup,
  SYRUP_DENSITY_CONSTANTS,
  syrupKgPerM3,
  untestedSyrup,
} from './glucose-syrup-density.js';
import { waterKgPerM3 } from './water-density.js';

const source = 'corn-refiners-data';
const grade = 'memory';

/** The scale of the starch trade: read hot, and one degree added by agreement. */
export const COMMERCIAL_BAUME_CONSTANTS = {
  readAtC: { value: 60, source, grade, note: '140 °F' },
  waterAtC: { value: 15.56, source, grade, note: '60 °F' },
  added: { value: 1, source, grade },
  solidsPlusMinus: { value: 0.003, source, grade, note: 'of the table of solids' },
} as const satisfies CitedConstants;

type Curve = Pedigree & { readonly points: readonly [Point, Point, ...Point[]] };

/** Per cent of dry solids at 43 commercial degrees, by dextrose equivalent. */
export const COMMERCIAL_SOLIDS_AT_43 = {
  source,
  grade,
  points: [
    [36, 79.9],
    [42, 80.3],
    [52, 81.4],
    [63, 82],
  ],
} as const satisfies Curve;

/** Points of dry solids to add at other degrees; rows of 42, and of 63 above 43. */
export const COMMERCIAL_SOLIDS_BESIDE_43 = {
  source,
  grade,
  points: [
    [42, -2.3],
    [43, 0],
    [44, 1.9],
  ],
} as const satisfies Curve;

/** Commercial degrees of the scale, from water to dry solids. */
export const COMMERCIAL_BAUME_DOMAIN: Span = [0, 60];
/** Commercial degrees with a row of the table on both sides. */
export const COMMERCIAL_SOLIDS_DOMAIN_BAUME: Span = [42, 44];
/** Syrups with a row of the table on both sides. */
export const COMMERCIAL_SOLIDS_DOMAIN_DEXTROSE_EQUIVALENT: Span = [36, 63];

/**
 * Specific gravity behind the commercial Baumé on a drum of glucose syrup.
 *
 * @equation SG = 145/(145 − (Bé − 1))
 * @param commercialBaume - As labelled, 0 to 60.
 * @returns `specificGravity`, syrup at 60 °C beside water at 15.56 °C.
 * @throws {@link ModelRangeError} outside the scale.
 * @example
 * specificGravityFromCommercialBaume(43).specificGravity // 1.4078
 * @source corn-refiners-data
 */
export function specificGravityFromCommercialBaume(commercialBaume: number): {
  readonly specificGravity: number;
} {
  requireWithin('commercialBaume', commercialBaume, COMMERCIAL_BAUME_DOMAIN);
  const { added } = COMMERCIAL_BAUME_CONSTANTS;
  return { specificGravity: gravityAtBaume(commercialBaume - added.value) };
}

/**
 * What the trade would write on a drum of this glucose syrup. An estimate.
 *
 * From the density at 60 °C, which is good to half a per cent: that is half a degree.
 *
 * @equation Bé = 145 − 145/SG + 1, SG = ρ(60 °C)/ρ_water(15.56 °C)
 * @param syrup - `dextroseEquivalent`, 1 to 100; `drySolidsMassFraction`, 0 to 1.
 * @returns `commercialBaume` and `band`, degrees, with a warning outside a dextrose equivalent of 20
 *   to 70 and over 85 parts of solids in a hundred.
 * @throws {@link ModelRangeError} outside the domains.
 * @example
 * glucoseSyrupCommercialBaume({
 *   dextroseEquivalent: 42,
 *   drySolidsMassFraction: 0.803,
 * }).commercialBaume // 42.91
 * @source corn-refiners-data, syrup-density-fit
 */
export function glucoseSyrupCommercialBaume(
  syrup: GlucoseSyrup,
): Checked<{ commercialBaume: number; band: Span }> {
  requireGlucoseSyrup(syrup);
  const { readAtC, waterAtC, added } = COMMERCIAL_BAUME_CONSTANTS;
  const gravity = syrupKgPerM3(syrup, readAtC.value) / waterKgPerM3(waterAtC.value);
  const share = SYRUP_DENSITY_CONSTANTS.plusMinusShare.value;
  const degrees = (of: number): number => baumeAtGravity(of) + added.value;
  return {
    commercialBaume: degrees(gravity),
    band: [degrees(gravity * (1 - share)), degrees(gravity * (1 + share))],
    warnings: untestedSyrup(syrup),
  };
}

/**
 * Dry solids of a glucose syrup from the commercial Baumé and the dextrose equivalent on its label.
 *
 * Read from a table of the trade, recalled; good to 0.3 points. A certificate knows better.
 *
 * @equation s = s₄₃(DE) + Δ(Bé), in straight lines between the rows
 * @param label - `commercialBaume`, 42 to 44; `dextroseEquivalent`, 36 to 63.
 * @returns `drySolidsMassFraction` and `band`, 0 to 1.
 * @throws {@link ModelRangeError} beyond the rows of the table.
 * @example
 * drySolidsFromCommercialBaume({
 *   commercialBaume: 43,
 *   dextroseEquivalent: 42,
 * }).drySolidsMassFraction // 0.803
 * @source corn-refiners-data
 */
export function drySolidsFromCommercialBaume({
  commercialBaume,
  dextroseEquivalent,
}: {
  readonly commercialBaume: number;
  readonly dextroseEquivalent: number;
}): { readonly drySolidsMassFraction: number; readonly band: Span } {
  requireWithin('commercialBaume', commercialBaume, COMMERCIAL_SOLIDS_DOMAIN_BAUME);
  requireWithin(
    'dextroseEquivalent',
    dextroseEquivalent,
    COMMERCIAL_SOLIDS_DOMAIN_DEXTROSE_EQUIVALENT,
  );
  const percent =
    interpolate(COMMERCIAL_SOLIDS_AT_43.points, dextroseEquivalent) +
    interpolate(COMMERCIAL_SOLIDS_BESIDE_43.points, commercialBaume);
  const drySolidsMassFraction = percent / 100;
  return {
    drySolidsMassFraction,
    band: around(drySolidsMassFraction, COMMERCIAL_BAUME_CONSTANTS.solidsPlusMinus.value),
  };
}
