import type { IngredientKind } from '../../matter/ingredients/types.js';
import type { WeighedLine } from './outcome.js';
import type { CautionId, PlannedCooking, PlannedPour, PlannedStep, StepId } from './types.js';

/** Minutes off the heat until the mass is clear: common practice. */
export const REST_MIN = { value: 5, source: 'common-practice', grade: 'practice' } as const;

/** The flame goes down here so that the end does not run away, K before the stop: common practice. */
export const TURN_DOWN_BEFORE_K = {
  value: 12,
  source: 'common-practice',
  grade: 'practice',
} as const;

/** A sheet on a slab is marked when its skin is firm and its core still gives: common practice. */
export const SCORE_AFTER_MIN = { value: 5, source: 'common-practice', grade: 'practice' } as const;

/** Drier than this, a powder or an oil brings no steam worth a warning: assumed. */
const MOIST_BELOW = 0.9;

/** Demould at the glass point, wrap ten degrees below it and within the half hour: common practice. */
export const WRAP_BELOW_GLASS_K = {
  value: 10,
  source: 'common-practice',
  grade: 'practice',
} as const;

/** The flame at the end of a boil nobody can time: common practice. */
export const USUAL_SHARE = { value: 0.3333, source: 'common-practice', grade: 'practice' } as const;

/** Less than a degree is within every thermometer, K: assumed. */
export const WORTH_SAYING_K = { value: 1, source: 'assumption', grade: 'assumed' } as const;

/** What the steps are told from. */
export type StepsQuestion = {
  readonly lines: readonly WeighedLine[];
  readonly pour: PlannedPour;
  readonly firstBoilC: number;
  readonly stopReadingC: number;
  readonly weighsAtStopG: number;
  readonly grossAtStopG: number | undefined;
  readonly glassTransitionC: number;
  readonly storeC: number;
  readonly roomC: number;
  /** The boil against the clock, where the hob gets there. */
  readonly cooking: PlannedCooking | undefined;
  /** Poured as a sheet, not into cavities. */
  readonly onSlab: boolean;
  /** Cautions of this plan, by id. */
  readonly cautions: ReadonlySet<CautionId>;
};

/**
 * The steps in their one order: dissolve, wash, boil, stop, off the heat, rest until clear, colour,
 * flavour, acid, pour at once. Acid before the rest costs a fifth to a half of the sucrose.
 */
export function planSteps(question: StepsQuestion): readonly PlannedStep[] {
  const { lines, pour, firstBoilC, stopReadingC, cautions, glassTransitionC } = question;
  const early = lines.filter(({ late }) => !late);
  const late = lines.filter((line) => line.late);
  const ofKind = (...kinds: readonly IngredientKind[]) =>
    late.filter(({ record }) => kinds.includes(record.kind));
  const hot = early
    .filter(({ when }) => when === 'first-boil' || typeof when === 'object')
    .sort((a, b) => heatOf(a) - heatOf(b));
  const rest = late.filter(({ record }) => !['colour', 'flavour', 'acid'].includes(record.kind));
  const powders = powdersWithWater(early);
  const steps: PlannedStep[] = [
    step('weigh', lines, {}, [
      'dogs-xylitol',
      'acid-powder',
      'strong-oils',
      'honey-under-one',
      'allergens',
    ]),
    ...(question.grossAtStopG === undefined
      ? []
      : [
          step(
            'weigh-empty-pan',
            [],
            { emptyMassG: question.grossAtStopG - question.weighsAtStopG },
            [],
          ),
        ]),
    ...some('make-syrup', powders, {}, []),
    step(
      'dissolve',
      early.filter((line) => line.when === 'start' && !powders.includes(line)),
      {},
      ['hot-sugar', 'sweetener-heat', 'pan-a-third-full', 'no-glass-thermometer'],
    ),
    step('wash-walls', [], {}, []),
    step('boil', [], { firstBoilC }, ['unattended', 'vacuum-vessels']),
    ...hot.map((line) =>
      step('add-hot', [line], { atC: heatOf(line) }, ['bicarbonate-foams', 'sweetener-heat']),
    ),
    ...turnDown(),
    step('stop', [], { readingC: stopReadingC, ...cookingNumbers() }, [
      'above-165',
      'never-water-on-hot-mass',
    ]),
    step(
      'weigh-pan',
      [],
      question.grossAtStopG === undefined
        ? { weighsAtStopG: question.weighsAtStopG }
        : { weighsAtStopG: question.weighsAtStopG, grossAtStopG: question.grossAtStopG },
      ['weighing-hot-pan'],
    ),
    step(
      'rest',
      [],
      {
        minutes: REST_MIN.value,
        belowC: late.length > 0 ? pour.flavourBelowC : pour.pourBetweenC[1],
      },
      ['burn-first-aid'],
    ),
    ...some('colour', ofKind('colour'), { belowC: pour.flavourBelowC }, wetOnly(ofKind('colour'))),
    ...some('flavour', ofKind('flavour'), { belowC: pour.flavourBelowC }, [
      'late-liquids',
      'alcohol-flavour',
      'glycol-flavour-vapour',
      'strong-oils',
    ]),
    ...some('other-late', rest, { belowC: coolEnough(rest, pour.flavourBelowC) }, [
      ...wetOnly(rest),
      'bicarbonate-foams',
      'sweetener-heat',
    ]),
    ...some('acid', ofKind('acid'), { lowC: pour.acidBetweenC[0], highC: pour.acidBetweenC[1] }, [
      'acid-powder',
      'acid-in-isomalt',
    ]),
    step('pour', [], { lowC: pour.pourBetweenC[0], highC: pour.pourBetweenC[1] }, ['mould-heat']),
    ...(question.onSlab ? [step('score', [], { minutes: SCORE_AFTER_MIN.value }, [])] : []),
    step('set', [], { demouldBelowC: glassTransitionC, roomC: question.roomC }, []),
    step(
      'wrap',
      [],
      {
        wrapBelowC: glassTransitionC - WRAP_BELOW_GLASS_K.value,
        withinMin: 30,
        roomC: question.roomC,
      },
      [],
    ),
    step('store', [], { storeC: question.storeC, hardUpToC: glassTransitionC }, []),
    step('give', [], {}, [
      'choking',
      'fructose-intolerance',
      'laxative',
      'polyol-child',
      'dogs-xylitol',
      'phenylalanine',
      'sour-teeth',
      'not-for-illness',
      'limits-are-local',
    ]),
  ];
  return steps;

  function step(
    id: StepId,
    handled: readonly WeighedLine[],
    numbers: Readonly<Record<string, number>>,
    wanted: readonly CautionId[],
  ): PlannedStep {
    return {
      id,
      lines: handled.map(({ path }) => path),
      numbers,
      cautions: wanted.filter((caution) => cautions.has(caution)),
    };
  }

  function some(
    id: StepId,
    handled: readonly WeighedLine[],
    numbers: Readonly<Record<string, number>>,
    wanted: readonly CautionId[],
  ): readonly PlannedStep[] {
    return handled.length === 0 ? [] : [step(id, handled, numbers, wanted)];
  }

  /** Where nobody knows the hob's end, the usual advice stands; where all of the flame will do, none. */
  function turnDown(): readonly PlannedStep[] {
    const { cooking } = question;
    const share = cooking?.turnDownToFraction ?? USUAL_SHARE.value;
    if (share >= 1) return [];
    const readingC = stopReadingC - TURN_DOWN_BEFORE_K.value;
    return [step('turn-down', [], { readingC, flameShare: share }, [])];
  }

  /** What the thermometer has yet to show, and what the pan has yet to give. */
  function cookingNumbers(): Readonly<Record<string, number>> {
    const { cooking } = question;
    const lagK = cooking?.lagTurnedDownK ?? 0;
    const carryOverK = cooking?.carryOverK?.value ?? 0;
    return {
      ...(cooking === undefined ? {} : { atMin: cooking.toStopMin.value }),
      ...(lagK >= WORTH_SAYING_K.value ? { lagK } : {}),
      ...(carryOverK >= WORTH_SAYING_K.value ? { carryOverK } : {}),
    };
  }

  /** Only what is wet makes steam. */
  function wetOnly(handled: readonly WeighedLine[]): readonly CautionId[] {
    return handled.some(({ drySolids }) => drySolids.value < MOIST_BELOW) ? ['late-liquids'] : [];
  }

  function coolEnough(handled: readonly WeighedLine[], usualC: number): number {
    return Math.min(usualC, ...handled.map(({ record }) => record.maxAdditionC?.value ?? usualC));
  }

  function heatOf({ when }: WeighedLine): number {
    return typeof when === 'object' ? when.atC : firstBoilC;
  }
}

/** Powders with the water written down for them, and that water: they are stirred to a syrup first. */
function powdersWithWater(early: readonly WeighedLine[]): readonly WeighedLine[] {
  const wet = early.filter(({ line, when }) => 'makeUpWaterFor' in line && when === 'start');
  const names = wet.flatMap(({ line }) =>
    'makeUpWaterFor' in line ? [line.makeUpWaterFor.ingredient] : [],
  );
  const powders = early.filter(({ id, when }) => names.includes(id) && when === 'start');
  return powders.length === 0 ? [] : [...powders, ...wet];
}
