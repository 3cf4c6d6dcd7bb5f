import type { JSX } from 'preact';
import { Figure } from '../figure/figure.js';
import { sugarRuleGeometry } from './geometry.js';
import type { SugarRuleState } from './state.js';
import { drawRule, SUGAR_RULE_QUESTION } from './sugar-rule-drawing.js';
import { sugarRuleTable } from './table.js';

const NOTES = [
  'Left out: what fat, oil and pigment do; the head of a deep pan (0.4 °C for 10 cm); minutes, which colour sugar as much as degrees do. The charts the stages come from share one ancestry: that they agree is not accuracy.',
  'Stages: medians of seven published charts, an estimate; clear and brown liquid: McGee, On Food and Cooking, 2004, quoted in print. Degrees: this library’s boiling model, an estimate.',
];

/**
 * A slide rule standing upright: textures that stay, degrees that slide down as one climbs.
 *
 * @param state - What it is drawn from; nothing else is looked at, and nothing is kept.
 */
export function SugarRule(state: SugarRuleState): JSX.Element {
  const geometry = sugarRuleGeometry(state);
  const drawing = drawRule(geometry);
  if (state.compact) return drawing;
  return (
    <Figure
      id={state.id}
      question={SUGAR_RULE_QUESTION}
      notes={NOTES}
      table={sugarRuleTable(geometry)}
    >
      {drawing}
    </Figure>
  );
}
