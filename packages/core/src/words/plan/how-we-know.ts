import type { PlanModelId } from '../../job/plan/models.js';
import type { PlanDocument, TakenDefault } from '../../job/plan/types.js';
import { explainAdvice } from '../advice/explain-advice.js';
import { gradeWord } from '../names/grades.js';
import { MODEL_NAMES } from '../names/models.js';
import { placeOf } from '../names/places.js';
import { capitalised, listed } from '../text/fill.js';
import type { DisplayOptions } from '../types.js';
import { formatByKey } from '../units/by-key.js';
import { explain } from '../warnings/explain.js';
import { adviceInOrder } from './answer.js';

/** Each advice with the labels of its ways out. */
export function adviceLines(plan: PlanDocument, options: DisplayOptions): readonly string[] {
  return adviceInOrder(plan).map((advice) => {
    const { severity, title, text, remedies } = explainAdvice(advice, options);
    const ways = remedies.map(({ label }) => `[${label}]`).join(' ');
    return `${severity}: ${title}. ${text} ${ways}`.trim();
  });
}

/** What the plan took for granted; lines of the formula that share a default share a line. */
export function defaultLines(plan: PlanDocument, options: DisplayOptions): readonly string[] {
  const groups: { readonly what: string; readonly lines: string[] }[] = [];
  for (const taken of plan.defaults) {
    const number = /^\/formula\/(\d+)\//.exec(taken.path)?.[1];
    const what = defaultText(taken, options, number === undefined);
    const line = number === undefined ? [] : [String(Number(number) + 1)];
    const known = groups.find(
      (group) => group.what === what && group.lines.length > 0 && line.length > 0,
    );
    if (known === undefined) groups.push({ what, lines: line });
    else known.lines.push(...line);
  }
  return groups.map(({ what, lines }) => {
    if (lines.length === 0) return capitalised(what);
    return `Line${lines.length === 1 ? '' : 's'} ${listed(lines)} of the formula, ${what}`;
  });
}

function defaultText(
  { path, value, low, high, grade }: TakenDefault,
  options: DisplayOptions,
  withPlace: boolean,
): string {
  const { place, field, key } = placeOf(path);
  const shown = (of: number | string | boolean) =>
    typeof of === 'number'
      ? formatByKey(key, of, options)
      : typeof of === 'boolean'
        ? of
          ? 'yes'
          : 'no'
        : of.replaceAll('-', ' ');
  const between =
    low === undefined || high === undefined || low === high
      ? ''
      : `, from ${shown(low)} to ${shown(high)}`;
  const head = !withPlace || field === place ? field : `${place}, ${field}`;
  return `${head}: ${shown(value)}${between} (${gradeWord(grade)}).`;
}

/** What a model said when it was asked beyond what it was tested on. */
export function warningLines(plan: PlanDocument, options: DisplayOptions): readonly string[] {
  return plan.warnings.map((warning) => explain(warning, options));
}

/** Each model the plan rests on: its equation, its sources by their key in the bibliography, its grade. */
export function modelLines(plan: PlanDocument): readonly string[] {
  return (Object.keys(MODEL_NAMES) as PlanModelId[]).flatMap((id) => {
    const model = plan.models[id];
    // What the cook gave is not a model to be believed or not.
    if (model === undefined || id === 'given') return [];
    const sources = model.sources.length === 0 ? '' : ` From: ${model.sources.join(', ')}.`;
    return [
      `${MODEL_NAMES[id]}: ${model.equation.replace(/\.$/, '')}.${sources} ${capitalised(gradeWord(model.grade))}.`,
    ];
  });
}
