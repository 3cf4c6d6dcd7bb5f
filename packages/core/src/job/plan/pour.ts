import type { IngredientKind } from '../../matter/ingredients/types.js';
import type { BatchDocument, MouldKind } from '../batch/types.js';
import { assume, type Ledger, take } from '../ledger.js';
import type { PlannedPour } from './types.js';

/**
 * When the mass meets flavour, acid and mould. Hand pouring reaches from 62 to 78 K above the glass
 * point (from about 100 down to 10 Pa s); a polyol melt is usually poured at 130–150 °C. Flavour goes in
 * at or below 125 °C, acid last, at 115–122 °C, and then the mass is poured as hot as it still is.
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

/** What the mass of a plan pours as. */
export type PourQuestion = {
  readonly batch: BatchDocument;
  readonly glassTransitionC: number;
  readonly isPolyolMass: boolean;
  readonly stopC: number;
  readonly lateKinds: readonly IngredientKind[];
};

/** Temperatures of flavour, acid and pour for this mass in this mould: each step follows from the one before. */
export function planPour(question: PourQuestion, ledger: Ledger): PlannedPour {
  const { batch, glassTransitionC, isPolyolMass, stopC, lateKinds } = question;
  const mouldMaxC = readMouldLimit(batch, ledger);
  const { floorOverGlassK, depositOverGlassK, polyolHighC, flavourBelowC, acidLowC, acidHighC } =
    POUR_RULES;
  // Nothing is poured hotter than it was when the last thing went in.
  const lastC = lateKinds.includes('acid')
    ? acidHighC.value
    : lateKinds.length > 0
      ? flavourBelowC.value
      : stopC;
  const hottestC = Math.min(lastC, stopC);
  const floorC = Math.min(glassTransitionC + floorOverGlassK.value, hottestC);
  const usualC = isPolyolMass ? polyolHighC.value : glassTransitionC + depositOverGlassK.value;
  return {
    mouldMaxC,
    flavourBelowC: flavourBelowC.value,
    // Acid goes into a mass that still pours.
    acidBetweenC: [Math.max(acidLowC.value, Math.min(floorC, acidHighC.value)), acidHighC.value],
    pourBetweenC: [floorC, Math.max(floorC, Math.min(usualC, hottestC, mouldMaxC ?? hottestC))],
  };
}

function readMouldLimit({ mould }: BatchDocument, ledger: Ledger): number | undefined {
  if (mould === undefined) {
    assume(ledger, '/mould', 'unknown');
    return undefined;
  }
  const kind = take(ledger, '/mould/kind', mould.kind, { value: 'silicone', grade: 'assumed' });
  const usual = MOULD_LIMITS_C[kind];
  if (mould.maxC !== undefined) return mould.maxC;
  assume(ledger, '/mould/maxC', usual ?? 'no-limit', 'practice');
  return usual;
}
