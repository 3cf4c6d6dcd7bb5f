import { glassTransition } from '../../models/glass/index.js';
import { stagesApply } from '../../models/stages/index.js';
import { remedy } from '../advice/remedy.js';
import { swapPolyol } from '../advice/swap-polyol.js';
import type { Remedy } from '../advice/types.js';
import type { Problem } from '../batch/problems.js';
import type { BatchDocument } from '../batch/types.js';
import type { Curve } from './curve.js';
import type { Store } from './keeping.js';
import { finishedMixture, type Pots, type WeighedLine } from './outcome.js';
import { dissolvedFromDrySolids, type Stop } from './stop.js';
import { drySolidsG } from './without-ethanol.js';

/** A wish that passes the knee by less than this passes it by rounding, K. */
const ROUNDED_K = 0.1;

/** What a batch is refused from, once it is weighed and its stop is known. */
export type RefusalQuestion = {
  readonly batch: BatchDocument;
  readonly pots: Pots;
  readonly stop: Stop;
  readonly curve: Curve | undefined;
  readonly firstBoilC: number;
  readonly store: Store;
  readonly lines: readonly WeighedLine[];
};

/** Why a batch that can be weighed still cannot be cooked as asked. */
export function refusals(question: RefusalQuestion): readonly Problem[] {
  return [alreadyDrier(question), beyondTheKnee(question), stageLeavesItSoft(question)].flatMap(
    (problem) => problem ?? [],
  );
}

/** Boiling takes water out; it puts none in. */
function alreadyDrier({ batch, pots, stop, firstBoilC }: RefusalQuestion): Problem | undefined {
  const start = dissolvedFromDrySolids(pots.base, pots.base.drySolidsMassFraction);
  const wanted = dissolvedFromDrySolids(pots.base, stop.baseDrySolids);
  if (wanted > start) return undefined;
  const byTemperature = 'toSeaLevelC' in batch.cook || 'toStage' in batch.cook;
  return {
    code: byTemperature ? 'below-first-boil' : 'already-drier',
    path: '/cook',
    numbers: {
      firstBoilC,
      targetC: stop.hereC,
      startDrySolidsMassFraction: start,
      wantedDrySolidsMassFraction: wanted,
    },
  };
}

/** Past the knee a hotter stop is asked for a gain the model cannot tell. */
function beyondTheKnee({ batch, curve, lines, pots }: RefusalQuestion): Problem | undefined {
  if (curve === undefined || !('toGlassTransitionC' in batch.cook)) return undefined;
  const wantedC = batch.cook.toGlassTransitionC;
  const { knee } = curve;
  if (wantedC <= knee.glassTransitionC + ROUNDED_K) return undefined;
  const atKneeC = Math.floor(knee.glassTransitionC * 10) / 10;
  // The knee of a blend with less xylitol lies at nearly the same water; half a degree of room for that.
  const swap = swapPolyol(lines, {
    from: 'xylitol',
    dryG: drySolidsG(pots.base),
    moisture: knee.moistureMassFraction,
  }).find(({ glassTransitionC }) => glassTransitionC >= wantedC + 0.5);
  return {
    code: 'beyond-the-knee',
    path: '/cook/toGlassTransitionC',
    received: wantedC,
    numbers: { wantedC, kneeC: knee.hereC, kneeGlassTransitionC: knee.glassTransitionC },
    remedies: [
      remedy('stop-at-the-knee', [{ path: '/cook/toGlassTransitionC', value: atKneeC }], {
        glassTransitionC: atKneeC,
      }),
      ...(swap === undefined
        ? []
        : [remedy('less-xylitol', swap.changes, { glassTransitionC: swap.glassTransitionC })]),
    ],
  };
}

/** Stage names do not apply, and even the dry end of what they could mean is soft. */
function stageLeavesItSoft({ batch, pots, stop, store }: RefusalQuestion): Problem | undefined {
  if (!('toStage' in batch.cook) || stagesApply(pots.base).apply) return undefined;
  const driest = glassTransition(finishedMixture(pots, stop.drySolidsBand[1]));
  if (driest.glassTransitionC >= store.storeC) return undefined;
  const wantedC = Math.round(store.storeC + 15);
  const remedies: readonly Remedy[] = [
    remedy('ask-for-a-glass-point', [{ path: '/cook', value: { toGlassTransitionC: wantedC } }], {
      glassTransitionC: wantedC,
    }),
  ];
  return {
    code: 'stage-leaves-it-soft',
    path: '/cook/toStage',
    received: batch.cook.toStage,
    numbers: { glassTransitionC: driest.glassTransitionC, storeC: store.storeC },
    remedies,
  };
}
