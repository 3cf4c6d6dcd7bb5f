import type { Span } from '../../foundation/results/types.js';
import type { Tally } from './tally.js';
import type {
  AnalysisReason,
  ClaimCondition,
  ClaimPortion,
  ClaimRule,
  DoseTest,
  LabelTest,
  NutritionRules,
  Passes,
} from './types.js';

/** What a claim is measured on and beside. */
export type ClaimQuestion = {
  readonly tally: Tally;
  readonly rules: NutritionRules;
  readonly referenceG: number;
  readonly servingG: number | undefined;
  /** The sweet it is compared with, of 100 g; its sugars only where a sweet was named. */
  readonly beside: { readonly energyKcal: number; readonly sugarsG: number | undefined };
};

type Measured = { readonly value: number; readonly band: Span };

/** Every claim of the rules that can be asked here. */
export function testClaims(question: ClaimQuestion): readonly LabelTest[] {
  return question.rules.claims.flatMap((rule) => testClaim(rule, question) ?? []);
}

function testClaim(rule: ClaimRule, question: ClaimQuestion): LabelTest | undefined {
  const tests: LabelTest[] = [];
  for (const condition of rule.conditions) {
    const portionG = portionOf(condition.per, question);
    if (portionG === undefined) continue;
    const measured = measure(condition, portionG, question);
    // A saving beside nothing is no question.
    if (measured === undefined) return undefined;
    tests.push(judge(rule, condition, measured, question));
  }
  return deciding(tests);
}

/** The first that fails; then what needs an analysis; then the one with least room. */
function deciding(tests: readonly LabelTest[]): LabelTest | undefined {
  const room = ({ value, limit }: LabelTest) => Math.abs(value - limit) / (limit === 0 ? 1 : limit);
  return (
    tests.find(({ kind }) => kind === 'not-met') ??
    tests.find(({ kind }) => kind === 'needs-analysis') ??
    tests.reduce<LabelTest | undefined>(
      (least, one) => (least === undefined || room(one) < room(least) ? one : least),
      undefined,
    )
  );
}

function portionOf(per: ClaimPortion, question: ClaimQuestion): number | undefined {
  const { referenceG, servingG, rules } = question;
  if (per === '100G') return 100;
  if (per === 'reference') return referenceG;
  if (per === 'serving') return servingG;
  return referenceG <= rules.smallReferenceG.value ? 50 : undefined;
}

function measure(
  { quantity }: ClaimCondition,
  portionG: number,
  { tally, beside }: ClaimQuestion,
): Measured | undefined {
  const { energyKcal, energyKcalBand, sugarsG } = tally.amounts;
  const times = portionG / 100;
  const exact = (value: number): Measured => ({ value, band: [value, value] });
  switch (quantity) {
    case 'energyKcal':
      return {
        value: energyKcal * times,
        band: [energyKcalBand[0] * times, energyKcalBand[1] * times],
      };
    case 'sugarsG':
      return exact(sugarsG * times);
    case 'sweeteningG':
      return exact(tally.sweeteningG * times);
    case 'sugarsSavedShare':
      return beside.sugarsG === undefined || beside.sugarsG === 0
        ? undefined
        : exact(1 - sugarsG / beside.sugarsG);
    case 'energySavedShare': {
      if (beside.energyKcal === 0) return undefined;
      const saved = (kcal: number) => 1 - kcal / beside.energyKcal;
      const [low, high] = energyKcalBand;
      return { value: saved(energyKcal), band: [saved(high), saved(low)] };
    }
  }
}

function judge(
  { id }: ClaimRule,
  { quantity, per, passes, limit }: ClaimCondition,
  { value, band }: Measured,
  { tally }: ClaimQuestion,
): LabelTest {
  const isMet = keeps(value, passes, limit.value);
  const worst = passes === 'at-least' ? band[0] : band[1];
  let because: AnalysisReason | undefined;
  if (isMet && !keeps(worst, passes, limit.value)) because = 'limit-lies-in-the-band';
  // Heat and acid split isomalt: a mass that began without sugar can end with some.
  else if (isMet && quantity === 'sugarsG' && tally.massFraction('isomalt') > 0) {
    because = 'isomalt-may-free-sugar';
  }
  return {
    id,
    kind: !isMet ? 'not-met' : because === undefined ? 'met' : 'needs-analysis',
    because,
    quantity,
    per,
    passes,
    value,
    limit: limit.value,
    rule: limit.source,
    locator: limit.locator,
    grade: limit.grade,
  };
}

function keeps(value: number, passes: Passes, limit: number): boolean {
  const settled = settle(value);
  if (passes === 'below') return settled < limit;
  return passes === 'at-most' ? settled <= limit : settled >= limit;
}

/** A value without the last binary digits of its sums: 0.49999999999999994 is a half. */
export function settle(value: number): number {
  return Math.round(value * 1e9) / 1e9;
}

/** Substances with a legal limit, where the sweet holds any. */
export function testDoses({ massFraction }: Tally, rules: NutritionRules): readonly DoseTest[] {
  return rules.doses.flatMap(({ species, limitMassFraction: limit }) => {
    const share = massFraction(species);
    if (share === 0) return [];
    return [
      {
        species,
        kind: keeps(share, 'at-most', limit.value) ? ('within' as const) : ('over' as const),
        massFraction: share,
        limitMassFraction: limit.value,
        rule: limit.source,
        locator: limit.locator,
        grade: limit.grade,
      },
    ];
  });
}
