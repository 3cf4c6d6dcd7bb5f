import type { None } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { combine } from '../../matter/mixture/combine.js';
import type { Mixture, Solid } from '../../matter/mixture/types.js';
import { INVERSION_CONSTANTS } from './constants.js';

/** Water a mass has left over may fall short of nothing by rounding. */
const ROUNDING_G_PER_G = 1e-9;

/**
 * The same mass with some of its sugar split into glucose and fructose.
 *
 * Splitting takes water out of the mass, so late acid costs no hardness at once; it costs when the
 * piece takes that water back from the air. Ask `glassTransition` of both answers. For sugar split
 * early, before the boil is over, take the water back too: the boil sets the water then. Cooked to
 * the same reading the mass holds more water and stays softer, and the same water needs more heat:
 * ask `drySolidsAtBoil` and `boilingPoint` of it.
 *
 * @equation sucrose + 0.05263 water → 0.52632 glucose + 0.52632 fructose, by mass
 * @param of - The mass before.
 * @param options - `invertedFraction` of its sucrose, 0 to 1; `takesWaterBack`: whether water is
 *   the same share of it afterwards as before, no by default.
 * @returns the mixture after, of the same mass, or heavier by the water taken back; `none` without
 *   sucrose, or where there is not water enough and none is taken back.
 * @throws {@link ModelRangeError} if the fraction lies outside 0 to 1.
 * @example
 * const sweet = solutionOf('sucrose', { drySolidsMassFraction: 0.98 });
 * const after = invertedMixture(sweet, { invertedFraction: 0.2 });
 * isNone(after) ? after.reason : after.waterG // 0.968 g, of 2
 * @source definition
 */
export function invertedMixture(
  of: Mixture,
  {
    invertedFraction,
    takesWaterBack = false,
  }: {
    readonly invertedFraction: number;
    readonly takesWaterBack?: boolean | undefined;
  },
): Mixture | None<'no-sucrose' | 'not-enough-water'> {
  requireWithin('invertedFraction', invertedFraction, [0, 1]);
  const sucroseG = sucroseIn(of);
  if (sucroseG === 0) return { kind: 'none', reason: 'no-sucrose' };
  const splitG = invertedFraction * sucroseG;
  const leftG = of.waterG - splitG * INVERSION_CONSTANTS.waterPerSucrose.value;
  if (!takesWaterBack && leftG < -ROUNDING_G_PER_G * of.massG) {
    return { kind: 'none', reason: 'not-enough-water' };
  }
  if (!takesWaterBack) return withInvert(of, splitG, Math.max(0, leftG));
  const dryG = of.massG - of.waterG;
  return withInvert(of, splitG, (of.waterG * (dryG + of.waterG - leftG)) / dryG);
}

/** Sucrose of a mixture, g. */
export function sucroseIn({ solids }: Mixture): number {
  return solids.reduce(
    (sum, solid) => sum + (solid.kind === 'pure' && solid.species === 'sucrose' ? solid.massG : 0),
    0,
  );
}

/** The mixture with so much of its sucrose split, and with this water. */
export function withInvert(of: Mixture, splitG: number, waterG: number): Mixture {
  const halfG = (splitG * (1 + INVERSION_CONSTANTS.waterPerSucrose.value)) / 2;
  const invert: readonly Solid[] = [
    { kind: 'pure', species: 'glucose', massG: halfG },
    { kind: 'pure', species: 'fructose', massG: halfG },
  ];
  const solids = of.solids.map((solid) =>
    solid.kind === 'pure' && solid.species === 'sucrose'
      ? { ...solid, massG: Math.max(0, solid.massG - splitG) }
      : solid,
  );
  // Combining sets the totals and merges what is there already.
  return combine([{ ...of, waterG, solids: [...solids, ...invert] }]);
}
