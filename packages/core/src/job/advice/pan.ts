import { PAN_FILM_G_PER_L } from '../batch/pieces.js';
import type { ThermometerKind } from '../batch/types.js';
import { scaleBatch } from './amounts.js';
import type { AdviceContext } from './context.js';
import { remedy } from './remedy.js';
import { ADVICE_THRESHOLDS } from './thresholds.js';
import type { Advice } from './types.js';

/** A boil rises: the cold charge may fill a third of the pan. */
export function panTooFull(context: AdviceContext): Advice | undefined {
  const { batch, pan } = context;
  const { panFullFraction, panBoilsOverFraction } = ADVICE_THRESHOLDS;
  const capacityMl = batch.pan?.capacityMl;
  const filled = pan.filledFraction?.value;
  if (capacityMl === undefined || filled === undefined || filled <= panFullFraction.value)
    return undefined;
  const neededCapacityMl = Math.ceil(capacityFor(context, capacityMl) / 100) * 100;
  return {
    code: 'pan-too-full',
    severity: filled > panBoilsOverFraction.value ? 'danger' : 'may-disappoint',
    path: '/pan/capacityMl',
    numbers: { filledFraction: filled, chargeMl: pan.chargeMl.value, capacityMl, neededCapacityMl },
    remedies: [
      remedy('bigger-pan', [{ path: '/pan/capacityMl', value: neededCapacityMl }], {
        neededCapacityMl,
      }),
      remedy('smaller-batch', scaleBatch(context, (0.98 * panFullFraction.value) / filled)),
    ],
  };
}

/** The capacity of which the charge is a third. A larger pan keeps more film, and pieces that are counted ask for it back. */
function capacityFor(
  { batch, pan, yield: { finishedG } }: AdviceContext,
  capacityMl: number,
): number {
  const { panFullFraction } = ADVICE_THRESHOLDS;
  const chargeMl = pan.chargeMl.value;
  const counted =
    batch.pieces?.lossFraction === undefined &&
    batch.formula.some((line) => 'shareOfDrySolids' in line);
  const growth = counted ? (PAN_FILM_G_PER_L.value / 1_000) * (chargeMl / finishedG.value) : 0;
  return (chargeMl - growth * capacityMl) / (panFullFraction.value - growth);
}

/** Tilting the pan gathers a mass to about twice its depth: common practice. */
const TILTED_SHARE = 0.6;

/** A bare probe reads steam and pan instead of the mass. */
export function probeNotCovered(context: AdviceContext): Advice | undefined {
  const { batch, pan } = context;
  const depthMm = pan.depthAtStopMm?.value;
  const diameterMm = batch.pan?.diameterMm;
  const neededMm = depthNeeded(batch.thermometer?.kind ?? 'probe');
  if (
    depthMm === undefined ||
    diameterMm === undefined ||
    neededMm === undefined ||
    depthMm >= neededMm
  )
    return undefined;
  const narrowerDiameterMm = Math.floor(diameterMm * Math.sqrt(depthMm / neededMm));
  const times = (1.02 * neededMm) / depthMm;
  // More mass is no way out where it would boil over.
  const fits = (pan.filledFraction?.value ?? 0) * times <= ADVICE_THRESHOLDS.panFullFraction.value;
  return {
    code: 'probe-not-covered',
    // A pan that is tilted makes up for a little; not for more than that.
    severity: depthMm < TILTED_SHARE * neededMm ? 'may-disappoint' : 'note',
    path: '/pan/diameterMm',
    numbers: { depthMm, neededMm, diameterMm, narrowerDiameterMm },
    remedies: [
      remedy('narrower-pan', [{ path: '/pan/diameterMm', value: narrowerDiameterMm }], {
        narrowerDiameterMm,
      }),
      ...(fits ? [remedy('bigger-batch', scaleBatch(context, times), { times })] : []),
    ],
  };
}

/** How deep the mass must stand for this thermometer, mm; a surface reader needs none. */
function depthNeeded(kind: ThermometerKind): number | undefined {
  const { probeDepthMm, thermocoupleDepthMm, longStemDepthMm } = ADVICE_THRESHOLDS;
  if (kind === 'infrared') return undefined;
  if (kind === 'thermocouple') return thermocoupleDepthMm.value;
  return kind === 'probe' ? probeDepthMm.value : longStemDepthMm.value;
}
