import type { Checked, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { SEA_LEVEL_PRESSURE_PA } from '../../matter/air/standard-pressure.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { boilWarnings } from '../boiling/boil.js';
import { dissolvedAtBoil, type NoBoil } from '../boiling/dry-solids-at-boil.js';
import { boilingJPerK, boilingMass, waterAtDissolved, waterGPerK } from './boiling-mass.js';
import { BOIL_DOWN_DOMAIN_PA, PAN_CONSTANTS } from './constants.js';
import { PAN_MASS_DOMAIN_G } from './hob-power.js';

/** How far a mass goes on rising when the flame is off. */
export type CarryOver = Checked<{
  /** K. */
  carryOverK: number;
  /** K. */
  band: Span;
}>;

/**
 * How far the mass goes on rising after the flame is off, from the heat in the base of the pan.
 *
 * Under a full flame the base runs 10 to 30 K hotter than the syrup. Taken for 30, the high side,
 * because a mass stopped early can be boiled on and one gone too far cannot be brought back. Taking
 * the pan off the hob does not stop it; stopping a little early does.
 *
 * @equation ΔT = m_pan·c_steel·ΔT_base / (m·c + L·(−dw/dT))
 * @param mixture - What is in the pan, with any amount of water.
 * @param options - `temperatureC` where the flame goes off, °C, 5 to 370; `panMassG`, steel, g, 0 to
 *   1 000 000; `pressurePa` at the pan, Pa, 1 000 to 1 000 000; `baseHotterK`, 0 to 200, 30 if left
 *   out.
 * @returns `carryOverK` and `band`, K: from a third of it, which is a base 10 K hotter, to all of the heat making steam. Or
 *   none where that is no boil of this mass, as for `drySolidsAtBoil`.
 * @throws {@link ModelRangeError} outside the domains.
 * @example
 * const charge = mixture([
 *   { ingredient: 'sucrose', massG: 1_000 },
 *   { ingredient: 'water', massG: 330 },
 * ]);
 * carryOver(charge, { temperatureC: 150, panMassG: 1_000 }).carryOverK // 2.18 K
 * @source common-practice, boiling-fit
 */
export function carryOver(
  mixture: Mixture,
  options: {
    readonly temperatureC: number;
    readonly panMassG: number;
    readonly pressurePa?: number | undefined;
    readonly baseHotterK?: number | undefined;
  },
): CarryOver | NoBoil {
  const { temperatureC, panMassG, pressurePa = SEA_LEVEL_PRESSURE_PA } = options;
  const { baseHotterK: usualK, baseHotterLowK, steelKJPerKgK } = PAN_CONSTANTS;
  const { baseHotterK = usualK } = options;
  requireWithin('pressurePa', pressurePa, BOIL_DOWN_DOMAIN_PA);
  requireWithin('panMassG', panMassG, PAN_MASS_DOMAIN_G);
  requireWithin('baseHotterK', baseHotterK, [0, 200]);
  // The pan is not warmed with the mass here: it is what gives the heat.
  const mass = boilingMass(mixture, pressurePa, 0);
  const dissolved = dissolvedAtBoil(mass.solute, temperatureC, pressurePa);
  if (typeof dissolved === 'string') return { kind: 'none', reason: dissolved };
  const waterG = waterAtDissolved(mass, dissolved);
  const heatJ = panMassG * steelKJPerKgK * baseHotterK;
  const carryOverK = heatJ / boilingJPerK(mass, waterG, temperatureC);
  const steamJPerK = mass.steamKJPerKg(temperatureC) * waterGPerK(mass, waterG, temperatureC);
  return {
    carryOverK,
    band: [carryOverK * (baseHotterLowK / usualK), heatJ / steamJPerK],
    warnings: boilWarnings(dissolved, temperatureC, pressurePa, mass.solute),
  };
}
