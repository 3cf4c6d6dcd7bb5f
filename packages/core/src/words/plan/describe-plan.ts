import type { PlanDocument } from '../../job/plan/types.js';
import { isUs } from '../text/region.js';
import type { DisplayOptions } from '../types.js';
import { acidLines } from './acid-section.js';
import { answerOf } from './answer.js';
import { defaultLines } from './defaults-section.js';
import { adviceLines, modelLines, warningLines } from './how-we-know.js';
import { keepingLines } from './keeping-section.js';
import { kitchenLines } from './kitchen-section.js';
import { labelLines } from './label-section.js';
import { compositionLines, formulaLines, yieldLines } from './mass-sections.js';
import { pageOf } from './page.js';
import { otherCautionLines, stepLines, topCautionLines } from './steps-section.js';
import { timeLines } from './time-section.js';
import type { DescribedPlan, Section, SectionId } from './types.js';
import { windowLines } from './windows-section.js';

/**
 * A plan in words: five lines first, then everything that opens from them.
 *
 * The window of a number stands beside it; how far a model may be off stands only where the number
 * is opened. Temperatures are whole degrees unless the window is narrower than three; water is never
 * finer than a tenth of a per cent.
 *
 * @param plan - What `planBatch` answers.
 * @param options - Units (`metric` puts °C first, `us` °F, with ounces beside the grams), region
 *   (hard candy or boiled sweets) and locale.
 * @returns the five lines, the sections, and the whole as a plain page of 78 columns.
 * @example
 * const answer = planBatch({
 *   format: 'vitrose.batch/1',
 *   formula: [{ ingredient: 'sucrose', massG: 200 }, { ingredient: 'water', massG: 70 }],
 *   cook: { toSeaLevelC: 148 },
 * });
 * answer.kind === 'plan' ? describePlan(answer.plan).answer.map(({ label }) => label) : []
 * // ['Stop at', 'Pan weighs', 'Makes', 'Keeps', 'Watch']
 */
export function describePlan(plan: PlanDocument, options: DisplayOptions = {}): DescribedPlan {
  const sections = sectionsOf(plan, options);
  const isThere = (id: SectionId) => sections.some((section) => section.id === id);
  const answer = answerOf(plan, options).map((line) => ({
    ...line,
    opens: line.opens?.filter(isThere),
  }));
  const name = plan.name ?? (isUs(options) ? 'Hard candy' : 'Boiled sweets');
  return { answer, sections, text: pageOf(name, answer, sections) };
}

function sectionsOf(plan: PlanDocument, options: DisplayOptions): readonly Section[] {
  const section = (id: SectionId, title: string, lines: readonly string[]): readonly Section[] =>
    lines.length === 0 ? [] : [{ id, title, lines }];
  return [
    ...section('cautions', 'Before anything is hot', topCautionLines(plan, options)),
    ...section('advice', 'What to change', adviceLines(plan, options)),
    ...section('formula', 'Formula', formulaLines(plan, options)),
    ...section('kitchen', 'The stop in your kitchen', kitchenLines(plan, options)),
    ...section('composition', 'What it is made of', compositionLines(plan, options)),
    ...section('steps', 'Steps', stepLines(plan, options)),
    ...section('time', 'Against the clock', timeLines(plan, options)),
    ...section('acid', 'Acid and sugar', acidLines(plan, options)),
    ...section('windows', 'What it does at which temperature', windowLines(plan, options)),
    ...section('yield', 'What comes out', yieldLines(plan, options)),
    ...section('keeping', 'How it keeps', keepingLines(plan, options)),
    ...section('label', 'For the label', labelLines(plan, options)),
    ...section('more-cautions', 'Buying, giving, keeping', otherCautionLines(plan, options)),
    ...section('defaults', 'Taken for granted', defaultLines(plan, options)),
    ...section('warnings', 'Asked beyond what was tested', warningLines(plan, options)),
    ...section('models', 'How we know', modelLines(plan, options)),
  ];
}
