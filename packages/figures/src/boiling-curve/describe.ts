import { stageSentence } from 'vitrose/words';
import { stageIdAt } from '../ladder/rung-at.js';
import { printed, temperature } from '../ladder/temperature-words.js';
import type { CurvePoint } from './curve.js';
import { type CurveLayout, curveLayout } from './layout.js';
import type { BoilingCurveState } from './state.js';

/**
 * The boiling curve in words: what a reader hears who does not see it.
 *
 * @param state - The state it is drawn from.
 */
export function describeBoilingCurve(state: BoilingCurveState): string {
  return describeLayout(curveLayout(state));
}

/** The same for a curve that is worked out already. */
export function describeLayout(layout: CurveLayout): string {
  const { points } = layout;
  const [wet, dry] = [points[0], points.at(-1)];
  if (wet === undefined || dry === undefined) return '';
  return `The less water is left, the hotter it boils, and ever more steeply: ${boilWords(layout, wet)}, ${boilWords(layout, dry)}.${markSentence(layout)}${namesSentence(layout)}`;
}

function namesSentence({ ladder }: CurveLayout): string {
  return ladder.namesApply ? '' : ' Stage names do not fit this mass.';
}

function boilWords({ state }: CurveLayout, { waterG, boilsAtC }: CurvePoint): string {
  return `${temperature(boilsAtC, state.units ?? 'c')} with ${printed(waterG, 0)} g of water in 100 g`;
}

function markSentence({ state, mark, ladder }: CurveLayout): string {
  const { markC, units = 'c' } = state;
  if (markC === undefined) return '';
  const at = temperature(markC, units);
  if (mark === undefined) return ` At ${at} the boil tells no water.`;
  const stage = ladder.namesApply ? ` ${stageSentence(stageIdAt(ladder, markC))}` : '';
  return ` ${state.markName ?? 'The batch'} is stopped at ${at} with ${printed(mark.waterG, 1)} g of water left in 100 g.${stage}`;
}
