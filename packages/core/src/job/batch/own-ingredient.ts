import type { Ingredient } from '../../matter/ingredients/types.js';
import { type Ledger, refuse } from '../ledger.js';
import type { OwnIngredient } from './types.js';

const source = 'given-by-the-cook',
  grade = 'assumed';

/** How far the shares of the dry part may miss 1 and still be taken as rounding. */
const SHARE_ROUNDING = 0.005;

/** The record of an ingredient of one's own, or nothing and a problem. */
export function ownIngredient(
  name: string,
  own: OwnIngredient,
  ledger: Ledger,
): Ingredient | undefined {
  const shares = [...Object.values(own.solids ?? {}), ...Object.values(own.apart ?? {})];
  const sum = shares.reduce((total, share) => total + share, 0);
  const isSyrup = own.dextroseEquivalent !== undefined;
  const isWater = own.drySolidsMassFraction === 0;
  const wanted = isSyrup || isWater ? 0 : 1;
  if (Math.abs(sum - wanted) > SHARE_ROUNDING) {
    return refuse(ledger, {
      code: 'shares-do-not-sum',
      path: `/ingredients/${name.replaceAll('~', '~0').replaceAll('/', '~1')}`,
      received: sum,
      limits: [wanted, wanted],
    });
  }
  return {
    kind: own.kind,
    drySolidsMassFraction: { value: own.drySolidsMassFraction, source, grade },
    ...(own.solids === undefined ? {} : { solids: scaled(own.solids, sum) }),
    ...(own.apart === undefined ? {} : { apart: scaled(own.apart, sum) }),
    ...(own.dextroseEquivalent === undefined
      ? {}
      : { dextroseEquivalent: { value: own.dextroseEquivalent, source, grade } }),
    ...(own.conversion === undefined ? {} : { conversion: own.conversion }),
    ...(own.maxAdditionC === undefined
      ? {}
      : { maxAdditionC: { value: own.maxAdditionC, source, grade } }),
    compositionGrade: grade,
  };
}

/** Takes the rounding out of shares, so that mass is conserved to the last digit. */
function scaled<T extends Readonly<Record<string, number>>>(shares: T, sum: number): T {
  return Object.fromEntries(
    Object.entries(shares).map(([key, share]) => [key, share / sum]),
  ) as unknown as T;
}
