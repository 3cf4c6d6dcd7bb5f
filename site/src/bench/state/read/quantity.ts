import { ModelRangeError } from 'vitrose';
import { benchWords } from '../../../words/bench.js';
import { readNumber } from './number.js';
import { tidy } from './tidy.js';
import type { Offer, Reading } from './types.js';
import { type QuantityId, type Unit, unitsOf } from './units.js';

/** What a field may hold. */
export type Wanted = {
  readonly quantity: QuantityId;
  /** In the unit of the document. */
  readonly limits: readonly [low: number, high: number];
  readonly units: 'metric' | 'us';
  readonly whole?: boolean | undefined;
};

/**
 * Reads one number with or without its unit, as people type it.
 *
 * The reader's own unit is taken where none is written. A number that is impossible in its unit and
 * possible in another is not taken: the other unit is offered.
 */
export function readQuantity(text: string, wanted: Wanted): Reading<number> {
  if (text.trim() === '') return { kind: 'empty' };
  const number = readNumber(text);
  if (number === undefined) return unread(benchWords.unread.noNumber(text.trim()));
  const all = unitsOf(wanted.quantity, wanted.units);
  const named = unitNamed(number.rest, all);
  if (number.rest !== '' && named === undefined) {
    return unread(benchWords.unread.noUnit(number.rest, signsOf(all)));
  }
  const unit = named ?? all[0];
  const possible = number.values.filter((value) => fits(value, unit, wanted.limits));
  const [first, second] = possible;
  if (first !== undefined) {
    const value = snapped(unit.toDocument(first));
    if (wanted.whole === true && !Number.isInteger(value)) {
      return {
        kind: 'unread',
        reason: benchWords.unread.notWhole(tidy(value)),
        offers: [Math.floor(value), Math.ceil(value)]
          .filter((one) => isWithin(one, wanted.limits))
          .map((one) => ({ label: String(one), text: String(one) })),
      };
    }
    return {
      kind: 'read',
      value,
      echo: echoOf(value, wanted.quantity, wanted.units),
      offers: [
        ...(second === undefined ? [] : [offerOf(second, unit)]),
        ...(named === undefined ? perhaps(first, unit, wanted) : []),
      ],
    };
  }
  return impossible(number.values[0], unit, all, wanted);
}

/** The number as it stands in the field: in the reader's unit, without the unit. */
export function writeQuantity(
  value: number,
  { quantity, units }: Pick<Wanted, 'quantity' | 'units'>,
): string {
  return tidy(unitsOf(quantity, units)[0].fromDocument(value));
}

/** What was understood, in the reader's unit and, where there is one, in the other. */
export function echoOf(value: number, quantity: QuantityId, units: 'metric' | 'us'): string {
  const [own, other] = unitsOf(quantity, units);
  const twice = ['temperature', 'elevation', 'pressure', 'mass', 'length', 'area'];
  const first = withSign(own.fromDocument(value), own);
  // Millilitres are litres only from a pan upwards.
  if (quantity === 'volume' && value >= 250 && other !== undefined) {
    return `${first} · ${withSign(other.fromDocument(value), other)}`;
  }
  if (other === undefined || !twice.includes(quantity)) return first;
  return `${first} · ${withSign(other.fromDocument(value), other)}`;
}

function impossible(
  value: number,
  unit: Unit,
  all: readonly Unit[],
  { limits, quantity, units }: Wanted,
): Reading<number> {
  const meant = all.find((other) => other !== unit && fits(value, other, limits));
  if (meant !== undefined) {
    return {
      kind: 'unread',
      reason: benchWords.unread.otherUnit(
        withSign(value, unit),
        withSign(value, meant),
        withSign(unit.fromDocument(meant.toDocument(value)), unit),
      ),
      offers: [{ label: benchWords.use(meant.sign), text: withSign(value, meant) }],
    };
  }
  const [low, high] = limits.map((limit) => echoOf(limit, quantity, units)) as [string, string];
  return unread(benchWords.unread.outside(withSign(value, unit), low, high));
}

/** What a bare number may mean: a fraction where the page speaks of per cent, kilowatts for watts. */
function perhaps(value: number, unit: Unit, { quantity, units, limits }: Wanted): readonly Offer[] {
  if (value <= 0) return [];
  if (quantity === 'percent' && value < 1 && fits(value * 100, unit, limits)) {
    return [offerOf(value * 100, unit)];
  }
  const [, other] = unitsOf(quantity, units);
  // No hob has so few watts.
  if (quantity !== 'power' || other === undefined || value > 20) return [];
  return fits(value, other, limits) ? [offerOf(value, other)] : [];
}

function offerOf(value: number, unit: Unit): Offer {
  const text = withSign(value, unit);
  return { label: benchWords.use(unit.sign === '' ? tidy(value) : text), text };
}

function unitNamed(word: string, all: readonly Unit[]): Unit | undefined {
  const plain = word
    .toLowerCase()
    .replace(/\.$/, '')
    .replace(/\s+/g, ' ')
    .replace(/^º/, '°')
    .replace(/^° /, '°');
  return all.find(({ words }) => words.includes(plain));
}

function signsOf(all: readonly Unit[]): string {
  return all
    .map(({ sign }) => sign)
    .filter((sign) => sign !== '')
    .join(', ');
}

function withSign(value: number, { sign }: Unit): string {
  return sign === '' ? tidy(value) : `${tidy(value)} ${sign}`;
}

/** Whether that many of the unit can be; a pressure below nothing cannot even be converted. */
function fits(value: number, unit: Unit, limits: readonly [number, number]): boolean {
  try {
    return isWithin(unit.toDocument(value), limits);
  } catch (error) {
    if (error instanceof ModelRangeError) return false;
    throw error;
  }
}

function isWithin(value: number, [low, high]: readonly [number, number]): boolean {
  return value >= low && value <= high;
}

/** Takes off the dust of a conversion: 16 cm is 160 mm, not 160.00000000000003. */
function snapped(value: number): number {
  return Number(value.toPrecision(12));
}

function unread(reason: string): Reading<number> {
  return { kind: 'unread', reason, offers: [] };
}
