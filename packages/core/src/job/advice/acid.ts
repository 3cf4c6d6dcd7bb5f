import type { AdviceContext } from './context.js';
import { remedy } from './remedy.js';
import { ADVICE_THRESHOLDS } from './thresholds.js';
import type { Advice } from './types.js';

/**
 * Acid in the boil turns sugar into softer sugars. Judged by the least that can have happened, so
 * that no alarm rests on the estimate for dry masses alone. Cream of tartar is meant for the boil.
 */
export function acidTooEarly({ lines, early, inversion }: AdviceContext): Advice | undefined {
  const { earlyInvertMay, earlyInvertFails } = ADVICE_THRESHOLDS;
  const acids = lines.filter(
    ({ id, record, late, massG }) =>
      record.kind === 'acid' && id !== 'cream-of-tartar' && !late && massG > 0,
  );
  if (acids.length === 0 || early === undefined || inversion === undefined) return undefined;
  const least = early.band[0];
  if (least <= earlyInvertMay.value) return undefined;
  return {
    code: 'acid-too-early',
    severity: least > earlyInvertFails.value ? 'will-fail' : 'may-disappoint',
    path: acids[0]?.path,
    numbers: {
      invertedFraction: early.fraction,
      costsK: inversion.earlyCostsK,
    },
    remedies: [
      remedy(
        'acid-at-the-end',
        acids.map(({ path }) => ({ path: `${path}/when`, value: 'off-heat' })),
      ),
    ],
  };
}
