import type { FormulaLine, PlanDocument } from 'vitrose';
import { formatFraction, formatMass } from 'vitrose/words';
import { benchWords } from '../../words/bench.js';
import type { MeantAmount } from './read/amount.js';
import { readNumber } from './read/number.js';
import type { Manner, Reading } from './read/types.js';

/**
 * What is said under an amount: what was understood, and what it comes to in this batch. A share
 * says its grams, grams say their share; plain grams are not said twice.
 */
export function withPlan(
  reading: Reading<MeantAmount>,
  line: FormulaLine,
  index: number,
  plan: PlanDocument | undefined,
  manner: Manner,
  typed: string,
): Reading<MeantAmount> {
  const planned = plan?.formula[index];
  if (reading.kind !== 'read') return reading;
  if (planned === undefined || plan === undefined) return reading;
  if (!('massG' in line) && !('measure' in line)) {
    const grams = formatMass(planned.massG.value, manner);
    return { ...reading, echo: `${reading.echo.replace(/\.$/, '')}: ${grams}` };
  }
  const isPlain = readNumber(typed)?.rest === '' && reading.value.kind === 'mass';
  const said = isPlain && manner.units === 'metric' ? [] : [reading.echo];
  return { ...reading, echo: [...said, ...shareOf(line, planned.drySolidsG, plan)].join(' · ') };
}

function shareOf(line: FormulaLine, drySolidsG: number, plan: PlanDocument): readonly string[] {
  if (drySolidsG <= 0) return [];
  if (line.when === 'off-heat') {
    const share = drySolidsG / plan.yield.finishedG.value;
    return [benchWords.shareOfSweets(formatFraction(share))];
  }
  const solidsG = plan.composition.baseG.value * plan.composition.baseDrySolidsMassFraction.value;
  return [benchWords.shareOfSolids(formatFraction(drySolidsG / solidsG))];
}
