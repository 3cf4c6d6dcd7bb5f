import type { StageRange } from 'vitrose';
import type { KitchenLadder } from './kitchen-ladder.js';

/** The rung a temperature of this kitchen lies on: a stage owns both its ends, a gap neither. */
export function rungAt({ rungs }: KitchenLadder, hereC: number): StageRange | undefined {
  const on = rungs.filter(({ lowC, highC }) => hereC >= lowC && hereC <= highC);
  // Where two stages meet, the end is the upper one's.
  return on.filter(({ kind }) => kind === 'stage').at(-1) ?? on[0];
}

/** Its id, or what lies off the ladder at either end. */
export function stageIdAt(
  ladder: KitchenLadder,
  hereC: number,
): StageRange['id'] | 'too-thin' | 'burnt' {
  const lowestC = ladder.rungs[0]?.lowC ?? hereC;
  return hereC < lowestC ? 'too-thin' : (rungAt(ladder, hereC)?.id ?? 'burnt');
}

/** The last rung that is syrup; above it sugar is dry. */
export function lastSyrup(rungs: readonly StageRange[]): StageRange | undefined {
  return rungs.filter(({ drySolidsMassFraction }) => drySolidsMassFraction !== null).at(-1);
}
