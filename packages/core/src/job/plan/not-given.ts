import type { BatchDocument } from '../batch/types.js';
import { assume, type Ledger, leaveOut } from '../ledger.js';

/** Fields no number of the plan needs are listed all the same: their absence changes nothing. */
export function noteUnused({ thermometer, handling, water }: BatchDocument, ledger: Ledger): void {
  leaveOut(ledger, '/thermometer/maxC', thermometer?.maxC);
  leaveOut(ledger, '/thermometer/readsInS', thermometer?.readsInS);
  leaveOut(ledger, '/thermometer/iceWaterReadingC', thermometer?.iceWaterReadingC);
  if (thermometer?.kind === undefined) assume(ledger, '/thermometer/kind', 'probe');
  if (handling?.stirredAfterBoil === undefined)
    assume(ledger, '/handling/stirredAfterBoil', false, 'practice');
  leaveOut(ledger, '/water/alkalinityMmolPerL', water?.alkalinityMmolPerL);
}
