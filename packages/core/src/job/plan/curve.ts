import { findRoot } from '../../foundation/numeric/find-root.js';
import { combine } from '../../matter/mixture/index.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { boilingPoint } from '../../models/boiling/index.js';
import { glassTransition } from '../../models/glass/index.js';
import { withDrySolids } from './stop.js';

/** Stops of the curve are this much wetter than the next, from 4 % water down to 0.04 %. */
const WETTEST = 0.04,
  DRIEST = 0.0004,
  STOPS = 11;

/** Ten degrees more must buy this much glass transition to be worth them, K: less is within the model's error. */
export const WORTH_K = 2;

/** A stop and what it leaves. */
export type Stopped = {
  readonly hereC: number;
  readonly moistureMassFraction: number;
  readonly glassTransitionC: number;
};

/** Hotter against drier against harder, and where going on stops paying. */
export type Curve = {
  readonly points: readonly Stopped[];
  /** The lowest stop from which ten degrees more buy less than {@link WORTH_K}. */
  readonly knee: Stopped;
};

/** The curve of a base with what comes late in it, at the pressure in the pan. */
export function hardnessCurve(base: Mixture, late: Mixture | undefined, pressurePa: number): Curve {
  const step = (DRIEST / WETTEST) ** (1 / (STOPS - 1));
  const stops = Array.from({ length: STOPS }, (_, index) => {
    const moistureMassFraction = WETTEST * step ** index;
    const { boilingPointC } = boilingPoint(withDrySolids(base, 1 - moistureMassFraction), {
      pressurePa,
    });
    return { hereC: boilingPointC, moistureMassFraction };
  });
  const at = (hereC: number): Stopped => {
    const moistureMassFraction = moistureAt(stops, hereC);
    return {
      hereC,
      moistureMassFraction,
      glassTransitionC: glassAt(base, late, moistureMassFraction),
    };
  };
  const lowest = stops[0]?.hereC ?? 0;
  const highest = (stops[STOPS - 1]?.hereC ?? 0) - 10;
  const gain = (hereC: number) =>
    at(hereC + 10).glassTransitionC - at(hereC).glassTransitionC - WORTH_K;
  const kneeC =
    gain(lowest) <= 0
      ? lowest
      : gain(highest) >= 0
        ? highest
        : findRoot(gain, [lowest, highest], { tolerance: 1e-6 });
  return { points: roundStops(lowest, highest + 10).map(at), knee: at(kneeC) };
}

/** The glass point the base has at this water, with what comes late in it. */
export function glassAt(
  base: Mixture,
  late: Mixture | undefined,
  moistureMassFraction: number,
): number {
  const stopped = withDrySolids(base, 1 - moistureMassFraction);
  return glassTransition(late === undefined ? stopped : combine([stopped, late])).glassTransitionC;
}

/** The logarithm of the water runs nearly straight against the temperature between two stops. */
function moistureAt(
  stops: readonly Pick<Stopped, 'hereC' | 'moistureMassFraction'>[],
  hereC: number,
): number {
  const after = Math.max(
    1,
    stops.findIndex((stop) => stop.hereC >= hereC),
  );
  const [left, right] = [stops[after - 1], stops[after]];
  if (left === undefined || right === undefined) return DRIEST;
  const share = (hereC - left.hereC) / (right.hereC - left.hereC);
  return (
    left.moistureMassFraction * (right.moistureMassFraction / left.moistureMassFraction) ** share
  );
}

/** Whole fives of degrees between two temperatures. */
function roundStops(fromC: number, toC: number): readonly number[] {
  const first = Math.ceil(fromC / 5) * 5;
  return Array.from(
    { length: Math.max(0, Math.floor((toC - first) / 5) + 1) },
    (_, index) => first + 5 * index,
  );
}
