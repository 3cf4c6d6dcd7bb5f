import { isNone, type None } from 'vitrose';
import type { TableId } from '../tables/index.js';
import type { EvidenceRow } from '../types.js';

/** What the library answers for one row. */
export type Answer = {
  readonly label: string;
  /** The printed value; the cell of the compared column if left out. */
  readonly printed?: number;
  /** The printed range, where a range is printed. */
  readonly printedRange?: readonly [low: number, high: number];
  readonly computed: number;
  /** The band the model gives. */
  readonly band?: readonly [low: number, high: number];
};

/** One column of one table beside one model of the library. */
export type Comparison = {
  readonly table: TableId;
  readonly column: string;
  /** The function of the library that is asked. */
  readonly model: string;
  /** What a number means when it is not the unit of the column. */
  readonly unit?: string;
  /** The answer for a row, or nothing where the row asks something else. */
  readonly answer: (row: EvidenceRow) => Answer | undefined;
};

/** The number in a cell. */
export function numberIn(row: EvidenceRow, column: string): number {
  const cell = row[column];
  if (typeof cell !== 'number')
    throw new TypeError(`${column} holds ${String(cell)}, not a number.`);
  return cell;
}

/** The text in a cell. */
export function textIn(row: EvidenceRow, column: string): string {
  const cell = row[column];
  if (typeof cell !== 'string') throw new TypeError(`${column} holds ${String(cell)}, not a text.`);
  return cell;
}

/** Celsius of a Fahrenheit reading. */
export const celsius = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;

/** Fahrenheit of a Celsius reading. */
export const fahrenheit = (temperatureC: number): number => temperatureC * 1.8 + 32;

/** Every row compared has an answer; one that has none would drop out unseen. */
export function answered<T extends object>(result: T | None): T {
  if (isNone(result)) throw new RangeError(`The library has no answer: ${result.reason}.`);
  return result as T;
}
