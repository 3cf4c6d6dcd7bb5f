import type { CautionId, PlanDocument, PlannedStep } from '../../job/plan/types.js';
import { caution } from '../cautions/caution.js';
import { ingredientName } from '../names/ingredients.js';
import { coldWaterDrop, isStage } from '../stages/stage-name.js';
import { fillAll, listed } from '../text/fill.js';
import type { DisplayOptions } from '../types.js';
import { formatMass } from '../units/amounts.js';
import { flameWords } from './flame-words.js';
import { type ThingToWeigh, thingsToWeigh } from './lines.js';
import { STEP_WORDS } from './step-words.js';
import { stopText, windowText } from './stop-figures.js';

/** The three at the top, in full. */
export function topCautionLines(plan: PlanDocument, options: DisplayOptions): readonly string[] {
  return atTop(plan).map((id) => inFull(plan, id, options));
}

/** Cautions that stand neither at the top nor in a step. */
export function otherCautionLines(plan: PlanDocument, options: DisplayOptions): readonly string[] {
  const said = [...atTop(plan), ...plan.steps.flatMap(({ cautions }) => cautions)];
  return plan.cautions
    .filter(({ id }) => !said.includes(id))
    .map(({ id }) => inFull(plan, id, options));
}

/** The steps, numbered, each with its cautions: in full the first time on the page, then by name. */
export function stepLines(plan: PlanDocument, options: DisplayOptions): readonly string[] {
  const said = [...atTop(plan)];
  return plan.steps.flatMap((step, index) => {
    const cautions = step.cautions.map((id) => {
      const first = !said.includes(id);
      said.push(id);
      return `    ! ${first ? inFull(plan, id, options) : `${titleOf(id, options)}.`}`;
    });
    return [`${String(index + 1).padStart(2)}. ${stepText(plan, step, options)}`, ...cautions];
  });
}

/** More than three at the top and none is read. */
function atTop(plan: PlanDocument): readonly CautionId[] {
  return plan.cautions
    .filter((planned) => planned.atTop)
    .slice(0, 3)
    .map(({ id }) => id);
}

function stepText(plan: PlanDocument, step: PlannedStep, options: DisplayOptions): string {
  const handled = thingsToWeigh(plan.formula.filter(({ path }) => step.lines.includes(path)));
  const { stageAtStop } = plan.target;
  const late = handled.filter(({ line }) => line.when !== 'start');
  const names: Record<string, string> = {
    stop: stopText(plan, options),
    window: windowText(plan, options),
  };
  if (handled.length > 0) names.lines = listed(handled.map((thing) => thingText(thing, options)));
  if (late.length > 0 && late.length < handled.length) {
    names.late = listed(late.map(({ line }) => ingredientName(line.ingredient, options)));
  }
  if (stageAtStop !== undefined && isStage(stageAtStop.id))
    names.coldWater = coldWaterDrop(stageAtStop.id, options);
  if (step.numbers.flameShare !== undefined) names.flame = flameWords(step.numbers.flameShare);
  return fillAll(STEP_WORDS[step.id], { numbers: numbersOf(plan, step), names }, options);
}

/** A warm room is told where it is too warm, and minutes only where the hob is known. */
function numbersOf({ cooking }: PlanDocument, { numbers }: PlannedStep): PlannedStep['numbers'] {
  const { atMin, ...others } = numbers;
  const { demouldBelowC, wrapBelowC, roomC = Number.NEGATIVE_INFINITY } = others;
  const isTooWarm = roomC > (demouldBelowC ?? wrapBelowC ?? roomC);
  return {
    ...others,
    ...(isTooWarm ? { warmRoomC: roomC } : {}),
    ...(atMin === undefined || cooking?.hobIsAssumed ? {} : { atMin }),
  };
}

function thingText({ massG, line }: ThingToWeigh, options: DisplayOptions): string {
  return `${formatMass(massG, options)} ${ingredientName(line.ingredient, options)}`;
}

function titleOf(id: CautionId, options: DisplayOptions): string {
  return caution(id, options).title;
}

function inFull(plan: PlanDocument, id: CautionId, options: DisplayOptions): string {
  const { mouldMaxC } = plan.pour;
  const numbers = {
    ...(mouldMaxC === undefined ? {} : { mouldMaxC }),
    ...plan.cautions.find((planned) => planned.id === id)?.numbers,
  };
  const { title, text, defer } = caution(id, { ...options, numbers });
  return [`${title}.`, text, defer].filter((part) => part !== undefined && part !== '').join(' ');
}
