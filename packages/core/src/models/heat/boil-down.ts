import { around } from '../../foundation/results/band.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { SEA_LEVEL_PRESSURE_PA } from '../../matter/air/standard-pressure.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { boilWarnings } from '../boiling/boil.js';
import { type Along, boilAlong } from './boil-along.js';
import type { BoilDown, BoilDownHeat, BoilDownOptions, NoBoilDown } from './boil-down-types.js';
import { endsOf } from './boil-ends.js';
import type { Knot } from './boil-knots.js';
import { boilingMass, dissolvedWith } from './boiling-mass.js';
import { BOIL_DOWN_DOMAIN_PA, BOIL_DOWN_SPREAD, PAN_CONSTANTS } from './constants.js';
import { flameOf } from './flame.js';
import { hobPower } from './hob-power.js';
import { panLoss } from './pan-loss.js';
import { dissolutionHeat } from './phase-heat.js';

/**
 * Pieces of the way from the first boil to the end. The water shrinks by the same ratio in each,
 * because a boil rises about evenly with the logarithm of the water left; with 24 of them a piece
 * is 1 to 3 K long, and half of them give the same minutes to better than one part in a thousand.
 */
const PIECES = 24;

/**
 * How a pan boils down: how long it takes, how hot it is when, and where the heat goes.
 *
 * The end of a boil runs away: with little water left it gets hotter five to ten times as fast as at
 * the start. `powerSteps` turn the flame down there. Water is taken to leave evenly, nothing to boil
 * over, and no sugar to be inverted; alcohol stays in the mass. Hot sugar burns deep: a fast boil
 * wants a pan at most half full, and nobody small beside it.
 *
 * @equation Q = m·c·(Tb − T₀) + q·sucrose + ∫ L(T) dw + ∫ m·c dT along the boiling curve;
 *   t = ∫ dQ/(P − loss)
 * @param mixture - What goes into the pan.
 * @param options - `hob`: see `hobPower`. Exactly one of `targetC`, °C, 5 to 370, and
 *   `targetDrySolidsMassFraction`, 0 to 1. `pressurePa` at the pan, Pa, 1 000 to 1 000 000; sea level
 *   if left out. `startC`, °C, 0 to the first boil; 20 if left out. `dissolved`: no crystals are left
 *   to dissolve. `panMassG`, steel, g; with
 *   `panDiameterMm`, mm, 20 to 2 000, or `surfaceLossW`, W, the open pan loses heat. `powerSteps`:
 *   at most eight, from `fromC`, °C, on a `share`, 0 to 1, of the power.
 * @returns the `path`, at most 34 points, `minutes` with a `band` of a quarter either way, `heatKJ`,
 *   `rateAtEndKPerMin` and warnings as for `boilingPoint`; or none, with its reason. At most 34
 *   boiling points of the mass are solved.
 * @throws {@link ModelRangeError} outside the domains, or with two targets or none.
 * @example
 * const charge = mixture([
 *   { ingredient: 'sucrose', massG: 1_000 },
 *   { ingredient: 'water', massG: 330 },
 * ]);
 * const hob = { kind: 'induction', powerW: 1_800 };
 * boilDown(charge, { hob, targetC: 148 }).minutes // 11.94
 * @source boiling-fit, bubnik-1995, dry-melt-heat, heat-above-the-boil, boil-down-spread
 */
export function boilDown(mixture: Mixture, options: BoilDownOptions): BoilDown | NoBoilDown {
  return boilDownIn(PIECES, mixture, options);
}

/** The same in another number of pieces, to see that it does not matter. */
export function boilDownIn(
  pieces: number,
  mixture: Mixture,
  options: BoilDownOptions,
): BoilDown | NoBoilDown {
  const { hob, pressurePa = SEA_LEVEL_PRESSURE_PA, startC = 20, panMassG = 0 } = options;
  requireWithin('pressurePa', pressurePa, BOIL_DOWN_DOMAIN_PA);
  const { powerW } = hobPower(hob, { pressurePa, panMassG });
  const mass = boilingMass(mixture, pressurePa, panMassG * PAN_CONSTANTS.steelKJPerKgK);
  const loss = panLoss(options, mixture.massG, hob, mass.waterBoilsAtC);
  const flame = flameOf(powerW, options.powerSteps ?? [], loss);
  const ends = endsOf(mixture, mass, options);
  if (typeof ends === 'string') return { kind: 'none', reason: ends };
  const { firstBoil, end } = ends;
  requireWithin('startC', startC, [0, firstBoil.temperatureC]);
  const start = { temperatureC: startC, waterG: mixture.waterG };
  const dissolving = options.dissolved === true ? 0 : dissolutionHeat(mixture).dissolutionHeatKJ;
  const along = boilAlong({
    mass,
    flame,
    pieces,
    start,
    ...ends,
    dissolvingJ: 1_000 * dissolving,
  });
  if (typeof along === 'string') return { kind: 'none', reason: along };
  const minutes = along.timeS / 60;
  const plusMinus = minutes * BOIL_DOWN_SPREAD.value;
  const dissolved = dissolvedWith(mass, end.waterG);
  return {
    path: along.path,
    firstBoilC: firstBoil.temperatureC,
    firstBoilS: along.firstBoilS,
    endC: end.temperatureC,
    minutes,
    band: around(minutes, plusMinus),
    evaporatedG: mixture.waterG - end.waterG,
    waterLeftG: end.waterG,
    powerW,
    heatKJ: heatOf(along, dissolving, mass.panJPerK, [start, firstBoil, end]),
    rateAtEndKPerMin: along.path[along.path.length - 1]?.rateKPerMin ?? 0,
    warnings: boilWarnings(dissolved, end.temperatureC, pressurePa, mass.solute),
  };
}

/** Parts the heat of the way: what the pan took is its own line. */
function heatOf(
  { warmUpJ, steamJ, concentratingJ, lostJ }: Along,
  dissolving: number,
  panJPerK: number,
  [start, firstBoil, end]: readonly [Knot, Knot, Knot],
): BoilDownHeat {
  const panKJ = (from: Knot, to: Knot): number =>
    (panJPerK * (to.temperatureC - from.temperatureC)) / 1_000;
  return {
    warming: warmUpJ / 1_000 - dissolving - panKJ(start, firstBoil),
    dissolving,
    evaporation: steamJ / 1_000,
    concentrating: concentratingJ / 1_000 - panKJ(firstBoil, end),
    pan: panKJ(start, end),
    total: (warmUpJ + steamJ + concentratingJ) / 1_000,
    lost: lostJ / 1_000,
  };
}
