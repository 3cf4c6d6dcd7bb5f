import type { Checked, None, Span } from '../../foundation/results/types.js';
import { warnOutside } from '../../foundation/validity/check.js';
import { unknownName } from '../../foundation/validity/model-range-error.js';
import { totalG } from '../../matter/mixture/assemble.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { SATURATION_CONSTANTS, SUPERSATURATION_ZONES } from './saturation-constants.js';
import { sucroseSolubility } from './sucrose-solubility.js';

/** Which form of the saturation of sucrose beside other solids. */
export type SaturationEquation = 'long' | 'linear';

/** What crystals do at that supersaturation, in nearly pure sucrose. */
export type SupersaturationZone = 'undersaturated' | 'metastable' | 'intermediate' | 'labile';

/** How far past what its water can hold. */
export type Supersaturation = {
  /** 1 = saturated. */
  readonly supersaturation: number;
  /** q, grams of other solids on a gram of water, as it is. */
  readonly otherSolidsPerWater: number;
  /** Whether q was held at the end of what was tested. */
  readonly clamped: boolean;
  readonly zone: SupersaturationZone;
};

/** Other solids a gram of water was tested with, g. */
export const OTHER_SOLIDS_TESTED: Span = [0, 3];

/**
 * How far a syrup holds more sugar than its water can: what drives crystals.
 *
 * Of use for syrups, fondant and the cold pan. A boiled sweet has 10 to 30 times as much sugar as
 * its water can hold whatever the recipe, so it says nothing about how well a sweet keeps: what
 * stops graining there is stiffness and doctor. With more than 3 g of other solids on a gram of
 * water the amount is held at 3 and `clamped` is true, with a warning: right about the side of 1,
 * poor about how far.
 *
 * @equation S = (sucrose/water)/(y·saturation of sucrose alone); `long`:
 *   y = −0.06265·q + 0.982 + 0.018·exp(−2.1·q); `linear`: y = 1 − 0.088·q; q held at 3
 * @param mixture - The syrup or sweet, with its water.
 * @param options - `temperatureC`, °C, −13 to 100; `equation`, `long` where left out: the two agree
 *   within 0.01 to q = 1.
 * @returns `supersaturation`, 1 = saturated; `otherSolidsPerWater`; `clamped`; `zone`; `none` with
 *   `no-water` for a dry mass.
 * @throws {@link ModelRangeError} outside −13 to 100 °C, or for another name of an equation.
 * @example
 * sucroseSupersaturation(solutionOf('sucrose', { drySolidsMassFraction: 0.75 }), {
 *   temperatureC: 25,
 * }) // { supersaturation: 1.446, zone: 'labile', clamped: false }
 * @source wiklund-vavrinecz, icumsa-saturation, vavrinecz-1962
 */
export function sucroseSupersaturation(
  mixture: Mixture,
  {
    temperatureC,
    equation = 'long',
  }: { readonly temperatureC: number; readonly equation?: SaturationEquation | undefined },
): Checked<Supersaturation> | None<'no-water'> {
  const { sucroseMassFraction: pure, warnings } = sucroseSolubility(temperatureC);
  const { waterG } = mixture;
  if (!(waterG > 0)) return { kind: 'none', reason: 'no-water' };
  const sucroseG = sucroseIn(mixture);
  const q = (totalG(mixture.solids) - sucroseG) / waterG;
  const most = SATURATION_CONSTANTS.mostOtherSolidsPerWater.value;
  const y = saturation(Math.min(q, most), equation);
  const supersaturation = ((sucroseG / waterG) * (1 - pure)) / (y * pure);
  return {
    supersaturation,
    otherSolidsPerWater: q,
    clamped: q > most,
    zone: zoneOf(supersaturation),
    warnings: [...warnings, ...warnOutside('otherSolidsPerWater', q, OTHER_SOLIDS_TESTED)],
  };
}

/** Sucrose in a mixture, g. */
export function sucroseIn({ solids }: Mixture): number {
  return totalG(solids.filter((solid) => solid.kind === 'pure' && solid.species === 'sucrose'));
}

function saturation(q: number, equation: SaturationEquation): number {
  const { slope, level, fade, linearFall } = SATURATION_CONSTANTS;
  if (equation === 'linear') return 1 - linearFall.value * q;
  if (equation !== 'long') {
    throw unknownName('equation', equation, 'Saturation beside other solids is `long` or `linear`');
  }
  return slope.value * q + level.value + (1 - level.value) * Math.exp(-fade.value * q);
}

function zoneOf(supersaturation: number): SupersaturationZone {
  const { metastable, intermediate, labile } = SUPERSATURATION_ZONES;
  if (supersaturation <= metastable.value) return 'undersaturated';
  if (supersaturation <= intermediate.value) return 'metastable';
  return supersaturation <= labile.value ? 'intermediate' : 'labile';
}
