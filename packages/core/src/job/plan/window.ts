import { findRoot } from '../../foundation/numeric/find-root.js';
import type { Span } from '../../foundation/results/types.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { boilingPoint } from '../../models/boiling/index.js';
import { stageTarget } from '../../models/stages/index.js';
import type { Cook } from '../batch/types.js';
import { glassAt } from './curve.js';
import { drySolidsFromDissolved, type Stop, withDrySolids } from './stop.js';
import type { WindowEnd } from './types.js';

/** How far the water of the base, and so of the sweet, may stray and the sweet still be the one meant. */
export const GOOD_WATER = { value: 0.004, source: 'common-practice', grade: 'practice' } as const;

/** The stop must leave the glass point this much above the store, K. */
export const GLASS_RESERVE = { value: 5, source: 'assumption', grade: 'assumed' } as const;

/** Sugar yellows and turns bitter above this, °C. */
export const SUGAR_LIMIT = { value: 165, source: 'common-practice', grade: 'practice' } as const;

/** Past the knee, or past a stop beyond it, the window goes on for this much and no further, K. */
export const KNEE_ROOM = { value: 5, source: 'assumption', grade: 'assumed' } as const;

/** Driest end of a window, as a share of the target's own water: below half a per cent the ±0.4 points reach past nothing. */
const DRIEST_SHARE = 0.3333;

/** What the window of good stops is asked with. */
export type WindowQuestion = {
  readonly base: Mixture;
  readonly late: Mixture | undefined;
  readonly cook: Cook;
  readonly stop: Stop;
  readonly pressurePa: number;
  readonly storeC: number;
  /** From here on hotter buys little, °C here; only where the plan has a curve. */
  readonly kneeC: number | undefined;
  /** Sucrose is in the pan. */
  readonly sugar: boolean;
};

/** True temperatures here between which the result is still good, and what ends them. */
export type Window = { readonly hereC: Span; readonly ends: readonly [WindowEnd, WindowEnd] };

/** The window of a stop. It always holds the stop itself. */
export function goodWindow(question: WindowQuestion): Window {
  const { cook, stop } = question;
  return 'toStage' in cook ? stageWindow(question, cook.toStage) : waterWindow(question, stop);
}

function stageWindow(
  { base, pressurePa, stop }: WindowQuestion,
  stage: Extract<Cook, { toStage: unknown }>['toStage'],
): Window {
  const [low, high] = (['low', 'high'] as const).map((aim) => {
    const wanted = stageTarget({ stage, aim });
    // A melt keeps its temperature in any kitchen.
    if (wanted.drySolidsMassFraction === null) return wanted.seaLevelSucroseC + stop.offSucroseK;
    return boilAt(base, drySolidsFromDissolved(base, wanted.drySolidsMassFraction), pressurePa);
  });
  return {
    hereC: [Math.min(low ?? stop.hereC, stop.hereC), Math.max(high ?? stop.hereC, stop.hereC)],
    ends: ['stage', 'stage'],
  };
}

function waterWindow(
  { base, late, pressurePa, storeC, kneeC, sugar }: WindowQuestion,
  stop: Stop,
): Window {
  const water = 1 - stop.baseDrySolids;
  let lowC = boilAt(base, 1 - water - GOOD_WATER.value, pressurePa);
  let highC = boilAt(
    base,
    1 - Math.max(water - GOOD_WATER.value, water * DRIEST_SHARE),
    pressurePa,
  );
  let [lowEnd, highEnd]: [WindowEnd, WindowEnd] = ['water', 'water'];
  const reserve = (moisture: number) =>
    glassAt(base, late, moisture) - storeC - GLASS_RESERVE.value;
  if (reserve(water + GOOD_WATER.value) < 0 && reserve(water) > 0) {
    const wettest = findRoot(reserve, [water, water + GOOD_WATER.value]);
    lowC = boilAt(base, 1 - wettest, pressurePa);
    lowEnd = 'glass';
  } else if (reserve(water) <= 0) {
    lowC = stop.hereC;
    lowEnd = 'glass';
  }
  const pastKneeC = Math.max(kneeC ?? Number.POSITIVE_INFINITY, stop.hereC) + KNEE_ROOM.value;
  if (highC > pastKneeC) {
    highC = pastKneeC;
    highEnd = 'knee';
  }
  if (sugar && highC > SUGAR_LIMIT.value) {
    highC = SUGAR_LIMIT.value;
    highEnd = 'sugar-limit';
  }
  return {
    hereC: [Math.min(lowC, stop.hereC), Math.max(highC, stop.hereC)],
    ends: [lowEnd, highEnd],
  };
}

function boilAt(base: Mixture, drySolids: number, pressurePa: number): number {
  return boilingPoint(withDrySolids(base, drySolids), { pressurePa }).boilingPointC;
}

/** Whole degrees inside the window; one decimal, or the window itself, where whole degrees leave no room. */
export function roundedInwards([low, high]: Span, mustHold: number): Span {
  for (const step of [1, 0.5, 0.1]) {
    const rounded: Span = [
      Math.ceil(low / step - 1e-9) * step,
      Math.floor(high / step + 1e-9) * step,
    ];
    const target = Math.round(mustHold / step) * step;
    if (rounded[0] < rounded[1] && rounded[0] <= target && target <= rounded[1]) {
      return [Number(rounded[0].toFixed(1)), Number(rounded[1].toFixed(1))];
    }
  }
  return [low, high];
}
