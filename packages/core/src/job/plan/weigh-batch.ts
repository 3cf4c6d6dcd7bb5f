import type { Span } from '../../foundation/results/types.js';
import { totalG } from '../../matter/mixture/assemble.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { DRY_GLASS } from '../../models/glass/index.js';
import { openAmounts } from '../batch/amounts.js';
import { readLines } from '../batch/lines.js';
import { finishedMassWanted, type Wanted } from '../batch/pieces.js';
import type { BatchDocument } from '../batch/types.js';
import { type Ledger, refuse } from '../ledger.js';
import type { Kitchen } from './kitchen.js';
import { fillPots, type Pots, type WeighedLine } from './outcome.js';
import { sizeBatch, weighLines } from './sizes.js';
import { findStop, type Stop } from './stop.js';
import { drySolidsG } from './without-ethanol.js';

/** A first guess at the water left, good enough to size a batch with. */
const FIRST_MOISTURE = 0.03;
/** Sizing and stopping settle in two or three rounds; more would mean they never do. */
const ROUNDS = 8;
const SETTLED = 1e-9;
/** A share of next to nothing asks for this much of it, g: a tonne, and no kitchen's. */
const HEAVIEST_LINE_G = 1_000_000;
/** A charge drier than this melts; it does not boil. */
const LEAST_WATER = 0.01;
/** Less than this of what makes a sweet is no sweet. */
const LEAST_SOLIDS = 1e-6;

/** The formula in grams, the pots it fills, and where they stop. */
export type Weighed = {
  readonly lines: readonly WeighedLine[];
  readonly pots: Pots;
  readonly stop: Stop;
};

/**
 * Weighs every line and finds the stop. Shares need the water left, and the water left needs the
 * shares: the two are settled in turn.
 */
export function weighBatch(
  batch: BatchDocument,
  kitchen: Kitchen | undefined,
  wanted: Wanted,
  ledger: Ledger,
): Weighed | undefined {
  const open = openAmounts(readLines(batch, ledger), ledger);
  if (ledger.problems.length > 0 || kitchen === undefined) return undefined;
  const pressurePa = kitchen.pressureInPanPa;
  const wantedG = finishedMassWanted(wanted);
  let moisture = FIRST_MOISTURE;
  let composition: readonly number[] = [];
  let weighed: Weighed | undefined;
  for (let round = 0; round < ROUNDS; round += 1) {
    const sizes = sizeBatch(open, wantedG, moisture, ledger);
    if (sizes === undefined) return undefined;
    const grams = weighLines(open, sizes);
    const lines = open.map((line, index) => ({ ...line, massG: grams[index] ?? 0 }));
    const heavy = lines.find(({ massG }) => massG > HEAVIEST_LINE_G);
    if (heavy !== undefined) {
      const limits: Span = [0, HEAVIEST_LINE_G];
      return refuse(ledger, {
        code: 'outside-range',
        path: heavy.path,
        received: heavy.massG,
        limits,
      });
    }
    const pots = fillPots(lines);
    if (pots === undefined || isNoSweet(pots.base)) {
      return refuse(ledger, { code: 'nothing-to-cook', path: '/formula' });
    }
    if (pots.base.waterG < LEAST_WATER * pots.base.massG) {
      return refuse(ledger, { code: 'no-water', path: '/formula' });
    }
    const next = sharesOf(pots);
    const sameMix = weighed !== undefined && isSame(next, composition);
    const stop =
      sameMix && weighed !== undefined
        ? weighed.stop
        : findStop({ ...pots, cook: batch.cook, pressurePa }, ledger);
    if (stop === undefined) return undefined;
    weighed = { lines, pots, stop };
    const settled = Math.abs(1 - stop.baseDrySolids - moisture) < SETTLED;
    if (settled || isWeighedOnly(open)) break;
    composition = next;
    moisture = 1 - stop.baseDrySolids;
  }
  return weighed;
}

/** Water with next to nothing in it, or with nothing in it that makes a glass: salt, protein, a sweetener alone. */
function isNoSweet({ solids, massG }: Mixture): boolean {
  const glassy = solids.filter(
    (solid) => solid.kind === 'saccharides' || solid.species in DRY_GLASS,
  );
  return totalG(glassy) < LEAST_SOLIDS * massG;
}

/** Nothing depends on the size: one round is enough. */
function isWeighedOnly(open: ReturnType<typeof openAmounts>): boolean {
  return open.every(({ mass }) => mass.perSolid === 0 && mass.perFinished === 0);
}

/** Everything the stop depends on: shares of the base's solids, and what comes late beside them. */
function sharesOf({ base, late }: Pots): readonly number[] {
  const dry = drySolidsG(base);
  return [
    ...base.solids.map(({ massG }) => massG / dry),
    ...base.apart.map(({ massG }) => massG / dry),
    ...(late === undefined
      ? []
      : [
          late.waterG / dry,
          ...late.solids.map(({ massG }) => massG / dry),
          ...late.apart.map(({ massG }) => massG / dry),
        ]),
  ];
}

function isSame(a: readonly number[], b: readonly number[]): boolean {
  return (
    a.length === b.length && a.every((share, index) => Math.abs(share - (b[index] ?? 0)) < SETTLED)
  );
}
