import { isNone } from '../../foundation/results/is-none.js';
import { measureToGrams } from '../../matter/measures/index.js';
import { assume, type Ledger, refuse, warn } from '../ledger.js';
import type { Ranged } from '../plan/ranged.js';
import type { Line } from './lines.js';

/**
 * The mass of a line, as far as it can be said before the size of the batch is known:
 * `grams + perSolid · (dry solids the shares are taken of) + perFinished · (finished mass)`.
 */
export type OpenMass = {
  readonly grams: number;
  readonly perSolid: number;
  readonly perFinished: number;
};

/** A line with its open mass, and the spread of its spoon. */
export type OpenLine = Line & {
  readonly mass: OpenMass;
  /** Low and high of the grams, relative to the middle; 1 where the scale decides. */
  readonly spread: Ranged;
  readonly form?: string | undefined;
};

const NOTHING: OpenMass = { grams: 0, perSolid: 0, perFinished: 0 };
const EXACT: Ranged = { value: 1, low: 1, high: 1 };

/** Opens every line; what leads nowhere becomes a problem. */
export function openAmounts(lines: readonly Line[], ledger: Ledger): readonly OpenLine[] {
  return lines.map((line) => openLine(line, lines, ledger));
}

/** One number for an open mass once the size is known. */
export function weigh(
  { grams, perSolid, perFinished }: OpenMass,
  solidsG: number,
  finishedG: number,
): number {
  return grams + perSolid * solidsG + perFinished * finishedG;
}

function openLine(line: Line, lines: readonly Line[], ledger: Ledger): OpenLine {
  const amount = line.line;
  if ('measure' in amount) {
    const { quantity, unit, form } = amount.measure;
    const weighed = measureToGrams({
      ingredient: line.id,
      unit,
      quantity,
      ...(form === undefined ? {} : { form }),
    });
    if (isNone(weighed)) {
      refuse(ledger, {
        code: 'no-weight-for-measure',
        path: `${line.path}/measure`,
        received: form ?? unit,
      });
      return { ...line, mass: NOTHING, spread: EXACT };
    }
    warn(ledger, weighed.warnings);
    if (form === undefined && weighed.form !== null) {
      assume(ledger, `${line.path}/measure/form`, weighed.form, 'practice');
    }
    const { massG, band } = weighed;
    return {
      ...line,
      mass: { ...NOTHING, grams: massG },
      form: weighed.form ?? undefined,
      spread: { value: 1, low: band[0] / massG, high: band[1] / massG },
    };
  }
  return { ...line, mass: openMass(line, lines, ledger, []), spread: EXACT };
}

/** Follows shares of other ingredients to their end; `behind` are the lines already passed. */
function openMass(
  line: Line,
  lines: readonly Line[],
  ledger: Ledger,
  behind: readonly Line[],
): OpenMass {
  if (behind.includes(line)) {
    refuse(ledger, { code: 'circular-share', path: line.path, received: line.id });
    return NOTHING;
  }
  const amount = line.line;
  if ('massG' in amount) return { ...NOTHING, grams: amount.massG };
  if ('shareOfFinished' in amount) return { ...NOTHING, perFinished: amount.shareOfFinished };
  if ('shareOfDrySolids' in amount) {
    if (line.drySolids.value <= 0) {
      refuse(ledger, {
        code: 'share-of-nothing',
        path: `${line.path}/shareOfDrySolids`,
        received: line.id,
      });
      return NOTHING;
    }
    return { ...NOTHING, perSolid: amount.shareOfDrySolids / line.drySolids.value };
  }
  if ('measure' in amount) return openLine(line, lines, ledger).mass;
  if ('shareOfIngredient' in amount) {
    const { ingredient, share } = amount.shareOfIngredient;
    return sumOver(ingredient, `${line.path}/shareOfIngredient/ingredient`, () => share);
  }
  const { ingredient, drySolidsMassFraction } = amount.makeUpWaterFor;
  if (line.record.kind !== 'water') {
    refuse(ledger, {
      code: 'only-water',
      path: `${line.path}/makeUpWaterFor`,
      received: line.id,
    });
    return NOTHING;
  }
  if (drySolidsMassFraction <= 0) return NOTHING;
  return sumOver(ingredient, `${line.path}/makeUpWaterFor/ingredient`, (other) => {
    const share = other.drySolids.value / drySolidsMassFraction - 1;
    if (share < 0) {
      refuse(ledger, {
        code: 'outside-range',
        path: `${line.path}/makeUpWaterFor/drySolidsMassFraction`,
        received: drySolidsMassFraction,
        limits: [0, other.drySolids.value],
      });
    }
    return share;
  });

  function sumOver(ingredient: string, path: string, shareOf: (other: Line) => number): OpenMass {
    const others = lines.filter((other) => other.id === ingredient && other !== line);
    if (others.length === 0)
      refuse(ledger, { code: 'share-of-nothing', path, received: ingredient });
    return others.reduce((sum, other) => {
      const share = shareOf(other);
      const { grams, perSolid, perFinished } = openMass(other, lines, ledger, [...behind, line]);
      return {
        grams: sum.grams + share * grams,
        perSolid: sum.perSolid + share * perSolid,
        perFinished: sum.perFinished + share * perFinished,
      };
    }, NOTHING);
  }
}
