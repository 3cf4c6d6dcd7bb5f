import type { StageRange } from 'vitrose';
import { stageName } from 'vitrose/words';
import { textWidthPx } from '../labels/text-width.js';
import { beadPlaces, waterBeads } from './bead-places.js';
import { rungEnds, type SugarRuleGeometry } from './geometry.js';

/** What is written on a rung, and where. */
export type RungWords = {
  readonly name: string;
  readonly isStage: boolean;
  readonly sizePx: number;
  /** The middle of the rung's words. */
  readonly y: number;
  /** None where they would run into the name. */
  readonly beads:
    | { readonly count: number; readonly pitch: number; readonly left: number }
    | undefined;
  /** The line runs through the words: they stand on a ground of their own. */
  readonly crossed: boolean;
};

export const NAME_LEFT = 52;
/** The lowest stage, and the lowest gap between two, a name fits on. */
const NAMED_FROM = { stage: 15, gap: 23 };
/** From the middle of the words to the line that leaves them alone. */
const CLEAR_OF_LINE = 13;

/** The words on a rung; none where it is too low for them. */
export function rungWords(
  geometry: SugarRuleGeometry,
  rung: StageRange,
  lineY: number | undefined,
): RungWords | undefined {
  const [top, bottom] = rungEnds(geometry, rung);
  if (bottom - top < NAMED_FROM[rung.kind]) return undefined;
  const isStage = rung.kind === 'stage';
  const sizePx = isStage ? 16 : 14;
  const name = geometry.ladder.namesApply ? stageName(rung.id) : '';
  const nameRight = name === '' ? NAME_LEFT : NAME_LEFT + textWidthPx(name, sizePx);
  const y = clearOfLine(top, bottom, lineY);
  return {
    name,
    isStage,
    sizePx,
    y,
    beads: beadsOn(geometry, rung, bottom - top, nameRight),
    crossed: lineY !== undefined && Math.abs(lineY - y) < CLEAR_OF_LINE,
  };
}

/** The middle of the rung, or where a tall rung has room above or below the line. */
function clearOfLine(top: number, bottom: number, lineY: number | undefined): number {
  const middle = (top + bottom) / 2;
  if (lineY === undefined || Math.abs(lineY - middle) >= CLEAR_OF_LINE) return middle;
  const room = [lineY - CLEAR_OF_LINE, lineY + CLEAR_OF_LINE].filter(
    (y) => y - 11 >= top && y + 11 <= bottom,
  );
  const [nearest] = room.sort((one, other) => Math.abs(one - middle) - Math.abs(other - middle));
  return nearest ?? middle;
}

/** Beads end at the joint, where the degrees begin. */
function beadsOn(
  { joint }: SugarRuleGeometry,
  rung: StageRange,
  height: number,
  nameRight: number,
): RungWords['beads'] {
  const count = waterBeads(rung);
  if (count === 0) return undefined;
  const rows = count > 10 ? 2 : Math.ceil(count / 5);
  const pitch = Math.min(5.4, (height - 3) / (rows + 0.2));
  const widest = Math.max(...beadPlaces(count, pitch).map(([x]) => x));
  const left = joint - 18 - widest;
  return left < nameRight + 4 ? undefined : { count, pitch, left };
}
