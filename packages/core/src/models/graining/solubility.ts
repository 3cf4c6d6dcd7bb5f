import type { Checked, ModelWarning, None, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { SpeciesId } from '../../matter/species.js';
import { SOLUBILITY_ROWS, type SolubilityRow, type SolubilityRows } from './solubility-rows.js';
import { SUCROSE_SOLUBILITY_DOMAIN_C, sucroseSolubility } from './sucrose-solubility.js';

/** What can be asked, °C; each substance has its own rows within it. */
export const SOLUBILITY_DOMAIN_C: Span = [-60, 200];

/** Nothing is known of the substance, or nothing at that temperature. */
export type NoSolubility = None<'no-data' | 'beyond-the-data'>;

/**
 * How much of a sugar or sugar alcohol water holds: the saturated solution at a temperature.
 *
 * Straight lines between printed rows, never beyond them. Most sugar alcohols have two rows, at 20
 * and 50 °C: what lies between them is a rough guide. A warning says where a row is from memory.
 *
 * @equation linear between neighbouring rows, in per cent of the solution
 * @param species - The dissolved substance, alone in water.
 * @param temperatureC - °C, −60 to 200.
 * @returns `massFraction`, 0–1 of the solution; `none` with `no-data` for a substance without rows,
 *   `beyond-the-data` outside its rows.
 * @throws {@link ModelRangeError} if the temperature lies outside −60 to 200.
 * @example
 * solubility('xylitol', 35) // { massFraction: 0.715, warnings: [] }
 * @source hartel-2011, gillis-lowe, hudson-lowe, jackson-silsbee-1922, young-1952, vavrinecz-1962
 */
export function solubility(
  species: SpeciesId,
  temperatureC: number,
): Checked<{ massFraction: number }> | NoSolubility {
  requireWithin('temperatureC', temperatureC, SOLUBILITY_DOMAIN_C);
  if (species === 'sucrose') {
    if (!isWithin(temperatureC, SUCROSE_SOLUBILITY_DOMAIN_C)) return none('beyond-the-data');
    const { sucroseMassFraction, warnings } = sucroseSolubility(temperatureC);
    return { massFraction: sucroseMassFraction, warnings };
  }
  const rows = rowsOf(species);
  if (rows === undefined) return none('no-data');
  const piece = pieceAt(rows, temperatureC, 0);
  if (piece === undefined) return none('beyond-the-data');
  const massFraction = along(piece, temperatureC, 0) / 100;
  return { massFraction, warnings: recalled(species, piece, massFraction) };
}

/** The rows of a substance, where there are any. */
export function rowsOf(species: SpeciesId): SolubilityRows | undefined {
  const known: Readonly<Partial<Record<SpeciesId, SolubilityRows>>> = SOLUBILITY_ROWS;
  return known[species];
}

/** Two neighbouring rows. */
export type Piece = readonly [from: SolubilityRow, to: SolubilityRow];

/** The two rows a value lies between: by temperature (0) or by per cent (1). */
export function pieceAt(rows: SolubilityRows, value: number, by: 0 | 1): Piece | undefined {
  for (let at = 1; at < rows.length; at++) {
    const from = rows[at - 1];
    const to = rows[at];
    if (from !== undefined && to !== undefined && value >= from[by] && value <= to[by])
      return [from, to];
  }
  return undefined;
}

/** The other column where one column has a value. */
export function along([from, to]: Piece, value: number, by: 0 | 1): number {
  const other = by === 0 ? 1 : 0;
  return from[other] + ((value - from[by]) * (to[other] - from[other])) / (to[by] - from[by]);
}

/** Says so where either of the rows is from memory. */
export function recalled(
  species: SpeciesId,
  piece: Piece,
  massFraction: number,
): readonly ModelWarning[] {
  if (!piece.some(([, , , grade]) => grade === 'memory')) return [];
  const limits: Span = [piece[0][1] / 100, piece[1][1] / 100];
  return [
    {
      code: 'shown-from-memory',
      parameter: 'solubleMassFraction',
      value: massFraction,
      limits,
      subject: species,
    },
  ];
}

function isWithin(value: number, [low, high]: Span): boolean {
  return value >= low && value <= high;
}

function none<Reason extends string>(reason: Reason): None<Reason> {
  return { kind: 'none', reason };
}
