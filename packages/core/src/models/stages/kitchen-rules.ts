import type { Checked, Span } from '../../foundation/results/types.js';
import { joinWarnings } from '../../foundation/results/warnings.js';
import { feetFromMetres } from '../../foundation/units/length.js';
import { kelvinDifferenceFromFahrenheit } from '../../foundation/units/temperature.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';
import { SEA_LEVEL_PRESSURE_PA, standardPressure } from '../../matter/air/standard-pressure.js';
import { waterBoilingPoint } from '../../matter/water/boiling-point.js';
import { waterVapourPressure } from '../../matter/water/vapour-pressure.js';
import { sucroseBoilC, sucroseSolids } from './sucrose-curve.js';

/** One degree Fahrenheit for every 500 feet. */
export const KITCHEN_RULE_CONSTANTS = {
  fahrenheitPerThousandFeet: { value: 2, source: 'csu-candy-altitude', grade: 'primary' },
} as const satisfies CitedConstants;

/** Syrup, from thread to just before dry sugar. */
export const KITCHEN_RULES_DOMAIN_C: Span = [105, 160];

/** What a rule says, and how far that is from equal solids. */
export type RuleAnswer = { readonly temperatureC: number; readonly errorK: number };

/** The model beside the rules. */
export type AltitudeRules = {
  /** Equal solids by the boiling model. */
  readonly model: { readonly temperatureC: number; readonly shiftK: number };
  /** 2 °F off for every 1 000 ft. */
  readonly perThousandFeet: RuleAnswer;
  /** What boiling water lost, taken off. */
  readonly boilingWater: RuleAnswer;
  /** Water activity kept constant: textbook, and a little too much. */
  readonly constantWaterActivity: RuleAnswer;
};

/**
 * The kitchen rules for cooking up a mountain, side by side with the model.
 *
 * Two degrees Fahrenheit a thousand feet is within half a degree at the ball stages. Subtracting
 * what boiling water lost falls short at hard crack, which leaves the sweet a trace drier: harmless.
 * Keeping the water activity overstates it, because water in hot syrup is held less. No measured
 * boiling points of syrup at altitude were found; the error is the distance from the model.
 *
 * @equation rule: T − 2 °F · ft/1 000; water: T − (100 °C − T_w(p)); activity: p_sat(T′) = p_sat(T)·p/p₀
 * @param input - `temperatureC`: for sea level, °C, 105 to 160; `elevationM`, m, −2 000 to 11 000.
 * @returns for each rule its `temperatureC`, °C, and `errorK` beside the model, K: above zero where
 *   the rule stops too hot.
 * @throws {@link ModelRangeError} outside the domains.
 * @example
 * altitudeRules({ temperatureC: 149, elevationM: 1_524 }).boilingWater.errorK // 0.99 K
 * @source csu-candy-altitude, usu-candy-altitude-2006, mcgee-2004
 */
export function altitudeRules({
  temperatureC,
  elevationM,
}: {
  readonly temperatureC: number;
  readonly elevationM: number;
}): Checked<AltitudeRules> {
  requireWithin('temperatureC', temperatureC, KITCHEN_RULES_DOMAIN_C);
  const air = standardPressure(elevationM);
  const solids = sucroseSolids(temperatureC) ?? 0;
  const modelC = sucroseBoilC(solids, air.pressurePa);
  const perThousandFeetK = kelvinDifferenceFromFahrenheit(
    KITCHEN_RULE_CONSTANTS.fahrenheitPerThousandFeet.value,
  );
  const seaLevelWater = waterBoilingPoint(SEA_LEVEL_PRESSURE_PA);
  const water = waterBoilingPoint(air.pressurePa);
  const steamPa =
    (waterVapourPressure(temperatureC).vapourPressurePa * air.pressurePa) / SEA_LEVEL_PRESSURE_PA;
  const beside = (ruleC: number): RuleAnswer => ({ temperatureC: ruleC, errorK: ruleC - modelC });
  return {
    model: { temperatureC: modelC, shiftK: modelC - temperatureC },
    perThousandFeet: beside(temperatureC - (perThousandFeetK * feetFromMetres(elevationM)) / 1_000),
    boilingWater: beside(temperatureC - seaLevelWater.boilingPointC + water.boilingPointC),
    constantWaterActivity: beside(waterBoilingPoint(steamPa).boilingPointC),
    warnings: joinWarnings(air.warnings, water.warnings),
  };
}
