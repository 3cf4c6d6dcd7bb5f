import { requireWithin } from '../../foundation/validity/check.js';
import { SYRUP_DEFINITIONS, type SyrupDefinition } from './definitions.js';
import { requireDextroseEquivalent, requireStrength } from './require-syrup.js';

/** What is known of a syrup or a powder; what is left out meets no rule that asks for it. */
export type SyrupFigures = {
  readonly drySolidsMassFraction: number;
  /** Reducing power of a starch product; leave it out for invert sugar. */
  readonly dextroseEquivalent?: number | undefined;
  /** A powder; a liquid by default. */
  readonly dried?: boolean | undefined;
  readonly glucoseMassFractionOfDrySolids?: number | undefined;
  readonly invertMassFractionOfDrySolids?: number | undefined;
};

/**
 * Which legal names a syrup or a powder meets, by the figures of the rules.
 *
 * Information, not advice: rules differ by country and change, and some ask for what no figure here
 * tells, such as sulphated ash. Ask the authority where it is sold.
 *
 * @param figures - `drySolidsMassFraction`, 0.01 to 1; `dextroseEquivalent`, 1 to 100; `dried`;
 *   glucose or invert sugar in the dry solids, 0 to 1.
 * @returns `meets`: the definitions that are met, each with the rule that says so; none may be.
 * @throws {@link ModelRangeError} outside the domains.
 * @example
 * syrupDefinitions({ drySolidsMassFraction: 0.8, dextroseEquivalent: 42 }).meets[0]?.id // 'glucose-syrup'
 * @source codex-212-1999, eu-2001-111, us-21-cfr-184-1444
 */
export function syrupDefinitions({
  drySolidsMassFraction,
  dextroseEquivalent,
  dried = false,
  glucoseMassFractionOfDrySolids: glucose,
  invertMassFractionOfDrySolids: invert,
}: SyrupFigures): { readonly meets: readonly SyrupDefinition[] } {
  requireStrength({ drySolidsMassFraction });
  if (dextroseEquivalent !== undefined) requireDextroseEquivalent({ dextroseEquivalent });
  requireWithin('glucoseMassFractionOfDrySolids', glucose ?? 0, [0, 1]);
  requireWithin('invertMassFractionOfDrySolids', invert ?? 0, [0, 1]);
  const rows: readonly SyrupDefinition[] = SYRUP_DEFINITIONS;
  return {
    meets: rows.filter(
      (rule) =>
        (rule.dried ?? dried) === dried &&
        between(drySolidsMassFraction, rule.drySolidsFrom, rule.drySolidsBelow) &&
        between(dextroseEquivalent, rule.dextroseEquivalentFrom, rule.dextroseEquivalentBelow) &&
        between(glucose, rule.glucoseOfDrySolidsFrom, undefined) &&
        isAbove(invert, rule.invertOfDrySolidsAbove) &&
        isAtMost(invert, rule.invertOfDrySolidsTo),
    ),
  };
}

/** What is asked for and not given is not met. */
function between(
  given: number | undefined,
  from: number | undefined,
  below: number | undefined,
): boolean {
  if (from === undefined && below === undefined) return true;
  if (given === undefined) return false;
  return given >= (from ?? given) && (below === undefined || given < below);
}

function isAbove(given: number | undefined, limit: number | undefined): boolean {
  return limit === undefined || (given !== undefined && given > limit);
}

function isAtMost(given: number | undefined, limit: number | undefined): boolean {
  return limit === undefined || (given !== undefined && given <= limit);
}
