import { around, joinBands } from '../../foundation/results/band.js';
import type { Checked, Span } from '../../foundation/results/types.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { glassTransition } from './glass-transition.js';
import { aboveGlassK, candyCurve, syrupCurve, universalCurve } from './viscosity-curves.js';

const source = 'candy-viscosity-landmarks',
  grade = 'derived';

/** How thick the mass is at each step, log₁₀ of Pa·s. */
export const WORKING_VISCOSITIES = {
  deposit: { value: 1, source, grade },
  'pour-easily': { value: 1.477, source, grade, note: '30 Pa·s' },
  'pour-last': { value: 2, source, grade },
  fold: { value: 3, source: 'glass-points', grade: 'memory', note: 'working point of glass' },
  stamp: { value: 4, source, grade },
  'keep-shape': {
    value: 6.6,
    source: 'glass-points',
    grade: 'memory',
    note: 'softening point of glass',
  },
  stick: { value: 7, source: 'downton-1982', grade: 'memory' },
  sag: { value: 9, source, grade, note: 'seen in weeks, under about 100 Pa of its own weight' },
  demould: { value: 12, source: 'glass-points', grade: 'memory', note: 'glass' },
} as const satisfies CitedConstants;

/** Wrapped this far below the glass transition, K: no viscosity, but practice. */
export const WRAP_BELOW_GLASS = {
  value: 10,
  source: 'common-practice',
  grade: 'practice',
} as const;

/** One temperature of the mass that a step needs. */
export type WorkingTemperature = {
  /** °C. */
  readonly temperatureC: number;
  /** On which side of it the step is done, or the trouble begins. */
  readonly side: 'from-here-up' | 'from-here-down';
  /** Where the curve of syrups and the universal curve put it, °C. */
  readonly betweenCurvesC: Span;
  /** The same with the error of the glass transition, °C: within this about nine times in ten. */
  readonly band: Span;
};

/**
 * The steps, hottest first. `deposit`: runs from a funnel or a depositor. `pour-easily`, `pour-last`: by
 * hand, with ease and at all. `fold`: cool enough to fold, to rope and to begin pulling. `stamp`: cool
 * enough to form. `keep-shape`: pulling ends, and it keeps its shape for minutes. `stick`: from here up
 * its surface sticks. `sag`: from here up it sags in weeks under its own weight. `demould`: comes out of
 * the mould. `wrap`: can be wrapped.
 */
export type WorkingStepId = keyof typeof WORKING_VISCOSITIES | 'wrap';

/** What `workingTemperatures` answers. */
export type WorkingTemperatures = Checked<{
  /** °C. */
  glassTransitionC: number;
  /** Of the glass transition, °C. */
  band: Span;
  steps: Readonly<Record<WorkingStepId, WorkingTemperature>>;
}>;

/**
 * Temperatures at which this mass pours, folds, stamps, sets and can be wrapped.
 *
 * Each is the warmth at which a mass of this glass transition is as thick as the step wants it. Hand
 * pouring reaches further down than depositing. Hand pulling in print is 50 to 55 °C, cooler than
 * here: that mass is doctored with acid, and the thermometer reads its skin. A room warmer than the
 * answer for `demould` or `wrap` cannot do it.
 *
 * @equation ΔT = C₂·(12 − log₁₀ η)/(C₁ − 12 + log₁₀ η), T = Tg + ΔT; C₁ 17.84, C₂ 48.8
 * @param mixture - The finished mass, with its water.
 * @returns `steps`: for each its `temperatureC`, the `side` of it that counts, what lies
 *   `betweenCurvesC`, and its `band`, °C; with the glass transition and its warnings.
 * @throws {@link ModelRangeError} if nothing in the mixture has a known glass transition.
 * @example
 * const sweet = solutionOf('sucrose', { drySolidsMassFraction: 0.98 });
 * workingTemperatures(sweet).steps.deposit.temperatureC // 120.8 °C; 111 to 130 between the two curves
 * @source candy-viscosity-landmarks, glass-points, viscosity-fit, williams-1955, downton-1982
 */
export function workingTemperatures(mixture: Mixture): WorkingTemperatures {
  const { glassTransitionC, band, warnings } = glassTransition(mixture);
  const plusMinusK = (band[1] - band[0]) / 2;
  const at = (
    side: WorkingTemperature['side'],
    aboveK: number,
    curvesK: Span = [aboveK, aboveK],
  ): WorkingTemperature => {
    const temperatureC = glassTransitionC + aboveK;
    const betweenCurvesC = [glassTransitionC + curvesK[0], glassTransitionC + curvesK[1]] as const;
    return {
      temperatureC,
      side,
      betweenCurvesC,
      band: joinBands(temperatureC, around(temperatureC, plusMinusK), betweenCurvesC),
    };
  };
  const when = (step: keyof typeof WORKING_VISCOSITIES, side: WorkingTemperature['side']) => {
    const log10PaS = WORKING_VISCOSITIES[step].value;
    return at(side, aboveGlassK(log10PaS, candyCurve()), [
      aboveGlassK(log10PaS, syrupCurve()),
      aboveGlassK(log10PaS, universalCurve()),
    ]);
  };
  return {
    glassTransitionC,
    band,
    steps: {
      deposit: when('deposit', 'from-here-up'),
      'pour-easily': when('pour-easily', 'from-here-up'),
      'pour-last': when('pour-last', 'from-here-up'),
      fold: when('fold', 'from-here-down'),
      stamp: when('stamp', 'from-here-down'),
      'keep-shape': when('keep-shape', 'from-here-down'),
      stick: when('stick', 'from-here-up'),
      sag: when('sag', 'from-here-up'),
      demould: when('demould', 'from-here-down'),
      wrap: at('from-here-down', -WRAP_BELOW_GLASS.value),
    },
    warnings,
  };
}
