import type { PlanModelId } from '../../job/plan/models.js';
import type { PlanDocument } from '../../job/plan/types.js';
import { explainOnPage } from '../advice/explain-advice.js';
import { gradeWord } from '../names/grades.js';
import { MODEL_NAMES } from '../names/models.js';
import { shortCitation } from '../names/short-citations.js';
import { capitalised, listed } from '../text/fill.js';
import { spelled } from '../text/region.js';
import type { DisplayOptions } from '../types.js';
import { explain } from '../warnings/explain.js';
import { adviceInOrder } from './answer.js';
import { shownAt } from './stop-figures.js';

/** Each advice with the labels of its ways out. */
export function adviceLines(plan: PlanDocument, options: DisplayOptions): readonly string[] {
  return adviceInOrder(plan).map((advice) => {
    const { severity, title, text, remedies } = explainOnPage(
      advice,
      options,
      shownAt(plan, advice, options),
    );
    const ways = remedies.map(({ label }) => `[${label}]`).join(' ');
    return `${severity}: ${title}. ${text} ${ways}`.trim();
  });
}

/** What a model said when it was asked beyond what it was tested on. */
export function warningLines(plan: PlanDocument, options: DisplayOptions): readonly string[] {
  const lines = plan.warnings.map((warning) => explain(warning, options));
  // Two models that do not know the same thing say it in the same words.
  return lines.filter((line, index) => lines.indexOf(line) === index);
}

/** Each model the plan rests on: its equation, its sources by authors and year, its grade. */
export function modelLines(plan: PlanDocument, options: DisplayOptions): readonly string[] {
  return (Object.keys(MODEL_NAMES) as PlanModelId[]).flatMap((id) => {
    const model = plan.models[id];
    // What the cook gave is not a model to be believed or not.
    if (model === undefined || id === 'given') return [];
    const grade = gradeWord(model.grade);
    // Common practice from common practice is said once.
    const sources = model.sources.map(shortCitation).filter((source) => source !== grade);
    const from = sources.length === 0 ? '' : ` From: ${listed(sources)}.`;
    const equation = spelled(model.equation.replace(/\.$/, ''), options);
    return [`${spelled(MODEL_NAMES[id], options)}: ${equation}.${from} ${capitalised(grade)}.`];
  });
}
