import type { WarningCode } from '../foundation/results/types.js';
import type { Grade } from '../foundation/validity/constants.js';
import type { RangeErrorCode } from '../foundation/validity/model-range-error.js';
import type { AdviceCode, RemedyCode, Severity } from '../job/advice/types.js';
import type { ProblemCode } from '../job/batch/problems.js';
import type { PlanModelId } from '../job/plan/models.js';
import type {
  CautionId,
  Moment,
  MomentId,
  PlannedGraining,
  PlannedKitchen,
  PlannedWrap,
  StepId,
  WindowEnd,
  WindowId,
} from '../job/plan/types.js';
import type { IngredientId } from '../matter/ingredients/types.js';
import type { MeasureUnit } from '../matter/measures/types.js';
import type { SpeciesId } from '../matter/species.js';
import type { GrainingWord } from '../models/graining/index.js';
import type {
  AnalysisReason,
  ClaimId,
  ClaimPortion,
  ClaimQuantity,
  LabelTest,
  StatementId,
} from '../models/nutrition/types.js';
import type { SourceId } from '../sources/ids.js';
import type { StageOrGapId } from './stages/ids.js';

/** How numbers and names are shown. */
export type DisplayOptions = {
  /** `metric`: °C first, grams. `us`: °F first, ounces beside the grams. */
  readonly units?: 'metric' | 'us' | undefined;
  /** `us` says hard candy, corn syrup, baking soda. By default it follows `units`. */
  readonly region?: 'world' | 'us' | undefined;
  /** A BCP 47 tag for digits and decimal marks; plain English figures by default. */
  readonly locale?: string | undefined;
};

/**
 * One sentence of the catalogue. `{readingC}` takes the number of that name, shown in the unit its
 * last letters say; `{125C}` is a fixed figure; `{sweets}` is a word of the region. A sentence whose
 * numbers are not there is left out. `A | B` is A, or B where A cannot be said.
 */
export type Sentence = string;

/** What is said about one caution. */
export type CautionWords = {
  readonly title: Sentence;
  readonly text: readonly Sentence[];
  readonly moments: readonly Moment[];
  /** Who knows better. */
  readonly defer?: Sentence;
  readonly grade: Grade;
  readonly source?: SourceId;
};

/** What is said about one advice; words of its own for a severity where the plain ones are too much or too little. */
export type AdviceWords = {
  readonly title: Sentence;
  readonly titles?: Readonly<Partial<Record<Severity, Sentence>>>;
  readonly text: readonly Sentence[];
  readonly texts?: Readonly<Partial<Record<Severity, readonly Sentence[]>>>;
};

/** What is said about a stage, or about the gap between two. */
export type StageWords = {
  /** Where the id, its hyphens made spaces, is not the name already. */
  readonly name?: string;
  /** Begins with the name; says what it is. */
  readonly sentence: string;
  readonly use: string;
  /** How a drop behaves in cold water. */
  readonly coldWater: string;
};

/** A word that differs by region: everywhere, then in the United States. */
export type ByRegion = string | readonly [world: string, us: string];

/** The whole catalogue: a translation is this type filled once more. */
export type Catalogue = {
  readonly advice: Readonly<Record<AdviceCode, AdviceWords>>;
  readonly analysisReasons: Readonly<Record<AnalysisReason, Sentence>>;
  readonly cautions: Readonly<Record<CautionId, CautionWords>>;
  readonly claimPortions: Readonly<Record<ClaimPortion, string>>;
  readonly claimQuantities: Readonly<Record<ClaimQuantity, string>>;
  readonly claims: Readonly<Record<ClaimId, string>>;
  readonly claimSentences: Readonly<Record<LabelTest['kind'], Sentence>>;
  readonly grades: Readonly<Record<Grade, string>>;
  /** Where the id, its hyphens made spaces, is not the name already. */
  readonly ingredients: Readonly<Partial<Record<IngredientId, ByRegion>>>;
  readonly kitchenFrom: Readonly<Record<PlannedKitchen['from'], string>>;
  readonly measureUnits: Readonly<Record<MeasureUnit, readonly [one: string, many: string]>>;
  readonly models: Readonly<Record<PlanModelId, string>>;
  readonly moments: Readonly<Record<Moment, string>>;
  readonly problems: Readonly<Record<ProblemCode, Sentence>>;
  readonly rangeErrors: Readonly<Record<RangeErrorCode, Sentence>>;
  readonly regionWords: Readonly<Record<string, readonly [world: string, us: string]>>;
  readonly remedies: Readonly<Record<RemedyCode, Sentence>>;
  readonly severities: Readonly<Record<Severity, string>>;
  /** Where the id, its hyphens made spaces, is not the name already. */
  readonly species: Readonly<Partial<Record<SpeciesId | 'syrup-solids' | 'saccharides', string>>>;
  readonly stages: Readonly<Record<StageOrGapId, StageWords>>;
  readonly statements: Readonly<Record<StatementId, Sentence>>;
  readonly steps: Readonly<Record<StepId, readonly Sentence[]>>;
  /** Where the source is named in few words: authors and year. */
  readonly shortCitations: Readonly<Partial<Record<SourceId, string>>>;
  /** What a field nobody gave is called in brackets behind its place, where its usual name is too long. */
  readonly notGiven: Readonly<Record<string, string>>;
  /** What stands in for a field nobody gave, by its path; `*` is a line of the formula. */
  readonly taken: Readonly<Record<string, Sentence>>;
  /** What a warning is about, where a field of a batch is not meant. */
  readonly warningParameters: Readonly<Record<string, string>>;
  readonly warnings: Readonly<Record<WarningCode, readonly Sentence[]>>;
  readonly cookMoments: Readonly<Record<MomentId, string>>;
  readonly windows: Readonly<Record<WindowId, string>>;
  readonly graining: Readonly<Record<GrainingWord, string>>;
  readonly noGraining: Readonly<
    Record<Extract<PlannedGraining, { readonly kind: 'none' }>['reason'], Sentence>
  >;
  readonly noWrap: Readonly<
    Record<Extract<PlannedWrap, { readonly kind: 'none' }>['reason'], string>
  >;
  readonly windowEnds: Readonly<Record<WindowEnd, string>>;
};
