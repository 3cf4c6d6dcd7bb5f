import { stagesApply } from '../../models/stages/index.js';
import { glassAt } from '../plan/curve.js';
import type { AdviceContext } from './context.js';
import { cookTo } from './hardness.js';
import { remedy } from './remedy.js';
import { ADVICE_THRESHOLDS } from './thresholds.js';
import type { Advice } from './types.js';

/** A stage is a texture of sugar; a polyol at the same solids is another material. */
export function stageNamesDoNotApply(context: AdviceContext): Advice | undefined {
  const { batch, pots, target, keeping, curve } = context;
  if (!('toStage' in batch.cook) || target.stageNamesApply) return undefined;
  const { sugarAndSyrupShare, polyolShare } = stagesApply(pots.base);
  const hardestC = curve?.knee.glassTransitionC ?? glassAt(pots.base, pots.late, 0.01);
  const glassTransitionC = Math.min(
    Math.round(keeping.storeC + ADVICE_THRESHOLDS.reserveNoteK.value),
    Math.floor(hardestC),
  );
  return {
    code: 'stage-names-do-not-apply',
    severity: 'note',
    path: '/cook/toStage',
    numbers: {
      sugarAndSyrupShare,
      polyolShare,
      glassTransitionC: keeping.glassTransitionC.value,
    },
    names: { stage: batch.cook.toStage },
    remedies: [
      remedy('ask-for-a-glass-point', [cookTo({ toGlassTransitionC: glassTransitionC }, context)], {
        glassTransitionC,
      }),
    ],
  };
}
