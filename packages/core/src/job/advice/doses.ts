import { tidyGrams } from '../changes/tidy-grams.js';
import { POUR_RULES } from '../plan/pour.js';
import { lineIndex, scaleLine } from './amounts.js';
import type { AdviceContext } from './context.js';
import { remedy } from './remedy.js';
import { ADVICE_THRESHOLDS } from './thresholds.js';
import type { Advice } from './types.js';

/** Above this a sweet weeps and the mouth gets sore. */
export function muchAcid({ lines, outcome }: AdviceContext): Advice | undefined {
  const acids = lines.filter(({ record, massG }) => record.kind === 'acid' && massG > 0);
  const acidShare =
    acids.reduce((sum, { massG, drySolids }) => sum + massG * drySolids.value, 0) /
    outcome.finishedG;
  const limitShare = ADVICE_THRESHOLDS.acidShare.value;
  if (acidShare <= limitShare) return undefined;
  const factor = (0.99 * limitShare * (1 - acidShare)) / (acidShare * (1 - limitShare));
  return {
    code: 'much-acid',
    severity: 'may-disappoint',
    path: acids[0]?.path,
    numbers: { acidShare, limitShare },
    remedies: [
      remedy(
        'less-acid',
        acids.map(({ line, path }) => scaleLine(line, lineIndex(path), factor)),
        { limitShare },
      ),
    ],
  };
}

/** Spoons are poor for what works in grams. */
export function weighThisOne({ lines }: AdviceContext): readonly Advice[] {
  return lines
    .filter(
      ({ record, line, massG }) =>
        ['acid', 'intense-sweetener', 'salt'].includes(record.kind) &&
        'measure' in line &&
        massG > 0 &&
        !isWeight(line.measure.unit),
    )
    .map(({ id, path, massG, spread }) => ({
      code: 'weigh-this-one' as const,
      severity: 'note' as const,
      path,
      numbers: { massG, lowG: massG * spread.low, highG: massG * spread.high },
      names: { ingredient: id },
      remedies: [
        remedy(
          'weigh-it',
          [
            { path: `${path}/measure`, value: null },
            { path: `${path}/massG`, value: tidyGrams(massG) },
          ],
          { massG },
        ),
      ],
    }));
}

function isWeight(unit: string): boolean {
  return unit === 'kg' || unit === 'oz' || unit === 'lb';
}

/** Some sweeteners break down in a mass this hot. */
export function heatSpoilsSweetener({
  lines,
  stop,
  pour,
  isPolyolMass,
}: AdviceContext): readonly Advice[] {
  return lines.flatMap(({ id, path, record, late, when, massG }): Advice[] => {
    const limit = record.maxAdditionC?.value;
    if (record.kind !== 'intense-sweetener' || limit === undefined || massG <= 0) return [];
    // Whatever is in the pan at the stop gets as hot as the stop; what comes late must still pour.
    const additionC = late
      ? Math.max(pour.pourBetweenC[0], isPolyolMass ? POUR_RULES.polyolLowC.value : 0)
      : Math.max(stop.hereC, typeof when === 'object' ? when.atC : 0);
    if (additionC <= limit) return [];
    return [
      {
        code: 'heat-spoils-sweetener',
        severity: id === 'sucralose' ? 'danger' : 'will-fail',
        path,
        numbers: { additionC, maxAdditionC: limit },
        names: { ingredient: id },
        remedies: [
          remedy('acesulfame-instead', [{ path: `${path}/ingredient`, value: 'acesulfame-k' }]),
          ...(!late && !isPolyolMass && pour.pourBetweenC[0] <= limit
            ? [remedy('add-it-later', [{ path: `${path}/when`, value: 'off-heat' }])]
            : []),
        ],
      },
    ];
  });
}
