import type { CautionId, PlanDocument } from 'vitrose';
import { type Caution, caution, type DescribedPlan } from 'vitrose/words';
import type { Manner } from './read/types.js';

/** A step of the plan with the cautions of its moment. */
export type StepLine = {
  readonly id: string;
  readonly text: string;
  readonly cautions: readonly Caution[];
};

const NUMBERED = /^\s*\d+\. (.*)$/;

/** The steps in words, each with its cautions ready to read. */
export function stepLines(
  plan: PlanDocument,
  described: DescribedPlan,
  manner: Manner,
): readonly StepLine[] {
  const lines = described.sections.find(({ id }) => id === 'steps')?.lines ?? [];
  const texts = lines.flatMap((line) => NUMBERED.exec(line)?.[1] ?? []);
  return plan.steps.map((step, at) => ({
    id: step.id,
    text: texts[at] ?? '',
    cautions: step.cautions.map((id) => cautionOf(plan, id, manner)),
  }));
}

/** The at most three that can do the most harm here. */
export function topCautions(plan: PlanDocument, manner: Manner): readonly Caution[] {
  return plan.cautions
    .filter(({ atTop }) => atTop)
    .slice(0, 3)
    .map(({ id }) => cautionOf(plan, id, manner));
}

/** Cautions that stand neither at the top nor in a step. */
export function otherCautions(plan: PlanDocument, manner: Manner): readonly Caution[] {
  const inSteps = plan.steps.flatMap(({ cautions }) => cautions);
  return plan.cautions
    .filter(({ id, atTop }) => !atTop && !inSteps.includes(id))
    .map(({ id }) => cautionOf(plan, id, manner));
}

function cautionOf(plan: PlanDocument, id: CautionId, manner: Manner): Caution {
  const { mouldMaxC } = plan.pour;
  const numbers = {
    ...(mouldMaxC === undefined ? {} : { mouldMaxC }),
    ...plan.cautions.find((planned) => planned.id === id)?.numbers,
  };
  return caution(id, { ...manner, numbers });
}
