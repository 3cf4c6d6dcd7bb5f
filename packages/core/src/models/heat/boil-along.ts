import type { BoilDownPoint, NoBoilDown } from './boil-down-types.js';
import { type Knot, knotsTo, pieceHeat, stretches } from './boil-knots.js';
import { type BoilingMass, boilingJPerK, drySolidsWith, warmingJPerK } from './boiling-mass.js';
import { type Flame, legOf, netW } from './flame.js';

/** From where to where a mass is boiled, and with what. */
export type Way = {
  readonly mass: BoilingMass;
  readonly flame: Flame;
  readonly pieces: number;
  readonly start: Knot;
  readonly firstBoil: Knot;
  readonly end: Knot;
  /** Heat of crystals that dissolve before the first boil, J. */
  readonly dissolvingJ: number;
};

/** What adds up on the way; joules of the two halves hold the pan too. */
export type Along = {
  readonly path: readonly BoilDownPoint[];
  readonly firstBoilS: number;
  readonly timeS: number;
  readonly lostJ: number;
  readonly warmUpJ: number;
  readonly steamJ: number;
  readonly concentratingJ: number;
};

/** Follows a mass from the start over its first boil to the end, or says where it stalls. */
export function boilAlong(way: Way): Along | Extract<NoBoilDown['reason'], `never-${string}`> {
  const { mass, flame, start, firstBoil, end } = way;
  const path: BoilDownPoint[] = [];
  let timeS = 0;
  let lostJ = 0;
  /** Notes where the mass stands and goes on; false where the flame does not hold. */
  const go = (from: Knot, toC: number, heatJ: number, joulesPerK: number): boolean => {
    const leg = legOf(flame, heatJ, from.temperatureC, toC);
    if (leg === undefined) return false;
    path.push(pointAt(way, from, timeS, joulesPerK));
    timeS += leg.timeS;
    lostJ += leg.lostJ;
    return true;
  };
  const riseK = firstBoil.temperatureC - start.temperatureC;
  // Specific heat is a straight line in temperature, so its mean is that of the middle.
  const meanC = (start.temperatureC + firstBoil.temperatureC) / 2;
  const warmUpJ = riseK * warmingJPerK(mass, start.waterG, meanC) + way.dissolvingJ;
  if (warmUpJ > 0) {
    for (const [fromC, toC] of stretches(flame, start.temperatureC, firstBoil.temperatureC)) {
      const share = riseK > 0 ? (toC - fromC) / riseK : 1;
      const joulesPerK = riseK > 0 ? warmUpJ / riseK : Infinity;
      const from = { temperatureC: fromC, waterG: start.waterG };
      if (!go(from, toC, share * warmUpJ, joulesPerK)) return 'never-boils';
    }
  }
  const firstBoilS = timeS;
  let steamJ = 0;
  let concentratingJ = 0;
  let here = firstBoil;
  for (const next of knotsTo(mass, flame, way.pieces, firstBoil, end)) {
    const heat = pieceHeat(mass, here, next);
    const joulesPerK = boilingJPerK(mass, here.waterG, here.temperatureC);
    if (!go(here, next.temperatureC, heat.warmingJ + heat.steamJ, joulesPerK)) {
      return 'never-reaches';
    }
    steamJ += heat.steamJ;
    concentratingJ += heat.warmingJ;
    here = next;
  }
  path.push(pointAt(way, end, timeS, boilingJPerK(mass, end.waterG, end.temperatureC)));
  return { path, firstBoilS, timeS, lostJ, warmUpJ, steamJ, concentratingJ };
}

function pointAt(
  { mass, flame }: Way,
  { temperatureC, waterG }: Knot,
  timeS: number,
  joulesPerK: number,
): BoilDownPoint {
  return {
    timeS,
    temperatureC,
    drySolidsMassFraction: drySolidsWith(mass, waterG),
    waterG,
    rateKPerMin: (60 * netW(flame, temperatureC)) / joulesPerK,
  };
}
