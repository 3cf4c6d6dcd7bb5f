import type { BatchDocument } from '../batch/types.js';
import { assume, type Ledger, leaveOut } from '../ledger.js';

/** Fields no number of the plan needs are listed all the same: their absence changes nothing. */
export function noteUnused(
  { hob, thermometer, wrap, handling, water }: BatchDocument,
  ledger: Ledger,
): void {
  leaveOut(ledger, '/hob', hob);
  leaveOut(ledger, '/thermometer/maxC', thermometer?.maxC);
  leaveOut(ledger, '/thermometer/readsInS', thermometer?.readsInS);
  leaveOut(ledger, '/thermometer/iceWaterReadingC', thermometer?.iceWaterReadingC);
  if (thermometer?.kind === undefined) assume(ledger, '/thermometer/kind', 'probe');
  if (wrap === undefined) assume(ledger, '/wrap', 'none');
  else if (typeof wrap === 'object') leaveOut(ledger, '/wrap/sealFactor', wrap.sealFactor);
  if (handling?.stirredAfterBoil === undefined)
    assume(ledger, '/handling/stirredAfterBoil', false, 'practice');
  leaveOut(ledger, '/water/alkalinityMmolPerL', water?.alkalinityMmolPerL);
}
