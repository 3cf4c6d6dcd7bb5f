import { newLedger } from '../ledger.js';
import { boilOn } from '../plan/cooking/boil.js';
import type { AdviceContext } from './context.js';
import { remedy } from './remedy.js';
import { ADVICE_THRESHOLDS } from './thresholds.js';
import type { Advice } from './types.js';

/** Flames to try when the given one never gets there, W: a small ring, a large one, a burner. */
const FLAMES_W = [1_000, 2_000, 4_000, 8_000, 16_000] as const;

/** The hob loses as much as it gives before the stop is reached. */
export function neverBoils(context: AdviceContext): Advice | undefined {
  const { batch, boil, asWeighed, stop, kitchen } = context;
  const { hob } = batch;
  if (boil !== undefined || hob === undefined) return undefined;
  const kind = hob.kind === 'timed' ? 'resistance' : hob.kind;
  const powerW = FLAMES_W.find(
    (flameW) =>
      boilOn(
        {
          batch: { ...batch, hob: { kind, powerW: flameW } },
          base: asWeighed.base,
          stop,
          kitchen,
        },
        newLedger(),
      ) !== undefined,
  );
  return {
    code: 'never-boils',
    severity: 'will-fail',
    path: '/hob',
    numbers: {},
    remedies:
      powerW === undefined
        ? []
        : [remedy('stronger-hob', [{ path: '/hob', value: { kind, powerW } }], { powerW })],
  };
}

/** A slow thermometer in a fast end shows what was, not what is. */
export function readingLags({ cooking, batch }: AdviceContext): Advice | undefined {
  const { lagNoteK } = ADVICE_THRESHOLDS;
  const readsInS = batch.thermometer?.readsInS;
  if (cooking?.lagK === undefined || readsInS === undefined || cooking.hobIsAssumed)
    return undefined;
  const lagK = cooking.lagK.value;
  if (lagK <= lagNoteK.value) return undefined;
  const quickerS = Math.max(1, Math.floor((0.9 * readsInS * lagNoteK.value) / lagK));
  return {
    code: 'reading-lags',
    severity: 'note',
    path: '/thermometer/readsInS',
    numbers: {
      lagK,
      rateKPerMin: cooking.rateAtStopKPerMin.value,
      ...(cooking.lagTurnedDownK === undefined ? {} : { lagTurnedDownK: cooking.lagTurnedDownK }),
    },
    remedies:
      quickerS < readsInS
        ? [
            remedy('quicker-thermometer', [{ path: '/thermometer/readsInS', value: quickerS }], {
              readsInS: quickerS,
            }),
          ]
        : [],
  };
}
