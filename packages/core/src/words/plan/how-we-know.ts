import type { PlanModelId } from '../../job/plan/models.js';
import type { PlanDocument } from '../../job/plan/types.js';
import { explainAdvice } from '../advice/explain-advice.js';
import { gradeWord } from '../names/grades.js';
import { MODEL_NAMES } from '../names/models.js';
import { capitalised } from '../text/fill.js';
import type { DisplayOptions } from '../types.js';
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

/** What a model said when it was asked beyond what it was tested on. */
export function warningLines(plan: PlanDocument, options: DisplayOptions): readonly string[] {
  const lines = plan.warnings.map((warning) => explain(warning, options));
  // Two models that do not know the same thing say it in the same words.
  return lines.filter((line, index) => lines.indexOf(line) === index);
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
