import { dissolvedAtBoil } from '../boiling/dry-solids-at-boil.js';
import { type BoilingMass, boilBetweenC, warmingJPerK, waterAtDissolved } from './boiling-mass.js';
import type { Flame } from './flame.js';

/** A boiling mass at one moment. */
export type Knot = { readonly temperatureC: number; readonly waterG: number };

/** Pieces of a way, each with one flame: cut where the flame is turned. */
export function stretches(
  { steps }: Flame,
  fromC: number,
  toC: number,
): readonly (readonly [fromC: number, toC: number])[] {
  const cuts = steps.map((step) => step.fromC).filter((cut) => cut > fromC && cut < toC);
  return [fromC, ...cuts].map((cut, at) => [cut, cuts[at] ?? toC]);
}

/**
 * Moments between the first boil and the end, the end among them. The water shrinks by one ratio
 * from each to the next; where the flame is turned there is one more.
 */
export function knotsTo(
  mass: BoilingMass,
  { steps }: Flame,
  pieces: number,
  firstBoil: Knot,
  end: Knot,
): readonly Knot[] {
  const waters: { waterG: number; temperatureC?: number }[] = [];
  for (let at = 1; at < pieces; at += 1) {
    waters.push({ waterG: firstBoil.waterG * (end.waterG / firstBoil.waterG) ** (at / pieces) });
  }
  for (const { fromC: temperatureC } of steps) {
    if (temperatureC <= firstBoil.temperatureC || temperatureC >= end.temperatureC) continue;
    const dissolved = dissolvedAtBoil(mass.solute, temperatureC, mass.pressurePa);
    if (typeof dissolved === 'number') {
      waters.push({ waterG: waterAtDissolved(mass, dissolved), temperatureC });
    }
  }
  waters.sort((a, b) => b.waterG - a.waterG);
  const knots: Knot[] = [];
  let wetterC = firstBoil.temperatureC;
  for (const { waterG, temperatureC } of waters) {
    wetterC = temperatureC ?? boilBetweenC(mass, waterG, [wetterC, end.temperatureC]);
    knots.push({ temperatureC: wetterC, waterG });
  }
  return [...knots, end];
}

/** Heat of one piece, J: to warm what stays and the pan, and to make steam of what leaves. */
export function pieceHeat(
  mass: BoilingMass,
  from: Knot,
  to: Knot,
): { readonly warmingJ: number; readonly steamJ: number } {
  const { steamKJPerKg } = mass;
  const meanJPerK =
    (warmingJPerK(mass, from.waterG, from.temperatureC) +
      warmingJPerK(mass, to.waterG, to.temperatureC)) /
    2;
  const meanKJPerKg = (steamKJPerKg(from.temperatureC) + steamKJPerKg(to.temperatureC)) / 2;
  return {
    warmingJ: meanJPerK * (to.temperatureC - from.temperatureC),
    steamJ: meanKJPerKg * (from.waterG - to.waterG),
  };
}
