import type { Span } from '../../foundation/results/types.js';
import { celsiusFromFahrenheit } from '../../foundation/units/temperature.js';
import { unknownName } from '../../foundation/validity/model-range-error.js';
import { DRY_SUGAR_FROM_F, STAGE_RUNGS } from './rungs.js';
import { sucroseSolids } from './sucrose-curve.js';
import type { StageAim, StageId } from './types.js';

/** What a stage asks for. */
export type StageTarget = {
  /** Where a sucrose syrup stops for it at sea level, °C. */
  readonly seaLevelSucroseC: number;
  /** Solids to cook any sugar mass to, 0 to 1; `null` for dry sugar, which is cooked by temperature. */
  readonly drySolidsMassFraction: number | null;
  /** The whole stage at sea level, °C. */
  readonly rangeC: Span;
};

/**
 * The solids a stage means, to cook a mass of another recipe to.
 *
 * A stage is the feel of cooled syrup, set by its solids. It is taken on the sucrose curve, in the
 * middle of its sea-level range unless aimed lower or higher; a mixture is then cooked to the same
 * solids, at whatever temperature that is for it.
 *
 * @param input - `stage`; `aim`: low, middle (default) or high end of its range.
 * @returns `seaLevelSucroseC`, °C, `drySolidsMassFraction`, 0 to 1, and `rangeC`, °C.
 * @throws {@link ModelRangeError} for a stage or an aim there is none of.
 * @example
 * stageTarget({ stage: 'hard-crack' }).drySolidsMassFraction // 0.9761
 * @source stage-chart-medians
 */
export function stageTarget({
  stage,
  aim = 'middle',
}: {
  readonly stage: StageId;
  readonly aim?: StageAim | undefined;
}): StageTarget {
  const rung = STAGE_RUNGS.find((one) => one.kind === 'stage' && one.id === stage);
  if (rung === undefined) throw unknownName('stage', stage, 'There is no such stage');
  const { lowF, highF } = rung;
  const aimF = { low: lowF, middle: (lowF + highF) / 2, high: highF }[aim];
  if (aimF === undefined) throw unknownName('aim', aim, 'There is no such aim');
  const seaLevelSucroseC = celsiusFromFahrenheit(aimF);
  return {
    seaLevelSucroseC,
    drySolidsMassFraction: lowF >= DRY_SUGAR_FROM_F ? null : sucroseSolids(seaLevelSucroseC),
    rangeC: [celsiusFromFahrenheit(lowF), celsiusFromFahrenheit(highF)],
  };
}
