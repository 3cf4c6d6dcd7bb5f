import type { BatchDocument, MouldKind } from '../batch/types.js';
import { type Ledger, take } from '../ledger.js';
import type { PlannedPour } from './types.js';

/**
 * When the mass meets flavour, acid and mould. Hand pouring reaches from 62 to 78 K above the glass
 * point (from about 100 down to 10 Pa s); polyol melts are poured at 130–150 °C. Flavour goes in at
 * or below 125 °C, acid last, at 115–122 °C.
 */
export const POUR_RULES = {
  floorOverGlassK: { value: 62, source: 'candy-viscosity-landmarks', grade: 'derived' },
  depositOverGlassK: { value: 78, source: 'candy-viscosity-landmarks', grade: 'derived' },
  polyolLowC: { value: 130, source: 'common-practice', grade: 'practice' },
  polyolHighC: { value: 150, source: 'common-practice', grade: 'practice' },
  flavourBelowC: { value: 125, source: 'common-practice', grade: 'practice' },
  acidLowC: { value: 115, source: 'common-practice', grade: 'practice' },
  acidHighC: { value: 122, source: 'common-practice', grade: 'practice' },
} as const;

/** The hottest mass a mould bears, °C, when no limit is printed on it: common practice. */
export const MOULD_LIMITS_C: Readonly<Record<MouldKind, number | undefined>> = {
  silicone: 200,
  metal: 300,
  polycarbonate: 120,
  plastic: 150,
  starch: undefined,
  'sugar-bed': undefined,
  slab: 230,
};

/** Temperatures of flavour, acid and pour for this mass in this mould. */
export function planPour(
  batch: BatchDocument,
  glassTransitionC: number,
  polyol: boolean,
  stopC: number,
  ledger: Ledger,
): PlannedPour {
  const { mould } = batch;
  const kind =
    mould === undefined
      ? undefined
      : take(ledger, '/mould/kind', mould.kind, { value: 'silicone', grade: 'assumed' });
  const usual = kind === undefined ? undefined : MOULD_LIMITS_C[kind];
  const mouldMaxC = mould?.maxC ?? usual;
  if (mould === undefined)
    ledger.defaults.push({ path: '/mould', value: 'unknown', grade: 'assumed' });
  else if (mould.maxC === undefined) {
    ledger.defaults.push({ path: '/mould/maxC', value: usual ?? 'no-limit', grade: 'practice' });
  }
  const {
    floorOverGlassK,
    depositOverGlassK,
    polyolLowC,
    polyolHighC,
    flavourBelowC,
    acidLowC,
    acidHighC,
  } = POUR_RULES;
  const low = polyol ? polyolLowC.value : glassTransitionC + floorOverGlassK.value;
  const high = polyol ? polyolHighC.value : glassTransitionC + depositOverGlassK.value;
  // Nothing is poured hotter than it was cooked, or hotter than the mould bears.
  const ceiling = Math.min(stopC, mouldMaxC ?? stopC);
  return {
    mouldMaxC,
    flavourBelowC: flavourBelowC.value,
    acidBetweenC: [acidLowC.value, acidHighC.value],
    pourBetweenC: [Math.min(low, stopC), Math.max(Math.min(low, stopC), Math.min(high, ceiling))],
  };
}
