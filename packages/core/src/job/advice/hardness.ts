import type { StageId } from '../../models/stages/types.js';
import { speciesShare } from '../plan/cautions.js';
import { glassAt } from '../plan/curve.js';
import type { AdviceContext } from './context.js';
import { remedy } from './remedy.js';
import { type Swap, swapPolyol } from './swap-polyol.js';
import { ADVICE_THRESHOLDS } from './thresholds.js';
import type { Advice, Change, Remedy, Severity } from './types.js';

/** Driest water a remedy asks a sugar mass for: drier is a number without a sweet behind it. */
const DRIEST_ASKED = 0.01;

/** A glass keeps while its glass point stays above the store. */
export function tooSoftForTheStore(context: AdviceContext): Advice | undefined {
  const { keeping } = context;
  const {
    value,
    band: [lowC, highC],
  } = keeping.glassTransitionC;
  const severity = softness(value, highC, keeping.storeC);
  if (severity === undefined || isMeantSoft(context)) return undefined;
  return {
    code: 'too-soft-for-the-store',
    severity,
    path: '/cook',
    numbers: {
      glassTransitionC: value,
      lowC,
      highC,
      storeC: keeping.storeC,
      marginK: keeping.marginK.value,
    },
    remedies: severity === 'note' ? [] : hardenings(context, severity),
  };
}

/** Whoever asks for a ball wants it soft. */
function isMeantSoft({ batch: { cook }, target }: AdviceContext): boolean {
  const soft: readonly StageId[] = ['thread', 'soft-ball', 'firm-ball', 'hard-ball'];
  return 'toStage' in cook && soft.includes(cook.toStage) && target.stageNamesApply;
}

/** How bad a glass point is for a store; nothing when there is reserve enough. */
function softness(glassC: number, highC: number, storeC: number): Severity | undefined {
  const { reserveMayK, reserveNoteK } = ADVICE_THRESHOLDS;
  if (highC < storeC) return 'will-fail';
  if (glassC < storeC + reserveMayK.value) return 'may-disappoint';
  return glassC < storeC + reserveNoteK.value ? 'note' : undefined;
}

function hardenings(context: AdviceContext, severity: Severity): readonly Remedy[] {
  const { pots, keeping, curve, batch, outcome, early } = context;
  // A longer boil gives acid in it more time: what that leaves of the hardness has another remedy.
  const acidInTheBoil = (early?.byAcid ?? 0) > 0;
  const hardestC = curve?.knee.glassTransitionC ?? glassAt(pots.base, pots.late, DRIEST_ASKED);
  const wantedC = Math.min(
    keeping.storeC + ADVICE_THRESHOLDS.reserveNoteK.value,
    Math.floor(hardestC),
  );
  const spreadK = keeping.glassTransitionC.band[1] - keeping.glassTransitionC.value;
  const helps = (glassC: number) =>
    rank(softness(glassC, glassC + spreadK, keeping.storeC)) < rank(severity);
  const drier: readonly Remedy[] =
    !acidInTheBoil && wantedC > outcome.glassTransitionC && helps(wantedC)
      ? [
          remedy('cook-drier', [cookTo({ toGlassTransitionC: wantedC }, context)], {
            glassTransitionC: wantedC,
          }),
        ]
      : [];
  const swaps = xylitolSwaps(context).filter(({ glassTransitionC }) => helps(glassTransitionC));
  const [swap] = swaps;
  return [
    ...drier,
    ...(swap === undefined
      ? []
      : [remedy('less-xylitol', swap.changes, { glassTransitionC: swap.glassTransitionC })]),
    ...(batch.store?.temperatureC === undefined ? [] : coolerStore(context)),
  ];
}

function xylitolSwaps({ lines, outcome }: AdviceContext): readonly Swap[] {
  return swapPolyol(lines, {
    from: 'xylitol',
    dryG: outcome.baseG * (1 - outcome.baseMoisture),
    moisture: outcome.baseMoisture,
  });
}

/** A cooler place, when the cook has one to name: ten degrees under the glass point. */
function coolerStore({ keeping }: AdviceContext): readonly Remedy[] {
  const storeC = Math.floor(keeping.glassTransitionC.value - ADVICE_THRESHOLDS.reserveNoteK.value);
  return storeC < 10
    ? []
    : [remedy('cooler-store', [{ path: '/store/temperatureC', value: storeC }], { storeC })];
}

/** Past the knee the heat buys less glass point than the model can tell. */
export function beyondTheKnee(context: AdviceContext): Advice | undefined {
  const { curve, stop, target } = context;
  if (curve === undefined || target.kneeReadingC === undefined) return undefined;
  if (stop.hereC <= curve.knee.hereC + ADVICE_THRESHOLDS.kneePassedK.value) return undefined;
  const gainK = context.outcome.glassTransitionC - curve.knee.glassTransitionC;
  const glassTransitionC = Math.floor(curve.knee.glassTransitionC * 10) / 10;
  const swap = xylitolSwaps(context)[0];
  return {
    code: 'beyond-the-knee',
    severity: 'note',
    path: '/cook',
    numbers: {
      kneeReadingC: target.kneeReadingC,
      readingC: target.readingC.value,
      gainPer10K: (10 * gainK) / (stop.hereC - curve.knee.hereC),
    },
    remedies: [
      remedy('stop-at-the-knee', [cookTo({ toGlassTransitionC: glassTransitionC }, context)], {
        kneeReadingC: target.kneeReadingC,
        glassTransitionC,
      }),
      ...(swap === undefined
        ? []
        : [
            remedy(
              'less-xylitol',
              [...swap.changes, cookTo({ toGlassTransitionC: glassTransitionC }, context)],
              { glassTransitionC: swap.glassTransitionC },
            ),
          ]),
    ],
  };
}

/** Sugar yellows, then burns; a stop in the melt is asked for on purpose. */
export function sugarBurns(context: AdviceContext): Advice | undefined {
  const { sugarYellowsC, sugarBurnsC, sugarSweetShare } = ADVICE_THRESHOLDS;
  const { stop, finished, batch, target } = context;
  const sugarShare = speciesShare(finished, 'sucrose') / finished.drySolidsMassFraction;
  if (stop.hereC <= sugarYellowsC.value || sugarShare < sugarSweetShare.value) return undefined;
  if ('toStage' in batch.cook) return undefined;
  return {
    code: 'sugar-burns',
    severity: stop.hereC > sugarBurnsC.value ? 'will-fail' : 'may-disappoint',
    path: '/cook',
    numbers: { readingC: target.readingC.value, limitC: sugarYellowsC.value },
    remedies: [
      remedy('stop-lower', [cookTo({ toMoistureMassFraction: 0.02 }, context)], {
        moistureMassFraction: 0.02,
      }),
    ],
  };
}

/** Another target for the same pan; a vacuum stays. */
export function cookTo(
  target: Readonly<Record<string, number>>,
  { batch }: Pick<AdviceContext, 'batch'>,
): Change {
  const { underVacuumPa } = batch.cook;
  return {
    path: '/cook',
    value: { ...target, ...(underVacuumPa === undefined ? {} : { underVacuumPa }) },
  };
}

/** Severities in order, for comparing. */
export function rank(severity: Severity | undefined): number {
  const order: readonly (Severity | undefined)[] = [
    undefined,
    'note',
    'may-disappoint',
    'will-fail',
    'danger',
  ];
  return order.indexOf(severity);
}
