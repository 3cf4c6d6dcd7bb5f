import type { Severity } from '../../job/advice/types.js';
import type { PlanDocument } from '../../job/plan/types.js';
import { explainOnPage, leadingSentence } from '../advice/explain-advice.js';
import type { DisplayOptions } from '../types.js';
import { formatMass } from '../units/amounts.js';
import { countInWords, formatNumber } from '../units/number.js';
import { formatReading, formatTemperature } from '../units/temperature.js';
import { shownAt, stopText, windowText } from './stop-figures.js';
import type { AnswerLine, SectionId } from './types.js';

/** The five lines a cook needs first; everything else opens from the line it explains. */
export function answerOf(plan: PlanDocument, options: DisplayOptions): readonly AnswerLine[] {
  return [
    line('stop', 'Stop at', stopLine(plan, options), ['kitchen', 'steps', 'time', 'models']),
    line('weighs', 'Pan weighs', weighsLine(plan, options), ['composition', 'steps']),
    line('makes', 'Makes', makesLine(plan, options), ['formula', 'windows', 'yield', 'label']),
    line('keeps', 'Keeps', keepsLine(plan, options), ['keeping', 'acid']),
    line('watch', 'Watch', watchLine(plan, options), ['advice', 'steps', 'cautions']),
  ];
}

/** The most pressing advice first; the order of the plan among equals. */
export function adviceInOrder(plan: PlanDocument): PlanDocument['advice'] {
  const order: readonly Severity[] = ['danger', 'will-fail', 'may-disappoint', 'note'];
  return order.flatMap((severity) => plan.advice.filter((advice) => advice.severity === severity));
}

function line(
  id: AnswerLine['id'],
  label: string,
  text: string,
  opens: readonly SectionId[],
): AnswerLine {
  return { id, label, text, opens };
}

function stopLine(plan: PlanDocument, options: DisplayOptions): string {
  const { asked } = plan.target;
  const rests =
    asked === 'moisture' || asked === 'glass-transition'
      ? ' This one rests on the model. Weigh the pan as well.'
      : '';
  return `${stopText(plan, options)} on your thermometer, between ${windowText(plan, options)}.${rests}`;
}

function weighsLine({ pan }: PlanDocument, options: DisplayOptions): string {
  return pan.grossAtStopG === undefined
    ? `${formatMass(pan.weighsAtStopG.value, options)} more than empty.`
    : `${formatMass(pan.grossAtStopG.value, options)} with everything.`;
}

function makesLine(plan: PlanDocument, options: DisplayOptions): string {
  const { pieces, pieceG, piecesG, pours } = plan.yield;
  if (pieces === undefined || pieceG === undefined)
    return `${formatMass(piecesG.value, options)} in all.`;
  const count = formatNumber(pieces.value, 0, options);
  const of = `${count} piece${count === '1' ? '' : 's'} of ${formatMass(pieceG.value, options)}`;
  return pours === undefined ? `${of}.` : `${of}, ${poursText(pours, options)}.`;
}

function poursText(
  { full, rest, cavities }: NonNullable<PlanDocument['yield']['pours']>,
  options: DisplayOptions,
): string {
  if (full === 0)
    return `in ${formatNumber(rest, 0, options)} of ${formatNumber(cavities, 0, options)} cavities`;
  const fills = `${countInWords(full, options)} fill${full === 1 ? '' : 's'} of ${formatNumber(cavities, 0, options)}`;
  return rest === 0 ? `in ${fills}` : `in ${fills} and ${formatNumber(rest, 0, options)} more`;
}

function keepsLine({ keeping }: PlanDocument, options: DisplayOptions): string {
  const glass = formatTemperature(keeping.glassTransitionC.value, options);
  return keeping.glassTransitionC.value >= keeping.storeC
    ? `hard up to about ${glass}; wrap within half an hour.`
    : `hard only up to about ${glass}, and your store is at ${formatReading(keeping.storeC, 0, options)}.`;
}

function watchLine(plan: PlanDocument, options: DisplayOptions): string {
  const [first] = adviceInOrder(plan);
  if (first === undefined)
    return 'the last degrees: they come fast. Turn the heat down early and stay with the pan.';
  const shown = shownAt(plan, first, options);
  const { severity, title, remedies } = explainOnPage(first, options, shown);
  const grave =
    first.severity === 'danger' || first.severity === 'will-fail' ? `${severity}: ` : '';
  const [way] = remedies;
  return [
    `${grave}${title}.`,
    leadingSentence(first, options, shown),
    way === undefined ? '' : `[${way.label}]`,
  ]
    .filter((part) => part !== '')
    .join(' ');
}
