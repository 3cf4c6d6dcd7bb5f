import { settle } from './claims.js';
import { INTENSE_SWEETENERS } from './nature.js';
import type { Tally } from './tally.js';
import type {
  LabelRule,
  LabelStatement,
  LabelTest,
  NutritionRules,
  StatementRule,
} from './types.js';

/** What the rules want said on the label of this sweet. */
export function statementsFor(
  tally: Tally,
  claims: readonly LabelTest[],
  rules: NutritionRules,
): readonly LabelStatement[] {
  return rules.statements.flatMap((rule) => statementFor(rule, tally, claims) ?? []);
}

function statementFor(
  rule: StatementRule,
  tally: Tally,
  claims: readonly LabelTest[],
): LabelStatement | undefined {
  const { amounts, massFraction } = tally;
  switch (rule.asks) {
    case 'polyols-above': {
      const { value: limitMassFraction } = rule.limitMassFraction;
      const polyolsMassFraction = amounts.polyolsG / 100;
      if (!(settle(polyolsMassFraction) > limitMassFraction)) return undefined;
      const numbers = { polyolsMassFraction, limitMassFraction };
      return { id: 'may-be-laxative', numbers, ...origin(rule.limitMassFraction) };
    }
    case 'sweeteners': {
      const sweetened =
        amounts.polyolsG > 0 || INTENSE_SWEETENERS.some((one) => massFraction(one) > 0);
      if (!sweetened) return undefined;
      const id = tally.sweeteningG > 0 ? 'with-sugars-and-sweeteners' : 'with-sweeteners';
      return { id, numbers: {}, ...origin(rule.rule) };
    }
    case 'aspartame':
      return massFraction('aspartame') > 0
        ? { id: 'source-of-phenylalanine', numbers: {}, ...origin(rule.rule) }
        : undefined;
    case 'sugar-free-not-reduced': {
      const kindOf = (id: LabelTest['id']) => claims.find((claim) => claim.id === id)?.kind;
      const isFree = kindOf('sugar-free') !== undefined && kindOf('sugar-free') !== 'not-met';
      const isLess = kindOf('low-energy') === 'met' || kindOf('reduced-energy') === 'met';
      return isFree && !isLess
        ? { id: 'not-a-reduced-calorie-food', numbers: {}, ...origin(rule.rule) }
        : undefined;
    }
    case 'eaten-in-a-day': {
      const share = massFraction(rule.species);
      if (share === 0) return undefined;
      const { value: limitG } = rule.limitG;
      const numbers = { limitG, reachedByEatingG: limitG / share };
      const { species: subject } = rule;
      return { id: 'laxative-by-the-day', subject, numbers, ...origin(rule.limitG) };
    }
  }
}

function origin({ source, locator, grade }: LabelRule) {
  return { rule: source, locator, grade };
}
