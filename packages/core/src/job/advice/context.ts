import type { Mixture } from '../../matter/mixture/types.js';
import type { BatchDocument } from '../batch/types.js';
import type { Boil } from '../plan/cooking/boil.js';
import type { EarlyInversion } from '../plan/cooking/invert.js';
import type { Curve } from '../plan/curve.js';
import type { Moved } from '../plan/input-bands.js';
import type { Kitchen } from '../plan/kitchen.js';
import type { Pots, WeighedLine } from '../plan/outcome.js';
import type { Stop } from '../plan/stop.js';
import type {
  PlannedCooking,
  PlannedGraining,
  PlannedInversion,
  PlannedKeeping,
  PlannedPan,
  PlannedPour,
  PlannedTarget,
  PlannedTaste,
  PlannedYield,
} from '../plan/types.js';

/** Everything advice may look at: the document and the numbers already worked out. */
export type AdviceContext = {
  readonly batch: BatchDocument;
  readonly lines: readonly WeighedLine[];
  readonly pots: Pots;
  readonly finished: Mixture;
  readonly kitchen: Kitchen;
  readonly stop: Stop;
  readonly curve: Curve | undefined;
  readonly outcome: Moved;
  readonly target: PlannedTarget;
  readonly pan: PlannedPan;
  readonly yield: PlannedYield;
  readonly keeping: PlannedKeeping;
  readonly pour: PlannedPour;
  readonly asWeighed: Pots;
  readonly boil: Boil | undefined;
  readonly early: EarlyInversion | undefined;
  readonly cooking?: PlannedCooking | undefined;
  readonly inversion?: PlannedInversion | undefined;
  readonly graining: PlannedGraining;
  readonly taste: PlannedTaste;
  readonly firstBoilC: number;
  readonly lateWaterG: number;
  readonly causeMattersK: number | undefined;
  /** More than half of it is polyols: it is poured hotter than sugar. */
  readonly isPolyolMass: boolean;
};
