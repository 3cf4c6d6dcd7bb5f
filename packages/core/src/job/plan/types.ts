import type { ModelWarning, Span } from '../../foundation/results/types.js';
import type { Grade } from '../../foundation/validity/constants.js';
import type { StageId } from '../../models/stages/types.js';
import type { SourceId } from '../../sources/ids.js';
import type { Advice } from '../advice/types.js';
import type { Aim, When } from '../batch/types.js';
import type { PlanModelId } from './models.js';

/** One number of a plan. Its unit is in the key it stands under. */
export type Figure = {
  readonly value: number;
  /** Within this about nine times in ten, if the inputs are right; same unit. */
  readonly band: Span;
  /** Key into `plan.models`. */
  readonly model: PlanModelId;
};

/** What a model of the plan is, for the reader who opens a number. */
export type PlanModel = {
  readonly equation: string;
  readonly sources: readonly SourceId[];
  readonly grade: Grade;
};

/** What `planBatch` answers: `vitrose.plan/1`. No clock in it: the same batch gives the same plan. */
export type PlanDocument = {
  readonly format: 'vitrose.plan/1';
  readonly name?: string | undefined;
  readonly kitchen: PlannedKitchen;
  readonly target: PlannedTarget;
  readonly formula: readonly PlannedLine[];
  readonly composition: PlannedComposition;
  readonly pan: PlannedPan;
  readonly yield: PlannedYield;
  readonly lateWater: PlannedLateWater;
  readonly keeping: PlannedKeeping;
  readonly pour: PlannedPour;
  readonly taste: PlannedTaste;
  readonly polyols?: PlannedPolyols | undefined;
  readonly steps: readonly PlannedStep[];
  readonly cautions: readonly PlannedCaution[];
  readonly advice: readonly Advice[];
  readonly warnings: readonly ModelWarning[];
  readonly defaults: readonly TakenDefault[];
  readonly models: Readonly<Partial<Record<PlanModelId, PlanModel>>>;
};

/** The air at the pan and how it is known. */
export type PlannedKitchen = {
  readonly from:
    | 'elevation'
    | 'barometer'
    | 'weather-service'
    | 'trusted-thermometer'
    | 'boiling-water-reading'
    | 'sea-level';
  readonly pressurePa: Figure;
  readonly waterBoilsAtC: Figure;
  /** What the gauge takes off, and what is left. */
  readonly vacuum?:
    | { readonly underVacuumPa: number; readonly pressureInPanPa: Figure }
    | undefined;
  /** This thermometer in boiling water, less the true temperature: thermometer and weather together. */
  readonly readingDifferenceK?: Figure | undefined;
  /** The difference is the thermometer's own, because a second one vouches for the water. */
  readonly differenceIsTheThermometers: boolean;
  /** How far the stop would move if the reading were all thermometer instead of all air. */
  readonly causeMattersK?: number | undefined;
};

/** Where to stop. */
export type PlannedTarget = {
  readonly asked: 'stage' | 'sea-level' | 'moisture' | 'glass-transition';
  readonly stage?: StageId | undefined;
  readonly aim?: Aim | undefined;
  /** For this mixture at sea level. */
  readonly seaLevelC: Figure;
  /** For this mixture at the pressure in this pan. */
  readonly hereC: Figure;
  /** On this thermometer: the large number. */
  readonly readingC: Figure;
  /** Readings at which the sweet is still good, rounded inwards to whole degrees where that leaves room. */
  readonly windowReadingC: Span;
  /** The same window before rounding. */
  readonly exactWindowReadingC: Span;
  /** What ends the window at either side. */
  readonly windowEnds: readonly [low: WindowEnd, high: WindowEnd];
  /** From sea level to here. */
  readonly shiftK: Figure;
  /** How the reading was made from the true temperature. */
  readonly correction: 'none' | 'shift' | 'scale';
  /** The stage or gap the stop lies in; nothing where stage names do not apply. */
  readonly stageAtStop?:
    | { readonly kind: 'too-thin' | 'stage' | 'between' | 'dry' | 'burnt'; readonly id: string }
    | undefined;
  /** Stage names mean something for this mixture. */
  readonly stageNamesApply: boolean;
  /** Hotter against drier against harder, where a glass point was asked for or the mass is a polyol's. */
  readonly curve?: readonly CurvePoint[] | undefined;
  /** From here on ten degrees more buy less than 2 K of glass transition. */
  readonly kneeReadingC?: number | undefined;
};

/** What ends the window of good readings. */
export type WindowEnd = 'water' | 'glass' | 'sugar-limit' | 'knee' | 'stage';

/** A stop and what it leaves. */
export type CurvePoint = {
  readonly hereC: number;
  readonly readingC: number;
  readonly moistureMassFraction: number;
  readonly glassTransitionC: number;
};

/** A line of the formula in grams. */
export type PlannedLine = {
  /** JSON Pointer into the batch document. */
  readonly path: string;
  readonly ingredient: string;
  readonly massG: Figure;
  readonly waterG: number;
  readonly drySolidsG: number;
  readonly when: When;
  /** The form a spoon measure was taken in. */
  readonly form?: string | undefined;
  readonly asWritten?: string | undefined;
};

/** What the mass is made of, from cold pan to finished sweet. */
export type PlannedComposition = {
  readonly chargeG: Figure;
  readonly startDrySolidsMassFraction: Figure;
  readonly firstBoilC: Figure;
  readonly boilOffG: Figure;
  /** At the stop, before anything late goes in. */
  readonly baseG: Figure;
  readonly baseDrySolidsMassFraction: Figure;
  readonly baseMoistureMassFraction: Figure;
  /** Of the finished sweet with all late water kept, the wet bound; the band reaches down to none kept. */
  readonly moistureMassFraction: Figure;
  /** Shares of the dry solids, largest first: species ids and, for starch syrups, `syrup-solids`. */
  readonly drySolidsShares: Readonly<Record<string, number>>;
};

/** The pan before and at the stop. */
export type PlannedPan = {
  /** Contents only. */
  readonly weighsAtStopG: Figure;
  /** With pan, spoon and probe. */
  readonly grossAtStopG?: Figure | undefined;
  readonly chargeMl: Figure;
  readonly filledFraction?: Figure | undefined;
  readonly depthAtStopMm?: Figure | undefined;
};

/** What comes out. */
export type PlannedYield = {
  /** Finished mass in the pan: the base and everything late, before losses. */
  readonly finishedG: Figure;
  /** Left on pan and tools. */
  readonly leftBehindG: Figure;
  readonly breakFraction: number;
  /** In whole pieces, after losses and breakage. */
  readonly piecesG: Figure;
  readonly pieceG?: Figure | undefined;
  readonly cavityMl?: number | undefined;
  readonly pieces?: Figure | undefined;
  readonly wishedPieces?: number | undefined;
  /** How often the cook fills the mould, or all the moulds there are. */
  readonly pours?:
    | { readonly full: number; readonly rest: number; readonly cavities: number }
    | undefined;
};

/** Water that comes with what goes in off the heat. */
export type PlannedLateWater = {
  readonly massG: number;
  readonly moistureRisePoints: Figure;
};

/** Whether it stays hard. */
export type PlannedKeeping = {
  /** Stays hard up to about here. */
  readonly glassTransitionC: Figure;
  readonly storeC: number;
  readonly storeRelativeHumidity?: number | undefined;
  readonly forDays: number;
  readonly marginK: Figure;
};

/** How the mass meets the mould. */
export type PlannedPour = {
  /** The hottest mass that may go into this mould. */
  readonly mouldMaxC?: number | undefined;
  /** Rest until the mass has fallen to this before flavour. */
  readonly flavourBelowC: number;
  /** Acid goes in between these. */
  readonly acidBetweenC: Span;
  readonly pourBetweenC: Span;
};

/** How sweet beside sugar. */
export type PlannedTaste = {
  readonly relativeSweetness: Figure;
  /** Species in the sweet whose sweetness is not in the sum. */
  readonly leavesOut: readonly string[];
};

/** Sugar alcohols in a piece, beside the guide for one sitting. Information, not advice. */
export type PlannedPolyols = {
  readonly massFraction: number;
  readonly perPieceG?: number | undefined;
  /** One piece, as a share of the guide for a child of 20 kg. */
  readonly childShare?: Figure | undefined;
  /** Pieces that reach the guide for a child of 20 kg. */
  readonly childPieces?: number | undefined;
};

/** What a step asks the hand to do. Sentences stand in `vitrose/words`. */
export type StepId =
  | 'weigh'
  | 'weigh-empty-pan'
  | 'dissolve'
  | 'wash-walls'
  | 'boil'
  | 'add-hot'
  | 'turn-down'
  | 'stop'
  | 'weigh-pan'
  | 'rest'
  | 'colour'
  | 'flavour'
  | 'acid'
  | 'other-late'
  | 'pour'
  | 'score'
  | 'set'
  | 'wrap'
  | 'store'
  | 'give';

/** One step, in order. */
export type PlannedStep = {
  readonly id: StepId;
  /** Paths of the formula lines that are handled in it. */
  readonly lines: readonly string[];
  readonly numbers: Readonly<Record<string, number>>;
  /** Caution ids that belong to the moment. */
  readonly cautions: readonly CautionId[];
};

/** When a caution matters. */
export type Moment = 'buying' | 'weighing' | 'hot' | 'pouring' | 'giving' | 'storing';

/** Every caution the library knows; the words stand in `vitrose/words`. */
export type CautionId =
  | 'hot-sugar'
  | 'burn-first-aid'
  | 'never-water-on-hot-mass'
  | 'late-liquids'
  | 'alcohol-flavour'
  | 'glycol-flavour-vapour'
  | 'strong-oils'
  | 'acid-powder'
  | 'sour-teeth'
  | 'above-165'
  | 'no-glass-thermometer'
  | 'weighing-hot-pan'
  | 'pan-a-third-full'
  | 'vacuum-vessels'
  | 'mould-heat'
  | 'unattended'
  | 'dogs-xylitol'
  | 'choking'
  | 'laxative'
  | 'polyol-child'
  | 'fructose-intolerance'
  | 'phenylalanine'
  | 'sweetener-heat'
  | 'honey-under-one'
  | 'allergens'
  | 'limits-are-local'
  | 'not-for-illness'
  | 'acid-in-isomalt'
  | 'bicarbonate-foams';

/** A caution of this plan, and whether it stands at the top. */
export type PlannedCaution = {
  readonly id: CautionId;
  readonly moment: Moment;
  /** One of the at most three that can do the most harm here. */
  readonly atTop: boolean;
  readonly numbers: Readonly<Record<string, number>>;
};

/** A default the plan took because the document says nothing. */
export type TakenDefault = {
  /** Where the field would stand. */
  readonly path: string;
  readonly value: number | string | boolean;
  readonly low?: number | undefined;
  readonly high?: number | undefined;
  readonly grade: Grade;
};
