import { findRoot } from '../../foundation/numeric/find-root.js';
import { interpolate } from '../../foundation/numeric/interpolate.js';
import type { ModelWarning, None } from '../../foundation/results/types.js';
import { requireWithin, warnOutside } from '../../foundation/validity/check.js';
import { totalG } from '../../matter/mixture/assemble.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { lnWaterActivity } from '../boiling/ln-water-activity.js';
import { type Solute, soluteOf } from '../boiling/solute.js';
import { SORPTION_CONSTANTS, SORPTION_DOMAIN_C, SORPTION_TESTED_C } from './constants.js';
import { activityOnGlass, type IsothermShare, waterOnGlass } from './gab.js';
import { isothermShares } from './isotherm-shares.js';

/** Why nothing is known of the humidity of a mass. */
export type NoSorption = None<'no-sorption-data' | 'nothing-dissolved'>;

/** How a mass and the air around it share the water. */
export type Sorption = {
  readonly parts: readonly IsothermShare[];
  readonly solute: Solute;
  readonly temperatureC: number;
  /** What the water may be wrong by, as a fraction of it. */
  readonly plusMinus: number;
  /** Sugar alcohols among the dissolved solids, 0 to 1. */
  readonly polyolShare: number;
  readonly dissolvedG: number;
  readonly warnings: readonly ModelWarning[];
};

/** Prepares a mass for questions about its humidity; the water it holds plays no part yet. */
export function sorptionOf(mixture: Mixture, temperatureC: number): Sorption | NoSorption {
  requireWithin('temperatureC', temperatureC, SORPTION_DOMAIN_C);
  const dissolvedG = totalG(mixture.solids);
  if (dissolvedG === 0) return { kind: 'none', reason: 'nothing-dissolved' };
  const known = isothermShares(mixture, dissolvedG);
  // Under the freezing point there is ice beside the syrup, and no isotherm.
  if (known.unknownShare > SORPTION_CONSTANTS.unknownShare.value || temperatureC < 0) {
    return { kind: 'none', reason: 'no-sorption-data' };
  }
  return {
    ...known,
    solute: soluteOf(mixture),
    temperatureC,
    dissolvedG,
    warnings: [...known.warnings, ...warnOutside('temperatureC', temperatureC, SORPTION_TESTED_C)],
  };
}

/**
 * Relative humidity over a mass that holds so much water, g on one gram of dissolved solids.
 *
 * The isotherm up to a tenth of water, the boiling model from 0.15. Between them each is weighed by
 * how near its end lies, at every hundredth of water, and the highest so far counts: more water
 * never means less humidity.
 */
export function humidityAt(sorption: Sorption, waterGPerG: number): number {
  const water = waterGPerG / (1 + waterGPerG);
  const { isothermUpToWaterMassFraction: from } = SORPTION_CONSTANTS;
  if (water <= from.value) return activityOnGlass(sorption.parts, waterGPerG);
  const points = joined(sorption);
  const [, , , , , last] = points;
  return water < last[0]
    ? interpolate(points, water)
    : Math.max(last[1], boilingActivity(sorption, water));
}

/** The least water at which that humidity is reached, g on one gram of dissolved solids. */
export function waterAt(sorption: Sorption, relativeHumidity: number): number {
  const onGlass = waterOnGlass(sorption.parts, relativeHumidity);
  const driest = onGlass / (1 + onGlass);
  if (driest <= SORPTION_CONSTANTS.isothermUpToWaterMassFraction.value) return onGlass;
  const points = joined(sorption);
  const [first, , , , , last] = points;
  const water =
    relativeHumidity <= last[1]
      ? waterBetween(points, Math.max(first[1], relativeHumidity))
      : findRoot(
          (fraction) => boilingActivity(sorption, fraction) - relativeHumidity,
          [last[0], 1],
          { tolerance: 1e-13 },
        );
  return water / (1 - water);
}

type Reading = readonly [water: number, relativeHumidity: number];
type Joined = readonly [Reading, Reading, Reading, Reading, Reading, Reading];

function joined(sorption: Sorption): Joined {
  const { isothermUpToWaterMassFraction: from, boilingFromWaterMassFraction: to } =
    SORPTION_CONSTANTS;
  let highest = 0;
  const at = (fifths: number): Reading => {
    const weight = fifths / 5;
    const water = from.value + weight * (to.value - from.value);
    const dry = weight < 1 ? activityOnGlass(sorption.parts, water / (1 - water)) : 0;
    const wet = weight > 0 ? boilingActivity(sorption, water) : 0;
    highest = Math.max(highest, (1 - weight) * dry + weight * wet);
    return [water, highest];
  };
  return [at(0), at(1), at(2), at(3), at(4), at(5)];
}

function waterBetween(points: Joined, relativeHumidity: number): number {
  let [[fromWater, fromHumidity]] = points;
  for (const [water, humidity] of points) {
    if (humidity >= relativeHumidity) {
      const rise = humidity - fromHumidity;
      const part = rise > 0 ? (relativeHumidity - fromHumidity) / rise : 0;
      return fromWater + part * (water - fromWater);
    }
    [fromWater, fromHumidity] = [water, humidity];
  }
  return fromWater;
}

function boilingActivity({ solute, temperatureC }: Sorption, water: number): number {
  return Math.exp(lnWaterActivity(1 - water, temperatureC, solute));
}
