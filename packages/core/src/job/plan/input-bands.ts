import type { Span } from '../../foundation/results/types.js';
import { newLedger } from '../ledger.js';
import { invertedPots } from './cooking/invert.js';
import { fillPots, type Outcome, outcomeOf, type WeighedLine } from './outcome.js';
import { type Ranged, ranged } from './ranged.js';
import { findStop, type Stop, type StopQuestion } from './stop.js';

/** Everything an input can move. */
export type Moved = Outcome & {
  readonly hereC: number;
  readonly seaLevelC: number;
  readonly baseMoisture: number;
};

/** How far the inputs' own bands move each number: root-sum-square, low and high apart. */
export type InputBands = Readonly<Record<keyof Moved, Span>>;

/**
 * Moves one input at a time to its low and high end and collects what each number does.
 *
 * The masses on the scale are held: a powder that is wetter than its label brings less solids. The
 * boiling curve hardly knows the ratio of its solids (0.3 K for ten points of syrup), so it is
 * asked again only where a guessed dextrose equivalent changes the kind of molecule.
 */
export function inputBands(
  lines: readonly WeighedLine[],
  stop: Stop,
  question: Pick<StopQuestion, 'cook' | 'pressurePa'> & { readonly inverted: number },
  middle: Moved,
): InputBands {
  const below: Record<string, number> = {};
  const above: Record<string, number> = {};
  for (const [index, line] of lines.entries()) {
    for (const moved of movesOf(line)) {
      const others = lines.map((other, at) => (at === index ? moved : other));
      const asksAgain = moved.dextroseEquivalent !== line.dextroseEquivalent && !line.late;
      collect(outcome(others, asksAgain));
    }
  }
  return Object.fromEntries(
    Object.entries(middle).map(([key, value]) => [
      key,
      [value - Math.sqrt(below[key] ?? 0), value + Math.sqrt(above[key] ?? 0)],
    ]),
  ) as unknown as InputBands;

  function outcome(moved: readonly WeighedLine[], asksAgain: boolean): Moved | undefined {
    const weighed = fillPots(moved);
    if (weighed === undefined) return undefined;
    const pots = invertedPots(weighed, question.inverted);
    const { base, late } = pots;
    const again = asksAgain ? findStop({ base, late, ...question }, newLedger()) : stop;
    if (again === undefined) return undefined;
    const { hereC, seaLevelC, baseDrySolids } = again;
    return { ...outcomeOf(pots, baseDrySolids), hereC, seaLevelC, baseMoisture: 1 - baseDrySolids };
  }

  function collect(moved: Moved | undefined): void {
    if (moved === undefined) return;
    for (const [key, value] of Object.entries(moved)) {
      const change = value - middle[key as keyof Moved];
      const side = change < 0 ? below : above;
      side[key] = (side[key] ?? 0) + change ** 2;
    }
  }
}

/** The line with one of its inputs at either end, for every input that has a band. */
function movesOf(line: WeighedLine): readonly WeighedLine[] {
  const { drySolids, dextroseEquivalent, spread, massG } = line;
  return [
    ...ends(drySolids).map((value) => ({ ...line, drySolids: ranged(value) })),
    ...ends(spread).map((value) => ({ ...line, massG: massG * value })),
    ...ends(dextroseEquivalent).map((value) => ({ ...line, dextroseEquivalent: ranged(value) })),
  ];
}

function ends({ value, low, high }: Ranged = ranged(0)): readonly number[] {
  return [low, high].filter((end) => end !== value);
}
