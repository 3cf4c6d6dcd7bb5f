import { densityFromBrix } from '../density/sucrose-solution.js';
import { bareRatePerMin } from './inversion-rate.js';
import { type WaterPath, walkAlong } from './path.js';

/** One step of the path: what is the same for every law and every acid. */
export type Step = {
  readonly minutes: number;
  /** In the middle of the step. */
  readonly temperatureC: number;
  /** Water of the path in the middle of the step and at its end, g. */
  readonly waterG: number;
  readonly aheadWaterG: number;
  /** Solution in the pan by the path, g: inversion moves water into the solids and keeps the sum. */
  readonly solutionG: number;
  /** Rate at pH 0 for each gram of water that is there, 1/(min·g). */
  readonly perMinAndG: number;
};

/** A part of the path cut into equal steps of time. */
export function stepsOf(
  path: WaterPath,
  dissolvedG: number,
  [fromS, toS]: readonly [number, number],
  count: number,
): readonly Step[] {
  const at = walkAlong(path);
  const stepS = (toS - fromS) / count;
  return Array.from({ length: count }, (_, index) => {
    const { temperatureC, waterG } = at(fromS + (index + 0.5) * stepS);
    const aheadWaterG = at(fromS + (index + 1) * stepS).waterG;
    const solutionG = dissolvedG + waterG;
    const mlPerG = 1 / gPerMl(dissolvedG / solutionG, temperatureC);
    const perMinAndG = bareRatePerMin(temperatureC) / (solutionG * mlPerG);
    return { minutes: stepS / 60, temperatureC, waterG, aheadWaterG, solutionG, perMinAndG };
  });
}

/** Hotter than the density was made for counts as 100 °C, as in the check rows of the law. */
function gPerMl(dissolvedMassFraction: number, temperatureC: number): number {
  const brix = 100 * dissolvedMassFraction;
  return (
    densityFromBrix({ brix, temperatureC: Math.min(100, temperatureC) }).densityKgPerM3 / 1_000
  );
}
