import { isNone } from '../../../foundation/results/is-none.js';
import type { Span } from '../../../foundation/results/types.js';
import { totalG } from '../../../matter/mixture/assemble.js';
import type { Mixture } from '../../../matter/mixture/types.js';
import { glassTransition } from '../../../models/glass/index.js';
import {
  FORMING_DOMAIN_C,
  grainingScore,
  grainingTime,
  grainingTimeInProcess,
  sucroseSupersaturation,
} from '../../../models/graining/index.js';
import { waterAtRelativeHumidity } from '../../../models/moisture/index.js';
import type { BatchDocument } from '../../batch/types.js';
import { sucroseG } from '../cooking/invert.js';
import { figure } from '../figure.js';
import type { Store } from '../keeping.js';
import { withDrySolids } from '../stop.js';
import type { GrainingAnswer, PlannedGraining } from '../types.js';

/** A clean half hour from the boil to the mould: common practice. */
export const WORKED_MIN = { value: 30, source: 'common-practice', grade: 'practice' } as const;

/** What graining is judged from. */
export type GrainingQuestion = {
  readonly batch: BatchDocument;
  readonly finished: Mixture;
  readonly store: Store;
  /** The mass is worked from here down to where it is a glass, °C. */
  readonly stopC: number;
};

const MINUTES_A_DAY = 1_440;
const LEAST_DAYS = 0.25;
/** Solubility is known between these, °C. */
const COLDEST_C = -13,
  HOTTEST_SOLUTION_C = 100;

/**
 * Whether it grains: while it is worked, wrapped in the store, and bare in the air of the room.
 *
 * Three answers, kept apart; the worst of those that apply gives the plan its word. Bare applies
 * when the batch is left open or twisted, and only where the humidity is known.
 */
export function planGraining(question: GrainingQuestion): PlannedGraining {
  const { batch, finished, store, stopC } = question;
  const glassC = glassTransition(finished).glassTransitionC;
  const coolestC = Math.max(COLDEST_C, Math.min(HOTTEST_SOLUTION_C, glassC, stopC));
  const seeded = batch.handling?.stirredAfterBoil ?? false;
  const working = grainingTimeInProcess(finished, {
    // Far above the glass point crystals grow no faster for being hotter.
    formingC: [coolestC, Math.min(stopC, FORMING_DOMAIN_C[1])],
    seeded,
  });
  const inStore = grainingTime(finished, { temperatureC: store.storeC, seeded });
  // What water holds falls on cooling: more than it holds at the cold end is so in a freezer too.
  const above = sucroseSupersaturation(finished, {
    temperatureC: Math.max(COLDEST_C, store.storeC),
  });
  if (isNone(working)) return working;
  if (isNone(inStore)) return inStore;
  if (isNone(above)) return { kind: 'none', reason: 'not-supersaturated' };
  // Nobody keeps a sweet for less than the evening.
  const wantedDays = Math.max(LEAST_DAYS, store.forDays);
  const process = answer(working, WORKED_MIN.value / MINUTES_A_DAY);
  const wrapped = answer(inStore, wantedDays);
  const bare = onTheSurface(question, seeded);
  const open = bare === undefined ? undefined : answer(bare, wantedDays);
  const isOpen = batch.wrap === 'none' || batch.wrap === 'twist';
  const applying = [
    ['process', process] as const,
    ...(isOpen && open !== undefined ? [['open', open] as const] : [['wrapped', wrapped] as const]),
  ];
  const [worst, worstAnswer] = applying.reduce((most, one) =>
    one[1].score > most[1].score ? one : most,
  );
  return {
    kind: 'graining',
    worst,
    word: worstAnswer.word,
    process,
    wrapped,
    open,
    supersaturation: above.supersaturation,
    doctorMassFraction: 1 - sucroseG(finished) / totalG(finished.solids),
  };
}

type Time = { readonly days: number; readonly band: Span };

/** The skin has the water that the air gives it, whatever the core has. */
function onTheSurface({ finished, store }: GrainingQuestion, seeded: boolean): Time | undefined {
  if (store.relativeHumidity === undefined) return undefined;
  const skin = waterAtRelativeHumidity(finished, {
    relativeHumidity: store.relativeHumidity,
    temperatureC: store.storeC,
  });
  if (isNone(skin) || skin.moistureMassFraction >= 1) return undefined;
  const time = grainingTime(withDrySolids(finished, 1 - skin.moistureMassFraction), {
    temperatureC: store.storeC,
    seeded,
  });
  return isNone(time) ? undefined : time;
}

function answer({ days, band }: Time, targetDays: number): GrainingAnswer {
  const { score, word } = grainingScore({ days, targetDays });
  return { word, score, days: figure(days, band, 'graining') };
}
