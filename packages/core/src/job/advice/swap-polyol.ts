import { glassAt } from '../plan/curve.js';
import { fillPots, type WeighedLine } from '../plan/outcome.js';
import { lineIndex, scaleLine } from './amounts.js';
import type { Change } from './types.js';

/** Points of the dry solids taken out at a time, and then everything. */
const STEPS = [0.05, 0.1, 0.15, 0.2] as const;

/** A swap of one polyol for the isomalt beside it, and the glass point it leaves at the same water. */
export type Swap = {
  readonly changes: readonly Change[];
  readonly glassTransitionC: number;
  readonly points: number;
};

/**
 * Less of a soft polyol and as much more isomalt, in small steps and last without any. Only where
 * both lines say their amount in the same way, so that the change stays readable.
 *
 * @param dryG - Dry solids of the base, g.
 * @param moisture - Water of the base at which the glass points are compared, 0–1.
 */
export function swapPolyol(
  lines: readonly WeighedLine[],
  {
    from,
    dryG,
    moisture,
  }: { readonly from: string; readonly dryG: number; readonly moisture: number },
): readonly Swap[] {
  const soft = lines.find((line) => line.id === from && line.massG > 0 && !line.late);
  const hard = lines.find(
    (line) => (line.id === 'isomalt' || line.id === 'isomalt-dry') && line.massG > 0,
  );
  if (soft === undefined || hard === undefined || amountKind(soft.line) === undefined) return [];
  if (amountKind(soft.line) !== amountKind(hard.line)) return [];
  const share = (soft.massG * soft.drySolids.value) / dryG;
  return [...STEPS.filter((step) => step < share - 1e-9), share].flatMap((points) => {
    const left = 1 - points / share;
    const gained = 1 + (points * dryG) / (hard.massG * hard.drySolids.value);
    const pots = fillPots(
      lines.map((line) => {
        if (line === soft) return { ...line, massG: line.massG * left };
        return line === hard ? { ...line, massG: line.massG * gained } : line;
      }),
    );
    if (pots === undefined) return [];
    const taken =
      left < 1e-9
        ? { path: soft.path, value: null }
        : scaleLine(soft.line, lineIndex(soft.path), left);
    return [
      {
        changes: [scaleLine(hard.line, lineIndex(hard.path), gained), taken],
        points,
        glassTransitionC: glassAt(pots.base, pots.late, moisture),
      },
    ];
  });
}

function amountKind(line: object): string | undefined {
  return ['massG', 'shareOfDrySolids'].find((key) => key in line);
}
