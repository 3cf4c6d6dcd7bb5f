import { useEffect, useState } from 'preact/hooks';
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

/** The drawings wait until the typing pauses: the answer must not wait for them. */
const PAUSE_MS = 120;

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

/** The same, a little behind the page, and only for plans that are not old. */
export function useFigures(
  batch: BatchDocument,
  plan: PlanDocument | undefined,
  isOld: boolean,
  units: 'metric' | 'us',
): FigureState | undefined {
  const [drawn, setDrawn] = useState(() =>
    plan === undefined || isOld
      ? undefined
      : { plan, units, state: figureState(batch, plan, units) },
  );
  useEffect(() => {
    if (plan === undefined || isOld) return undefined;
    if (drawn?.plan === plan && drawn.units === units) return undefined;
    const timer = setTimeout(
      () => setDrawn({ plan, units, state: figureState(batch, plan, units) }),
      PAUSE_MS,
    );
    return () => clearTimeout(timer);
  }, [batch, plan, isOld, units, drawn]);
  return drawn?.state;
}
