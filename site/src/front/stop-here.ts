import { boilingPoint, evaporateTo, waterVapourPressure } from 'vitrose';
import type { FrontQuestion } from './question.js';

/** Where to stop in one kitchen. */
export type StopHere = {
  readonly pressurePa: number;
  readonly stopC: number;
  /** Before rounding. */
  readonly windowC: readonly [low: number, high: number];
};

/** Equal solids at the pressure at which this kitchen's water boils: three boiling points. */
export function stopHere(question: FrontQuestion, boilingWaterReadingC: number): StopHere {
  const { vapourPressurePa: pressurePa } = waterVapourPressure(boilingWaterReadingC);
  const boilsAtC = (drySolidsMassFraction: number): number =>
    boilingPoint(evaporateTo(question.base, { drySolidsMassFraction }), { pressurePa })
      .boilingPointC;
  const [low, stop, high] = question.drySolids;
  const stopC = boilsAtC(stop);
  return {
    pressurePa,
    stopC,
    windowC: [Math.min(boilsAtC(low), stopC), Math.max(question.topC ?? boilsAtC(high), stopC)],
  };
}
