import { type BatchDocument, type PlanDocument, planBatch } from 'vitrose';

/** The plan of a batch that can be; a refusal is told whole. */
export function planOf(batch: BatchDocument): PlanDocument {
  const result = planBatch(batch);
  if (result.kind === 'refused') throw new Error(JSON.stringify(result.problems));
  return result.plan;
}

/** Water and dry solids of everything weighed, g. */
export function weighedOf(batch: BatchDocument): {
  readonly waterG: number;
  readonly drySolidsG: number;
} {
  const { formula } = planOf(batch);
  return {
    waterG: formula.reduce((sum, line) => sum + line.waterG, 0),
    drySolidsG: formula.reduce((sum, line) => sum + line.drySolidsG, 0),
  };
}
