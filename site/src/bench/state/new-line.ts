import {
  type Amount,
  type FormulaLine,
  INGREDIENT_IDS,
  type IngredientId,
  ingredient,
  type When,
} from 'vitrose';
import type { MeantAmount } from './read/amount.js';
import type { Found } from './search.js';

/** When an ingredient usually goes in: what heat would spoil waits until it is off. */
export function usualWhen(id: IngredientId): When {
  if (id === 'cream-of-tartar') return 'first-boil';
  const { kind } = ingredient(id);
  return kind === 'acid' || kind === 'flavour' || kind === 'colour' ? 'off-heat' : 'start';
}

/** A spoon is a poor scale for acids, salts and sweeteners that are hundreds of times sugar. */
export function isWeighed(id: string): boolean {
  if (!isKnown(id)) return false;
  const { kind } = ingredient(id);
  return kind === 'acid' || kind === 'salt' || kind === 'intense-sweetener';
}

/** A line for what was chosen, with what its packet usually says. */
export function newLine(found: Found, id: IngredientId, meant: MeantAmount): FormulaLine {
  const when = usualWhen(id);
  const label = found.taken?.ingredient === id ? found.taken : undefined;
  return {
    ingredient: id,
    ...(label?.dextroseEquivalent === undefined
      ? {}
      : { dextroseEquivalent: label.dextroseEquivalent }),
    ...(label?.drySolidsMassFraction === undefined
      ? {}
      : { drySolidsMassFraction: label.drySolidsMassFraction }),
    ...(when === 'start' ? {} : { when }),
    ...amountOf(meant, when),
  };
}

function amountOf(meant: MeantAmount, when: When): Amount & { readonly asWritten?: string } {
  if (meant.kind === 'mass') return { massG: meant.massG };
  if (meant.kind === 'measure') {
    return { measure: { quantity: meant.quantity, unit: meant.unit }, asWritten: meant.written };
  }
  return when === 'off-heat' ? { shareOfFinished: meant.share } : { shareOfDrySolids: meant.share };
}

/** Whether a starch syrup: only that has a DE on its label. */
export function isStarchSyrup(id: string): boolean {
  return isKnown(id) && ingredient(id).dextroseEquivalent !== undefined;
}

/** Whether the library knows it; one's own ingredients it does not. */
export function isKnown(id: string): id is IngredientId {
  return (INGREDIENT_IDS as readonly string[]).includes(id);
}
