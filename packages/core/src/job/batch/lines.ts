import { isModelRangeError } from '../../foundation/validity/model-range-error.js';
import { findIngredient } from '../../matter/ingredients/ingredient.js';
import type { Ingredient } from '../../matter/ingredients/types.js';
import { mixture } from '../../matter/mixture/index.js';
import type { Part } from '../../matter/mixture/types.js';
import { assume, type Ledger, refuse, take } from '../ledger.js';
import { type Ranged, ranged } from '../plan/ranged.js';
import { ownIngredient } from './own-ingredient.js';
import type { BatchDocument, FormulaLine, When } from './types.js';

/** A line of the formula, understood but not yet weighed. */
export type Line = {
  readonly path: string;
  readonly id: string;
  readonly record: Ingredient;
  readonly line: FormulaLine;
  readonly when: When;
  /** Goes in after the heat is off. */
  readonly late: boolean;
  /** Everything that is not water, as sold. */
  readonly drySolids: Ranged;
  /** Starch syrups only. */
  readonly dextroseEquivalent?: Ranged | undefined;
  /** The part this line becomes, for one gram of it. */
  readonly part: Omit<Part, 'massG'>;
};

/** Understands every line; what cannot be understood becomes a problem and drops out. */
export function readLines(batch: BatchDocument, ledger: Ledger): readonly Line[] {
  return batch.formula.flatMap((line, index) => {
    const path = `/formula/${index}`;
    const record = recordOf(line, batch, path, ledger);
    if (record === undefined) return [];
    const read = readLine(line, record, path, ledger);
    return isMixable(read, path, ledger) ? [read] : [];
  });
}

function recordOf(
  line: FormulaLine,
  batch: BatchDocument,
  path: string,
  ledger: Ledger,
): Ingredient | undefined {
  const { ingredients = {} } = batch;
  const own = Object.hasOwn(ingredients, line.ingredient)
    ? ingredients[line.ingredient]
    : undefined;
  if (own !== undefined) return ownIngredient(line.ingredient, own, ledger);
  const known = findIngredient(line.ingredient);
  if (known !== undefined) return known;
  return refuse(ledger, {
    code: 'unknown-name',
    path: `${path}/ingredient`,
    received: line.ingredient,
  });
}

function readLine(line: FormulaLine, record: Ingredient, path: string, ledger: Ledger): Line {
  const when = take(ledger, `${path}/when`, typeof line.when === 'object' ? 'at' : line.when, {
    value: 'start',
    grade: 'practice',
  });
  const { drySolidsMassFraction: dry, dextroseEquivalent: de } = record;
  const drySolids =
    line.drySolidsMassFraction === undefined
      ? ranged(dry.value, dry.low, dry.high)
      : ranged(line.drySolidsMassFraction);
  if (dry.value > 0 || line.drySolidsMassFraction !== undefined) {
    take(ledger, `${path}/drySolidsMassFraction`, line.drySolidsMassFraction, dry);
  }
  const part = partOf(line, record);
  const shared = { path, id: line.ingredient, record, line, drySolids, part };
  const timed = {
    when: when === 'at' ? (line.when ?? 'start') : (when as When),
    late: when === 'off-heat',
  };
  if (de === undefined || line.profile !== undefined) return { ...shared, ...timed };
  if (line.conversion === undefined) assume(ledger, `${path}/conversion`, 'unknown');
  const value = take(ledger, `${path}/dextroseEquivalent`, line.dextroseEquivalent, de);
  return {
    ...shared,
    ...timed,
    dextroseEquivalent:
      line.dextroseEquivalent === undefined ? ranged(value, de.low, de.high) : ranged(value),
  };
}

function partOf(line: FormulaLine, record: Ingredient): Omit<Part, 'massG'> {
  return {
    ingredient: record,
    drySolidsMassFraction: line.drySolidsMassFraction,
    dextroseEquivalent: line.dextroseEquivalent,
    conversion: line.conversion,
    profile: line.profile,
  };
}

/** One gram of the line is mixed on its own, so that what is wrong is found where it stands. */
function isMixable(line: Line, path: string, ledger: Ledger): boolean {
  if (line.record.dextroseEquivalent === undefined) {
    for (const field of ['dextroseEquivalent', 'conversion', 'profile'] as const) {
      if (line.line[field] === undefined) continue;
      refuse(ledger, {
        code: 'only-starch-syrup',
        path: `${path}/${field}`,
        received: line.line[field],
      });
      return false;
    }
  }
  try {
    mixture([{ ...line.part, massG: 1 }]);
    return true;
  } catch (error) {
    if (!isModelRangeError(error)) throw error;
    const { parameter, received, limits } = error;
    const ofProfile = parameter.endsWith('OfProfile');
    const field = ofProfile ? 'profile' : parameter in line.line ? parameter : undefined;
    refuse(ledger, {
      code: parameter === 'sumOfProfile' ? 'shares-do-not-sum' : 'outside-range',
      path: field === undefined ? path : `${path}/${field}`,
      received,
      limits,
    });
    return false;
  }
}
