import type { Aim, BatchDocument, BatchTarget, PlanDocument, StageId } from 'vitrose';

/** The four ways to say where to stop, as the page offers them. */
export const TARGET_KINDS = ['stage', 'printed', 'moisture', 'glass'] as const;

/** One of them. */
export type TargetKind = (typeof TARGET_KINDS)[number];

/** Which way this batch says it. */
export function targetKindOf({ cook }: BatchDocument): TargetKind {
  if ('toStage' in cook) return 'stage';
  if ('toSeaLevelC' in cook) return 'printed';
  return 'toMoistureMassFraction' in cook ? 'moisture' : 'glass';
}

/** The batch with another target; what a gauge shows stays. */
export function withTarget(batch: BatchDocument, target: BatchTarget): BatchDocument {
  const { underVacuumPa } = batch.cook;
  return { ...batch, cook: underVacuumPa === undefined ? target : { ...target, underVacuumPa } };
}

/** A stage with the place in its range; the middle needs no word in the document. */
export function stageTargetOf(toStage: StageId, aim: Aim): BatchTarget {
  return aim === 'middle' ? { toStage } : { toStage, aim };
}

/**
 * The same stop said in another way, as near as a round number comes to it, so that changing the
 * question does not change the sweet.
 */
export function targetOfKind(kind: TargetKind, plan: PlanDocument | undefined): BatchTarget {
  switch (kind) {
    case 'stage': {
      const id = plan?.target.stageAtStop?.id;
      return { toStage: STAGES.find((stage) => stage === id) ?? 'hard-crack' };
    }
    case 'printed':
      return { toSeaLevelC: Math.round(plan?.target.seaLevelC.value ?? 148) };
    case 'moisture': {
      const moisture = plan?.composition.moistureMassFraction.value ?? 0.025;
      return { toMoistureMassFraction: Math.max(0.005, Math.round(moisture * 1000) / 1000) };
    }
    case 'glass':
      return { toGlassTransitionC: Math.round(plan?.keeping.glassTransitionC.value ?? 40) };
  }
}

/** Stages a sweet can be stopped at, in order. */
export const STAGES = [
  'thread',
  'soft-ball',
  'firm-ball',
  'hard-ball',
  'soft-crack',
  'hard-crack',
  'clear-liquid',
  'brown-liquid',
] as const satisfies readonly StageId[];
