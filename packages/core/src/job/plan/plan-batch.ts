import { totalG } from '../../matter/mixture/assemble.js';
import { adviseOn } from '../advice/index.js';
import { checkNumbers } from '../batch/limits.js';
import type { Problem } from '../batch/problems.js';
import type { BatchDocument } from '../batch/types.js';
import { newLedger } from '../ledger.js';
import { planCautions } from './cautions.js';
import { modelNotes, modelsNamed } from './model-notes.js';
import { noteUnused } from './not-given.js';
import { planNumbers } from './numbers.js';
import { settle } from './settle.js';
import { planSteps } from './steps.js';
import type { PlanDocument } from './types.js';

/** What `planBatch` answers. */
export type PlanResult =
  | { readonly kind: 'plan'; readonly plan: PlanDocument }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] };

/**
 * Plans a batch: where to stop on this thermometer, what the pan then weighs, how many pieces it
 * makes, whether they keep, in which order to do it, and what may go wrong.
 *
 * The plan holds no clock: the same batch gives the same plan. Every default it took is listed in
 * `defaults`. Late water is counted as kept, the wet bound; its band reaches down to none kept.
 *
 * @param batch - What the cook has and wants, as `readBatch` of `vitrose/documents` returns it.
 * @returns the plan, or every problem that stands in the way, each with its path.
 * @example
 * const result = planBatch({
 *   format: 'vitrose.batch/1',
 *   formula: [
 *     { ingredient: 'sucrose', massG: 240 },
 *     { ingredient: 'glucose-syrup', massG: 200 },
 *     { ingredient: 'water', massG: 80 },
 *   ],
 *   cook: { toSeaLevelC: 148 },
 *   kitchen: { elevationM: 1500 },
 * });
 * result.kind === 'plan' && Math.round(result.plan.target.readingC.value) // 142
 */
export function planBatch(batch: BatchDocument): PlanResult {
  const ledger = newLedger();
  ledger.problems.push(...checkNumbers(batch));
  const settled = ledger.problems.length > 0 ? undefined : settle(batch, ledger);
  if (settled === undefined) return { kind: 'refused', problems: ledger.problems };
  const numbers = planNumbers(settled, ledger);
  noteUnused(batch, ledger);
  const { polyols, kitchen, pan, target, pour, keeping } = numbers;
  const { lines, stop, outcome, firstBoil, pots, finished, polyolShare } = settled;
  const firstBoilC = firstBoil.boilingPointC;
  const advice = adviseOn({
    ...settled,
    ...numbers,
    kitchen: settled.kitchen,
    firstBoilC,
    lateWaterG: pots.late?.waterG ?? 0,
    causeMattersK: kitchen.causeMattersK,
  });
  const acidG = totalG(lines.filter(({ record }) => record.kind === 'acid'));
  const cautions = planCautions({
    lines,
    finished,
    stopC: stop.hereC,
    underVacuum: (batch.cook.underVacuumPa ?? 0) > 0,
    polyolShare,
    acidShare: acidG / outcome.finishedG,
    childShare: polyols?.childShare?.value,
  });
  const steps = planSteps({
    lines,
    pour,
    firstBoilC,
    stopReadingC: target.readingC.value,
    weighsAtStopG: pan.weighsAtStopG.value,
    grossAtStopG: pan.grossAtStopG?.value,
    glassTransitionC: keeping.glassTransitionC.value,
    storeC: keeping.storeC,
    roomC: batch.room?.temperatureC ?? keeping.storeC,
    cooking: numbers.cooking,
    onSlab: batch.mould?.kind === 'slab',
    cautions: new Set(cautions.map(({ id }) => id)),
  });
  return {
    kind: 'plan',
    plan: {
      format: 'vitrose.plan/1',
      name: batch.name,
      ...numbers,
      steps,
      cautions,
      advice,
      warnings: ledger.warnings,
      defaults: ledger.defaults,
      models: modelNotes(modelsNamed(numbers)),
    },
  };
}
