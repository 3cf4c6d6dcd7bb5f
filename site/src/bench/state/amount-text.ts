import type { FormulaLine } from 'vitrose';
import { ingredientName } from 'vitrose/words';
import { benchWords } from '../../words/bench.js';
import { shareKindOf, shareOf } from './formula.js';
import type { AmountUnit } from './read/amount-units.js';
import { readNumber } from './read/number.js';
import { tidy } from './read/tidy.js';
import type { Manner } from './read/types.js';

const GRAMS_PER_OUNCE = 28.349523125;

/** What stands in the field and in the list of units beside it. */
export type AmountText = { readonly text: string; readonly unit: AmountUnit };

/** An amount as its field shows it. A measure keeps the number as the cook wrote it. */
export function amountText(line: FormulaLine, { units }: Manner): AmountText {
  if ('measure' in line) {
    const written = readNumber(line.asWritten ?? '')?.written;
    return { text: written ?? tidy(line.measure.quantity), unit: line.measure.unit };
  }
  if ('massG' in line) {
    const isOunces = units === 'us' && line.massG >= 10;
    return isOunces
      ? { text: tidy(line.massG / GRAMS_PER_OUNCE), unit: 'oz' }
      : { text: tidy(line.massG), unit: 'g' };
  }
  return { text: tidy((shareOf(line) ?? 0) * 100), unit: '%' };
}

/** What the amount is a share of, in words. */
export function shareOfText(line: FormulaLine, { region, units }: Manner): string {
  const words = benchWords.formula;
  switch (shareKindOf(line)) {
    case 'finished':
      return words.ofFinished;
    case 'ingredient':
      return 'shareOfIngredient' in line
        ? words.ofIngredient(ingredientName(line.shareOfIngredient.ingredient, { region, units }))
        : words.ofDrySolids;
    case 'makeUp':
      return 'makeUpWaterFor' in line
        ? words.asSyrup(ingredientName(line.makeUpWaterFor.ingredient, { region, units }))
        : words.ofDrySolids;
    default:
      return line.when === 'off-heat' ? words.ofFinished : words.ofDrySolids;
  }
}
