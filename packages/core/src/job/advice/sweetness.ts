import { isNone } from '../../foundation/results/is-none.js';
import { boosterForSweetness } from '../../models/sweetness/index.js';
import { tidyGrams } from '../changes/tidy-grams.js';
import type { AdviceContext } from './context.js';
import { remedy } from './remedy.js';
import { ADVICE_THRESHOLDS } from './thresholds.js';
import type { Advice } from './types.js';

/** Start at half of what the numbers ask for, and taste: common practice. */
const START_AT = 0.5;

/** A sweet of sugar alcohols is seldom as sweet as sugar. */
export function lessSweetThanSugar({
  lines,
  finished,
  isPolyolMass,
  taste,
}: AdviceContext): Advice | undefined {
  const { relativeSweetness } = taste;
  const { dullSweetness } = ADVICE_THRESHOLDS;
  const has = lines.some(({ record, massG }) => record.kind === 'intense-sweetener' && massG > 0);
  if (!isPolyolMass || has || relativeSweetness.value >= dullSweetness.value) return undefined;
  const booster = boosterForSweetness(finished, {
    sweetener: 'acesulfame-k',
    targetRelativeSweetness: 1,
  });
  const massG = isNone(booster) ? 0 : tidyGrams(booster.massG * START_AT);
  return {
    code: 'less-sweet-than-sugar',
    severity: 'note',
    path: '/formula',
    numbers: { sweetness: relativeSweetness.value },
    remedies:
      massG <= 0
        ? []
        : [
            remedy(
              'add-acesulfame',
              [{ path: '/formula/-', value: { ingredient: 'acesulfame-k', massG } }],
              { acesulfameG: massG },
            ),
          ],
  };
}
