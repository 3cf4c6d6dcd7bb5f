import { fromUnits, inUnits } from '../ladder/temperature-words.js';
import { multiples } from '../scale/nice-ticks.js';
import { hereAt, placeOf, type SugarRuleGeometry } from './geometry.js';

/** A graduation of the degrees. */
export type Graduation = {
  /** As the thermometer shows it, on the reader's scale. */
  readonly reading: number;
  readonly y: number;
  readonly weight: 'long' | 'middle' | 'short';
};

/** Two numbers closer than this run into each other. */
const LETTER_HEIGHT = 18;
/** Short graduations closer than this cannot be told apart. */
const LEAST_APART = 4.5;

/** Graduations between two heights; short ones only where they can be told apart. */
export function graduations(
  geometry: SugarRuleGeometry,
  from: number,
  to: number,
): readonly Graduation[] {
  const { readingOffsetK = 0, units = 'c' } = geometry.state;
  const readingAt = (y: number): number => inUnits(hereAt(geometry, y) + readingOffsetK, units);
  const [low, high] = [readingAt(from), readingAt(to)];
  const perDegree = (to - from) / (high - low);
  const [short, middle, long] = units === 'f' ? [2, 10, 20] : [1, 5, 10];
  return multiples(low, high, perDegree * short >= LEAST_APART ? short : middle).map((reading) => ({
    reading,
    y: placeOf(geometry, fromUnits(reading, units) - readingOffsetK),
    weight: reading % long === 0 ? 'long' : reading % middle === 0 ? 'middle' : 'short',
  }));
}

/** The graduations that carry their number: whole within the ends, clear of the line and of each other. */
export function numbered(
  all: readonly Graduation[],
  from: number,
  to: number,
  lineY: number | undefined,
): readonly Graduation[] {
  const kept: Graduation[] = [];
  const byWeight = ['long', 'middle'].flatMap((weight) =>
    all.filter((graduation) => graduation.weight === weight),
  );
  for (const graduation of byWeight) {
    const { y } = graduation;
    const inside = y > from + 9 && y < to - 9;
    const clear = lineY === undefined || Math.abs(y - lineY) > 9;
    const apart = kept.every((other) => Math.abs(other.y - y) >= LETTER_HEIGHT);
    if (inside && clear && apart) kept.push(graduation);
  }
  return kept;
}
