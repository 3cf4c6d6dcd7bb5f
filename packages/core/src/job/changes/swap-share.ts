import type { Change } from '../advice/types.js';
import type { OpenLine } from '../batch/amounts.js';
import type { BatchDocument, FormulaLine } from '../batch/types.js';
import { heldShares, takenOut } from './refers.js';
import type { ChangesOf } from './types.js';

/** One syrup about to be its other form. */
export type Swap = {
  readonly line: FormulaLine;
  readonly index: number;
  readonly to: 'glucose-syrup' | 'dried-glucose-syrup';
  /** Dry solids of the form it has, and of the form it gets, 0–1. */
  readonly dryHere: number;
  readonly dryThere: number;
  /** No other line of the batch is of the same name. */
  readonly isAlone: boolean;
};

/**
 * The swap of a line that is a share of the whole: its grams are not known yet, so its water is
 * written down as the water that makes the powder a syrup, or as a share of the syrup.
 */
export function swapShare(batch: BatchDocument, lines: readonly OpenLine[], swap: Swap): ChangesOf {
  const { line, index, to, dryHere, dryThere, isAlone } = swap;
  if (!isAlone) return { kind: 'none', reason: 'not-readable' };
  const makeUp = batch.formula.flatMap((water, at) =>
    'makeUpWaterFor' in water && water.makeUpWaterFor.ingredient === line.ingredient
      ? [{ at, solids: water.makeUpWaterFor.drySolidsMassFraction }]
      : [],
  );
  const water = waterOf(swap, makeUp);
  if (water === undefined) return { kind: 'none', reason: 'too-little-water' };
  const { drySolidsMassFraction: _dry, asWritten: _words, ...kept } = line;
  return {
    kind: 'changes',
    changes: [
      {
        path: `/formula/${index}`,
        value: { ...scaled(kept as FormulaLine, dryHere / dryThere), ingredient: to },
      },
      ...heldShares(batch, lines, [line.ingredient, to], dryHere / dryThere),
      ...water,
    ],
  };
}

type MakeUp = readonly { readonly at: number; readonly solids: number }[];

/** The water the other form brings or wants; nothing where the syrup brings more than there was. */
function waterOf(
  { to, dryHere, dryThere, line }: Swap,
  makeUp: MakeUp,
): readonly Change[] | undefined {
  const when = line.when === undefined ? {} : { when: line.when };
  if (to === 'dried-glucose-syrup') {
    const renamed = makeUp.map(({ at }) => ({
      path: `/formula/${at}/makeUpWaterFor/ingredient`,
      value: to,
    }));
    return renamed.length > 0
      ? renamed
      : [
          {
            path: '/formula/-',
            value: {
              ingredient: 'water',
              makeUpWaterFor: { ingredient: to, drySolidsMassFraction: dryHere },
              ...when,
            },
          },
        ];
  }
  // For each gram of solids the powder had its own water and its make-up water.
  const hadPerSolid = makeUp.reduce(
    (sum, { solids }) => sum + 1 / solids - 1 / dryHere,
    1 / dryHere - 1,
  );
  const sparePerSyrup = (hadPerSolid - (1 / dryThere - 1)) * dryThere;
  if (sparePerSyrup < -SAME_WATER) return undefined;
  const gone = takenOut(makeUp.map(({ at }) => at));
  return sparePerSyrup <= SAME_WATER
    ? gone
    : [
        {
          path: '/formula/-',
          value: {
            ingredient: 'water',
            shareOfIngredient: { ingredient: to, share: sparePerSyrup },
            ...when,
          },
        },
        ...gone,
      ];
}

/** A thousandth of the syrup's mass is no difference in water. */
const SAME_WATER = 0.001;

/** A share of the dry solids is the same share in either form; a share as weighed is not. */
function scaled(line: FormulaLine, heavier: number): FormulaLine {
  if ('shareOfFinished' in line)
    return { ...line, shareOfFinished: line.shareOfFinished * heavier };
  if ('shareOfIngredient' in line) {
    const { ingredient, share } = line.shareOfIngredient;
    return { ...line, shareOfIngredient: { ingredient, share: share * heavier } };
  }
  return line;
}
