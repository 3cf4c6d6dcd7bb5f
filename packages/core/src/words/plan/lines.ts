import type { PlanDocument, PlannedLine } from '../../job/plan/types.js';

/** One thing to weigh: a line of the formula, or several that are the same thing at the same time. */
export type ThingToWeigh = {
  readonly line: PlannedLine;
  readonly massG: number;
  /** The masses of the lines it was joined from; one where there was nothing to join. */
  readonly partsG: readonly number[];
};

/** Lines of one ingredient that go in together become one, unless the cook's own words stand beside them. */
export function thingsToWeigh(formula: PlanDocument['formula']): readonly ThingToWeigh[] {
  const things: ThingToWeigh[] = [];
  for (const line of formula) {
    const at = things.findIndex((thing) => isSameThing(thing.line, line));
    const known = things[at];
    const massG = line.massG.value;
    if (known === undefined) things.push({ line, massG, partsG: [massG] });
    else {
      const partsG = [...known.partsG, massG];
      things[at] = { line: known.line, massG: known.massG + massG, partsG };
    }
  }
  return things;
}

function isSameThing(a: PlannedLine, b: PlannedLine): boolean {
  return (
    a.ingredient === b.ingredient &&
    [a, b].every(({ asWritten, form }) => asWritten === undefined && form === undefined) &&
    Math.abs(drySolidsOf(a) - drySolidsOf(b)) < 1e-9 &&
    JSON.stringify(a.when) === JSON.stringify(b.when)
  );
}

function drySolidsOf({ drySolidsG, massG }: PlannedLine): number {
  return massG.value > 0 ? drySolidsG / massG.value : 0;
}
