import type { Mixture } from '../../matter/mixture/types.js';
import { nutrition, PORTION_DOMAIN_G } from '../../models/nutrition/index.js';
import { type Ledger, warn } from '../ledger.js';
import type { PlannedLabel } from './types.js';

/** What the labels of two places print of this sweet. */
export function planLabel(
  finished: Mixture,
  pieceG: number | undefined,
  ledger: Ledger,
): PlannedLabel {
  // A crumb is no portion.
  const portionG = pieceG !== undefined && pieceG >= PORTION_DOMAIN_G[0] ? pieceG : undefined;
  return { us: of('us'), eu: of('eu') };

  function of(rules: 'us' | 'eu'): PlannedLabel['us'] {
    const { warnings, ...label } = nutrition(finished, { rules, pieceG: portionG });
    warn(ledger, warnings);
    return label;
  }
}
