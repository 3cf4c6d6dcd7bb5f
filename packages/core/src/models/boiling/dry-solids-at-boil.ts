import { findRoot } from '../../foundation/numeric/find-root.js';
import type { Checked, None, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { BOILING_SEARCH_C, WATER_BOILING_DOMAIN_PA } from '../../matter/water/boiling-point.js';
import { vapourPressurePa } from '../../matter/water/vapour-pressure.js';
import { boilPlusMinusK, boilWarnings } from './boil.js';
import { DISSOLVED_DOMAIN } from './constants.js';
import { lnWaterActivity } from './ln-water-activity.js';
import { type Solute, soluteOf } from './solute.js';

/** Why a temperature tells nothing of the solids. */
export type NoBoil = None<'below-the-boil' | 'off-scale-dry' | 'nothing-dissolved'>;

/** What `drySolidsAtBoil` answers. */
export type DrySolidsAtBoil = Checked<{
  /** Everything weighed that is not water, 0 to 1. */
  drySolidsMassFraction: number;
  /** Solids in solution per mass of solution, 0 to 1. */
  dissolvedMassFraction: number;
  /** Of `drySolidsMassFraction`: within this about nine times in ten. */
  band: Span;
}>;

/**
 * How dry a mass has become when it boils at a temperature.
 *
 * Only the ratio of its solids counts: the water is what is asked for, so it does not matter how
 * much the mixture holds. Above 160 °C the thermometer tells little, because the solids change.
 *
 * @equation aw(s, T) · psat(T) = p, solved for s
 * @param mixture - What is in the pan, with any amount of water.
 * @param options - `temperatureC`: true temperature of the boil, °C, 5 to 370. `pressurePa`:
 *   absolute pressure at the pan, Pa, 873 to 21 000 000; sea level if left out.
 * @returns `drySolidsMassFraction` and `dissolvedMassFraction`, 0 to 1, and the `band` of the
 *   first; warnings as for `boilingPoint`. Or `none`: `below-the-boil` of plain water,
 *   `off-scale-dry` where less than 10 parts of water in a million are left, `nothing-dissolved`.
 * @throws {@link ModelRangeError} outside the temperatures and pressures.
 * @example
 * const syrup = solutionOf('sucrose', { drySolidsMassFraction: 0.5 });
 * drySolidsAtBoil(syrup, { temperatureC: 150 }) // { drySolidsMassFraction: 0.97258… }
 * @source boiling-fit
 */
export function drySolidsAtBoil(
  mixture: Mixture,
  {
    temperatureC,
    pressurePa = 101_325,
  }: { readonly temperatureC: number; readonly pressurePa?: number | undefined },
): DrySolidsAtBoil | NoBoil {
  const solute = soluteOf(mixture);
  const found = dissolvedAtBoil(solute, temperatureC, pressurePa);
  if (typeof found === 'string') return { kind: 'none', reason: found };
  const plusMinusK = boilPlusMinusK(found, temperatureC, pressurePa, solute);
  let apartG = 0;
  for (const { massG } of mixture.apart) apartG += massG;
  const dry = (dissolved: number): number =>
    (dissolved * (solute.massG + apartG)) / (solute.massG + dissolved * apartG);
  return {
    drySolidsMassFraction: dry(found),
    dissolvedMassFraction: found,
    band: [
      dry(solveDissolved(solute, temperatureC - plusMinusK, pressurePa)),
      dry(solveDissolved(solute, temperatureC + plusMinusK, pressurePa)),
    ],
    warnings: boilWarnings(found, temperatureC, pressurePa, solute),
  };
}

/** Dissolved solids at a boil, or why there are none to tell. */
export function dissolvedAtBoil(
  solute: Solute,
  temperatureC: number,
  pressurePa: number,
): number | NoBoil['reason'] {
  requireWithin('temperatureC', temperatureC, BOILING_SEARCH_C);
  requireWithin('pressurePa', pressurePa, WATER_BOILING_DOMAIN_PA);
  if (solute.massG === 0) return 'nothing-dissolved';
  if (vapourPressurePa(temperatureC) < pressurePa) return 'below-the-boil';
  const [, driest] = DISSOLVED_DOMAIN;
  const dissolved = solveDissolved(solute, temperatureC, pressurePa);
  return dissolved < driest ? dissolved : 'off-scale-dry';
}

/** Dissolved solids at a boil; a temperature off either end of the scale gives that end. */
function solveDissolved(solute: Solute, temperatureC: number, pressurePa: number): number {
  const [wettest, driest] = DISSOLVED_DOMAIN;
  // The high end of a band may lie beyond the temperatures the steam equation reaches.
  const atC = Math.min(temperatureC, BOILING_SEARCH_C[1]);
  const boil = Math.log(vapourPressurePa(atC) / pressurePa);
  if (boil <= 0) return wettest;
  const excess = (dissolved: number): number => lnWaterActivity(dissolved, atC, solute) + boil;
  if (excess(driest) >= 0) return driest;
  return findRoot(excess, [wettest, driest], { tolerance: 1e-13 });
}
