import type { BatchDocument, Mixture, PlanDocument, Span } from 'vitrose';
import { massInPan } from '../state/mass.js';

/** What the two drawings are made from. */
export type FigureState = {
  readonly hereC: number;
  readonly windowHereC: Span;
  readonly pressurePa: number;
  readonly readingOffsetK: number;
  readonly mass: Mixture | undefined;
  readonly units: 'c' | 'f';
};

/** The state of the drawings for a plan. */
export function figureState(
  batch: BatchDocument,
  plan: PlanDocument,
  units: 'metric' | 'us',
): FigureState {
  const { hereC, readingC, windowReadingC } = plan.target;
  const readingOffsetK = readingC.value - hereC.value;
  return {
    hereC: hereC.value,
    windowHereC: [windowReadingC[0] - readingOffsetK, windowReadingC[1] - readingOffsetK],
    pressurePa: plan.kitchen.vacuum?.pressureInPanPa.value ?? plan.kitchen.pressurePa.value,
    readingOffsetK,
    mass: massInPan(batch, plan),
    units: units === 'us' ? 'f' : 'c',
  };
}
