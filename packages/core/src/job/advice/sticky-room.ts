import { sealedIn } from '../changes/sealed-in.js';
import type { PlannedAir } from '../plan/types.js';
import type { AdviceContext } from './context.js';
import { remedy } from './remedy.js';
import { ADVICE_THRESHOLDS } from './thresholds.js';
import type { Advice, Change, Severity } from './types.js';

/** Few kitchens are drier than this, 0–1: common practice. */
const DRIEST_ROOM = 0.3;

/**
 * Wetter air than a bare sweet bears. Wrapped within half an hour it is only worth knowing; left
 * open where the whole surface sticks, it cannot keep.
 */
export function stickyRoom({
  batch,
  keeping,
  yield: { pieceG },
}: AdviceContext): Advice | undefined {
  const { workRoomHumidity, dampRoomHumidity } = ADVICE_THRESHOLDS;
  const roomHumidity = batch.room?.relativeHumidity ?? 0;
  const relativeHumidity = Math.max(roomHumidity, keeping.storeRelativeHumidity ?? 0);
  const place = roomHumidity === relativeHumidity ? 'room' : 'store';
  const { air } = keeping;
  const isSealed = typeof batch.wrap === 'object';
  // Where nobody has measured what air it bears, the trade's work room stands in.
  const bears = air?.criticalRelativeHumidity.value ?? workRoomHumidity.value;
  // Sealed, it meets the room only while it is made.
  const limit = isSealed ? Math.max(bears, dampRoomHumidity.value) : bears;
  if (relativeHumidity <= limit) return undefined;
  const isOpen = batch.wrap === 'none' || batch.wrap === 'twist';
  const severity = isOpen ? openIn(relativeHumidity, air) : 'note';
  const dry = Math.floor(limit * 100) / 100;
  const drier: Change[] = (['room', 'store'] as const)
    .filter((damp) => (batch[damp]?.relativeHumidity ?? 0) > limit)
    .map((damp) => ({ path: `/${damp}/relativeHumidity`, value: dry }));
  return {
    code: 'sticky-room',
    severity,
    path: `/${place}/relativeHumidity`,
    numbers: { relativeHumidity, limitRelativeHumidity: limit },
    names: { place },
    remedies: [
      ...(isSealed ? [] : [remedy('wrap-it', [sealedIn(pieceG?.value)])]),
      // No kitchen is drier than this.
      ...(dry >= DRIEST_ROOM ? [remedy('drier-room', drier, { relativeHumidity: dry })] : []),
    ],
  };
}

/**
 * Left open: where its skin begins to stick it disappoints, where it is sticky all over it fails. What
 * nobody has measured rests on the trade's work room and is never said to fail.
 */
function openIn(relativeHumidity: number, air: PlannedAir | undefined): Severity {
  if (air === undefined)
    return relativeHumidity > ADVICE_THRESHOLDS.dampRoomHumidity.value ? 'may-disappoint' : 'note';
  const { sticksFromRelativeHumidity: from = 1, stickyAtRelativeHumidity: all = 1 } = air;
  if (relativeHumidity > all) return 'will-fail';
  return relativeHumidity > from ? 'may-disappoint' : 'note';
}
