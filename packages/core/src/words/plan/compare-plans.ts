import type { PlanDocument } from '../../job/plan/types.js';
import { GRAINING_WORDS } from '../names/keeping-words.js';
import { spelled } from '../text/region.js';
import type { DisplayOptions } from '../types.js';
import { formatFraction, formatMass, formatMoisture } from '../units/amounts.js';
import { formatByKey } from '../units/by-key.js';
import { formatNumber } from '../units/number.js';
import { temperaturePair } from '../units/temperature.js';

/** One line of two plans side by side. */
export type ComparedLine = {
  /** Stable id. */
  readonly id: string;
  /** What is compared. */
  readonly label: string;
  /** In the first plan. */
  readonly here: string;
  /** In the other. */
  readonly there: string;
  /** The two read differently. */
  readonly differs: boolean;
};

/**
 * Two plans side by side, in the same words: where to stop, how long it takes, how it keeps, how
 * sweet it is, and how much heat its colour had to bear.
 *
 * Thermal load has a meaning only here: a ratio of two plans, never a colour.
 *
 * @param plan - What `planBatch` answers for the one batch.
 * @param other - For the other.
 * @param options - Units, region and locale.
 * @returns a line for everything both plans can say.
 * @example
 * const batch = {
 *   format: 'vitrose.batch/1' as const,
 *   formula: [{ ingredient: 'sucrose', massG: 200 }, { ingredient: 'water', massG: 70 }],
 *   cook: { toSeaLevelC: 148 },
 * };
 * const one = planBatch(batch);
 * const two = planBatch({ ...batch, kitchen: { elevationM: 1500 } });
 * one.kind === 'plan' && two.kind === 'plan' ? comparePlans(one.plan, two.plan)[0]?.label : ''
 * // 'Stop at'
 */
export function comparePlans(
  plan: PlanDocument,
  other: PlanDocument,
  options: DisplayOptions = {},
): readonly ComparedLine[] {
  const line = (
    id: string,
    label: string,
    show: (of: PlanDocument) => string | undefined,
  ): readonly ComparedLine[] => {
    const [here, there] = [show(plan), show(other)];
    return here === undefined || there === undefined
      ? []
      : [{ id, label, here, there, differs: here !== there }];
  };
  const share = (value: number) => formatFraction(value, options);
  const degrees = (value: number) => temperaturePair(value, 0, options)[0];
  return [
    ...line('stop', 'Stop at', ({ target }) => degrees(target.readingC.value)),
    ...line('minutes', 'From the cold pan to the stop', ({ cooking }) =>
      cooking === undefined ? undefined : formatByKey('atMin', cooking.toStopMin.value, options),
    ),
    ...line('water', 'Water left', ({ composition }) =>
      formatMoisture(composition.moistureMassFraction.value, options),
    ),
    ...line('hard', 'Stays hard up to about', ({ keeping }) =>
      degrees(keeping.glassTransitionC.value),
    ),
    ...line('late', 'Which the acid later lowers by', ({ inversion }) =>
      inversion === undefined
        ? undefined
        : formatByKey('costsK', Math.round(inversion.lateCostsK), options),
    ),
    ...line('inverted', 'Sucrose split in the boil', ({ inversion }) =>
      inversion === undefined ? undefined : share(inversion.earlyFraction.value),
    ),
    ...line('air', 'Humidity it bears, bare', ({ keeping }) =>
      keeping.air === undefined ? undefined : share(keeping.air.criticalRelativeHumidity.value),
    ),
    ...line('graining', 'Graining', ({ graining }) =>
      graining.kind === 'none' ? undefined : GRAINING_WORDS[graining.word],
    ),
    ...line('wrap', 'Stays hard in its wrap', ({ keeping: { wrap } }) =>
      wrap.kind === 'none' ? undefined : formatByKey('forDays', wrap.days.value, options),
    ),
    ...line('sweet', 'Sweetness, sugar being 1', ({ taste }) =>
      formatNumber(taste.relativeSweetness.value, 2, options),
    ),
    ...line('pieces', 'Whole pieces', ({ yield: made }) =>
      made.pieces === undefined ? undefined : formatNumber(made.pieces.value, 0, options),
    ),
    ...line('mass', 'Makes', ({ yield: made }) => formatMass(made.piecesG.value, options)),
    ...loadLine(plan, other, options),
  ];
}

/** Any choice of activation energy moves the index by up to a quarter; below that the two are the same. */
const SAME_LOAD = 1.25;

/** The only number here that has no meaning in one plan alone. */
function loadLine(
  { cooking: one }: PlanDocument,
  { cooking: two }: PlanDocument,
  options: DisplayOptions,
): readonly ComparedLine[] {
  const ratio = (two?.thermalLoadMin.value ?? 0) / (one?.thermalLoadMin.value ?? 0);
  if (!Number.isFinite(ratio) || ratio <= 0) return [];
  const differs = Math.abs(Math.log(ratio)) >= Math.log(SAME_LOAD);
  return [
    {
      id: 'load',
      label: spelled('Heat on the colour', options),
      here: '1',
      there: differs
        ? `${formatNumber(ratio, ratio < 1 ? 2 : 1, options)} times that`
        : 'about the same',
      differs,
    },
  ];
}
