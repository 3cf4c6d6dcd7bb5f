import type { OpenLine } from '../batch/amounts.js';
import { weigh } from '../batch/amounts.js';
import { type Ledger, refuse } from '../ledger.js';

/** The two numbers every share is taken of. */
export type Sizes = {
  /** Dry solids the shares of dry solids are taken of, g. */
  readonly solidsG: number;
  /** Base and everything late, before losses, g. */
  readonly finishedG: number;
};

/** How near shares must come to 1 to leave no room for anything else. */
const SHARE_ROUNDING = 1e-6;

/**
 * Sizes the batch so that every share comes out.
 *
 * With shares of the dry solids that sum to one, the size comes from the pieces, and what is given
 * otherwise (a pinch of cream of tartar) stands on top. With shares that leave room, the lines in
 * grams fill it and fix the size. Without shares of the dry solids the lines in grams are the size.
 *
 * @param wantedG - Finished mass the pieces ask for.
 * @param baseMoisture - Water left in the base at the stop, 0–1.
 * @returns nothing when the shares cannot come out; the ledger says why.
 */
export function sizeBatch(
  lines: readonly OpenLine[],
  wantedG: number | undefined,
  baseMoisture: number,
  ledger: Ledger,
): Sizes | undefined {
  const base = sum(
    lines.filter(({ late }) => !late),
    solidShareKept,
  );
  const late = sum(
    lines.filter((line) => line.late),
    lateShareKept,
  );
  const shares = lines.reduce(
    (total, { line }) => total + ('shareOfDrySolids' in line ? line.shareOfDrySolids : 0),
    0,
  );
  if (shares > 1 + SHARE_ROUNDING) return noSize('shares-do-not-sum', shares);
  // dry solids of the base: base.grams + base.perSolid · solids + base.perFinished · finished
  // finished mass: that / (1 − moisture) + late.grams + late.perSolid · solids + late.perFinished · finished
  if (shares >= 1 - SHARE_ROUNDING) {
    if (wantedG === undefined) return noSize('shares-need-a-size', shares);
    const fixed = base.grams + base.perFinished * wantedG;
    const added = late.grams + late.perFinished * wantedG;
    const solidsG =
      ((wantedG - added) * (1 - baseMoisture) - fixed) /
      (base.perSolid + late.perSolid * (1 - baseMoisture));
    return solidsG > 0 ? { solidsG, finishedG: wantedG } : noSize('shares-do-not-sum', shares);
  }
  return solveBoth();

  function solveBoth(): Sizes | undefined {
    const dry = 1 - baseMoisture;
    // Two linear equations for solids S and finished mass M:
    //   S · (1 − base.perSolid) − M · base.perFinished = base.grams
    //   −S · (1/dry + late.perSolid) + M · (1 − late.perFinished) = late.grams
    const a = 1 - base.perSolid,
      b = -base.perFinished;
    const c = -(1 / dry + late.perSolid),
      d = 1 - late.perFinished;
    const determinant = a * d - b * c;
    const solidsG = (base.grams * d - b * late.grams) / determinant;
    const finishedG = (a * late.grams - c * base.grams) / determinant;
    const comesOut = determinant > 0 && solidsG > 0 && finishedG > 0 && Number.isFinite(finishedG);
    if (comesOut) return { solidsG, finishedG };
    return noSize(base.grams > 0 || shares > 0 ? 'shares-do-not-sum' : 'nothing-to-cook', shares);
  }

  function noSize(
    code: 'shares-do-not-sum' | 'shares-need-a-size' | 'nothing-to-cook',
    received: number,
  ): undefined {
    return refuse(ledger, { code, path: '/formula', received, limits: [1, 1] });
  }
}

/** Grams of every line, in the order of the formula. */
export function weighLines(
  lines: readonly OpenLine[],
  { solidsG, finishedG }: Sizes,
): readonly number[] {
  return lines.map(({ mass }) => weigh(mass, solidsG, finishedG));
}

/** What of a late line stays in the mass: all but its alcohol. */
function lateShareKept({ record, drySolids }: OpenLine): number {
  return 1 - drySolids.value * (record.apart?.ethanol ?? 0);
}

/** What of a line is dry solids after the boil: everything but its water and its alcohol. */
function solidShareKept({ record, drySolids }: OpenLine): number {
  return drySolids.value * (1 - (record.apart?.ethanol ?? 0));
}

function sum(lines: readonly OpenLine[], share: (line: OpenLine) => number): OpenLine['mass'] {
  return lines.reduce(
    (total, line) => ({
      grams: total.grams + share(line) * line.mass.grams,
      perSolid: total.perSolid + share(line) * line.mass.perSolid,
      perFinished: total.perFinished + share(line) * line.mass.perFinished,
    }),
    { grams: 0, perSolid: 0, perFinished: 0 },
  );
}
