import type { Mixture } from '../../matter/mixture/types.js';
import { type BoilingPoint, boilingPoint } from '../../models/boiling/index.js';
import { readPieces, type Wanted } from '../batch/pieces.js';
import type { BatchDocument } from '../batch/types.js';
import { type Ledger, warn } from '../ledger.js';
import { type Curve, hardnessCurve } from './curve.js';
import { type InputBands, inputBands, type Moved } from './input-bands.js';
import { readStore, type Store } from './keeping.js';
import { type Kitchen, readKitchen } from './kitchen.js';
import { finishedMixture, outcomeOf } from './outcome.js';
import { planPolyols } from './polyols.js';
import { refusals } from './refusals.js';
import { type Weighed, weighBatch } from './weigh-batch.js';

/** From this share of the whole on a mass is a polyol's, not a sugar's. */
const POLYOL_MASS_SHARE = 0.5;

/** A batch that can be: weighed, with its stop, and everything the plan is told from. */
export type Settled = Weighed & {
  readonly batch: BatchDocument;
  readonly kitchen: Kitchen;
  readonly wanted: Wanted;
  readonly store: Store;
  /** The sweet as it leaves the pan, all of the late water kept. */
  readonly finished: Mixture;
  readonly firstBoil: BoilingPoint;
  /** Hotter against harder, where it is asked for or the mass is a polyol's. */
  readonly curve: Curve | undefined;
  readonly polyolShare: number;
  readonly isPolyolMass: boolean;
  readonly outcome: Moved;
  readonly inputs: InputBands;
};

/** Settles what is weighed and where it stops, or writes down everything that stands in the way. */
export function settle(batch: BatchDocument, ledger: Ledger): Settled | undefined {
  const kitchen = readKitchen(batch, ledger);
  const wanted = readPieces(batch, ledger);
  const store = readStore(batch, ledger);
  const weighed = weighBatch(batch, kitchen, wanted, ledger);
  if (kitchen === undefined || weighed === undefined || ledger.problems.length > 0)
    return undefined;
  const { lines, pots, stop } = weighed;
  const pressurePa = kitchen.pressureInPanPa;
  const finished = finishedMixture(pots, stop.baseDrySolids);
  const firstBoil = boilingPoint(pots.charge, { pressurePa });
  warn(ledger, firstBoil.warnings);
  const polyolShare = planPolyols(finished, undefined)?.massFraction ?? 0;
  const isPolyolMass = polyolShare > POLYOL_MASS_SHARE;
  const wantsCurve = isPolyolMass || stop.asked === 'glass-transition';
  const curve = wantsCurve ? hardnessCurve(pots.base, pots.late, pressurePa) : undefined;
  const firstBoilC = firstBoil.boilingPointC;
  ledger.problems.push(...refusals({ batch, pots, stop, curve, firstBoilC, store, lines }));
  if (ledger.problems.length > 0) return undefined;
  const outcome: Moved = {
    ...outcomeOf(pots, stop.baseDrySolids),
    hereC: stop.hereC,
    seaLevelC: stop.seaLevelC,
    baseMoisture: 1 - stop.baseDrySolids,
  };
  const inputs = inputBands(lines, stop, { cook: batch.cook, pressurePa }, outcome);
  return {
    ...weighed,
    batch,
    kitchen,
    wanted,
    store,
    finished,
    firstBoil,
    curve,
    polyolShare,
    isPolyolMass,
    outcome,
    inputs,
  };
}
