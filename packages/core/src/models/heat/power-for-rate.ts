import type { Checked, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { SEA_LEVEL_PRESSURE_PA } from '../../matter/air/standard-pressure.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { boilWarnings } from '../boiling/boil.js';
import { dissolvedAtBoil, type NoBoil } from '../boiling/dry-solids-at-boil.js';
import { boilingJPerK, boilingMass, waterAtDissolved } from './boiling-mass.js';
import { BOIL_DOWN_DOMAIN_PA, PAN_CONSTANTS } from './constants.js';
import { type HeatSource, hobPower, PAN_MASS_DOMAIN_G } from './hob-power.js';
import { lossW, type PanLossOptions, panLoss } from './pan-loss.js';

/** From a standstill to a boil nobody can follow, K a minute. */
export const BOIL_RATE_DOMAIN_K_PER_MIN: Span = [0, 200];
/** Time constant of a thermometer: to settle takes four of them, s. */
export const LAG_DOMAIN_S: Span = [0, 150];

/** The flame a wanted rate asks for. */
export type PowerForRate = Checked<{
  /** Into the mass and its pan, W. */
  powerIntoMassW: number;
  /** With what the open pan loses, W. */
  powerW: number;
  /** Of what the hob can give; over 1 it cannot. Only with a hob. */
  shareOfFullPower?: number | undefined;
  /** The mass is this much hotter than a thermometer shows, K. Only with its time constant. */
  lagK?: number | undefined;
}>;

/**
 * How far to turn the flame down for a boil that rises no faster than one can follow.
 *
 * At full flame the last degrees may pass at ten kelvin and more a minute, and a slow dial shows
 * hard ball where the mass is at the crack. Turn down some ten degrees before the end: the base of
 * the pan holds heat that still goes in.
 *
 * @equation P = dT/dt · (m·c + L·(−dw/dT)) + loss; behind = τ·dT/dt
 * @param mixture - What is in the pan, with any amount of water.
 * @param options - `temperatureC` of the boil, °C, 5 to 370; `rateKPerMin` wanted there, K a minute,
 *   0 to 200; `pressurePa` at the pan, Pa, 1 000 to 1 000 000; `hob`, `panMassG`, `panDiameterMm`,
 *   `surfaceLossW` as for `boilDown`; `tauS`: time constant of the thermometer, a quarter of the
 *   time it takes to settle, s, 0 to 150.
 * @returns `powerIntoMassW`, `powerW`, `shareOfFullPower` with a hob and `lagK` with a thermometer;
 *   or none where that is no boil of this mass, as for `drySolidsAtBoil`.
 * @throws {@link ModelRangeError} outside the domains.
 * @example
 * const charge = mixture([
 *   { ingredient: 'sucrose', massG: 1_000 },
 *   { ingredient: 'water', massG: 330 },
 * ]);
 * powerForRate(charge, { temperatureC: 145, rateKPerMin: 3, tauS: 5 }) // { powerIntoMassW: 349.7…, lagK: 0.25 }
 * @source boiling-fit, bubnik-1995, dry-melt-heat, heat-above-the-boil
 */
export function powerForRate(
  mixture: Mixture,
  options: PanLossOptions & {
    readonly temperatureC: number;
    readonly rateKPerMin: number;
    readonly pressurePa?: number | undefined;
    readonly hob?: HeatSource | undefined;
    readonly panMassG?: number | undefined;
    readonly tauS?: number | undefined;
  },
): PowerForRate | NoBoil {
  const { temperatureC, rateKPerMin, hob, tauS, panMassG = 0 } = options;
  const { pressurePa = SEA_LEVEL_PRESSURE_PA } = options;
  requireWithin('pressurePa', pressurePa, BOIL_DOWN_DOMAIN_PA);
  requireWithin('rateKPerMin', rateKPerMin, BOIL_RATE_DOMAIN_K_PER_MIN);
  requireWithin('panMassG', panMassG, PAN_MASS_DOMAIN_G);
  if (tauS !== undefined) requireWithin('tauS', tauS, LAG_DOMAIN_S);
  const mass = boilingMass(mixture, pressurePa, panMassG * PAN_CONSTANTS.steelKJPerKgK);
  const dissolved = dissolvedAtBoil(mass.solute, temperatureC, pressurePa);
  if (typeof dissolved === 'string') return { kind: 'none', reason: dissolved };
  const waterG = waterAtDissolved(mass, dissolved);
  const powerIntoMassW = (boilingJPerK(mass, waterG, temperatureC) * rateKPerMin) / 60;
  const loss = panLoss(options, mass.dryG + waterG, hob, mass.waterBoilsAtC);
  const powerW = powerIntoMassW + lossW(loss, temperatureC);
  return {
    powerIntoMassW,
    powerW,
    ...(hob && { shareOfFullPower: powerW / hobPower(hob, { pressurePa, panMassG }).powerW }),
    ...(tauS !== undefined && { lagK: (tauS * rateKPerMin) / 60 }),
    warnings: boilWarnings(dissolved, temperatureC, pressurePa, mass.solute),
  };
}
