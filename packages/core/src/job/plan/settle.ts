import type { Mixture } from '../../matter/mixture/types.js';
import { type BoilingPoint, boilingPoint } from '../../models/boiling/index.js';
import { readPieces, type Wanted } from '../batch/pieces.js';
import type { BatchDocument } from '../batch/types.js';
import { type Ledger, newLedger, warn } from '../ledger.js';
import { type Boil, boilOn } from './cooking/boil.js';
import { type EarlyInversion, invertedPots, invertInTheBoil } from './cooking/invert.js';
import { type Curve, hardnessCurve } from './curve.js';
import { type InputBands, inputBands, type Moved } from './input-bands.js';
import { readStore, type Store } from './keeping.js';
import { type Kitchen, readKitchen } from './kitchen.js';
import { finishedMixture, outcomeOf, type Pots } from './outcome.js';
import { planPolyols } from './polyols.js';
import { refusals } from './refusals.js';
import { atSolids, findStop } from './stop.js';
import { type Weighed, weighBatch } from './weigh-batch.js';

/** From this share of the whole on a mass is a polyol's, not a sugar's. */
const POLYOL_MASS_SHARE = 0.5;

/** A batch that can be: weighed, with its stop, and everything the plan is told from. */
export type Settled = Weighed & {
  readonly batch: BatchDocument;
  readonly kitchen: Kitchen;
  readonly wanted: Wanted;
  readonly store: Store;
  /** The pots as weighed; `pots` holds what acid in the boil made of them. */
  readonly asWeighed: Pots;
  /** Absent where this hob never gets there. */
  readonly boil: Boil | undefined;
  /** Absent where no sucrose is in the pan. */
  readonly early: EarlyInversion | undefined;
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
  const { lines } = weighed;
  const pressurePa = kitchen.pressureInPanPa;
  const firstBoil = boilingPoint(weighed.pots.charge, { pressurePa });
  warn(ledger, firstBoil.warnings);
  const polyolShare =
    planPolyols(finishedMixture(weighed.pots, weighed.stop.baseDrySolids), undefined)
      ?.massFraction ?? 0;
  const isPolyolMass = polyolShare > POLYOL_MASS_SHARE;
  const wantsCurve = isPolyolMass || weighed.stop.asked === 'glass-transition';
  const asked = { batch, store, lines, firstBoilC: firstBoil.boilingPointC };
  const curveOf = ({ base, late }: Pots) =>
    wantsCurve ? hardnessCurve(base, late, pressurePa) : undefined;
  const firstCurve = curveOf(weighed.pots);
  ledger.problems.push(...refusals({ ...weighed, ...asked, curve: firstCurve }));
  if (ledger.problems.length > 0) return undefined;
  const second = secondPass(batch, kitchen, weighed, ledger);
  const { pots, stop, boil, early } = second;
  const curve = pots === weighed.pots ? firstCurve : curveOf(pots);
  const finished = finishedMixture(pots, stop.baseDrySolids);
  const outcome: Moved = {
    ...outcomeOf(pots, stop.baseDrySolids),
    hereC: stop.hereC,
    seaLevelC: stop.seaLevelC,
    baseMoisture: 1 - stop.baseDrySolids,
  };
  const inputs = inputBands(
    lines,
    stop,
    { cook: batch.cook, pressurePa, inverted: early?.byAcid ?? 0 },
    outcome,
  );
  return {
    ...weighed,
    asWeighed: weighed.pots,
    pots,
    stop,
    boil,
    early,
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

/**
 * The boil against the clock, what its acid makes of the sugar, and stop and clock once more for
 * that. One round is enough: acid that matters has done its work long before the last degrees.
 */
function secondPass(
  batch: BatchDocument,
  kitchen: Kitchen,
  { lines, pots: first, stop: firstStop }: Weighed,
  ledger: Ledger,
): Pick<Settled, 'pots' | 'stop' | 'boil' | 'early'> {
  const boil = boilOn({ batch, base: first.base, stop: firstStop, kitchen }, ledger);
  const early =
    boil === undefined ? undefined : invertInTheBoil({ lines, pots: first, batch, boil });
  const pots = invertedPots(first, early?.byAcid ?? 0);
  if (pots === first) return { pots, stop: firstStop, boil, early };
  const question = { ...pots, cook: batch.cook, pressurePa: kitchen.pressureInPanPa };
  // Inversion is an estimate, and nothing is refused for one: then the sweet stops as dry as it
  // would without its acid, and the advice says what that acid costs.
  const trial = newLedger();
  const stop =
    findStop(question, trial) ??
    atSolids(question, firstStop.baseDrySolids, firstStop.asked, ledger);
  warn(ledger, trial.warnings);
  return {
    pots,
    stop,
    boil: boilOn({ batch, base: pots.base, stop, kitchen }, newLedger()),
    early,
  };
}
