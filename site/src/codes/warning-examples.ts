import {
  boilingPoint,
  glassTransition,
  isNone,
  type ModelWarning,
  measureToGrams,
  mixture,
  solutionOf,
  standardPressure,
  type WarningCode,
} from 'vitrose';

/** A call that raises a warning: as written, and as run when its page is built. */
export type WarningExample = {
  readonly why: string;
  readonly call: string;
  readonly warnings: () => readonly ModelWarning[];
};

export const WARNING_EXAMPLES: Readonly<Record<WarningCode, WarningExample>> = {
  'outside-tested-range': {
    why: 'A model is run on past the last row it was held against. It does not break there, it is only less well known.',
    call: 'standardPressure(10_500)',
    warnings: () => standardPressure(10_500).warnings,
  },
  'species-not-modelled': {
    why: 'A model has no number for something in the mixture. Its share is named, so that nothing counts as nought in silence.',
    call: `glassTransition(mixture([
  { ingredient: 'sucrose', massG: 95 },
  { ingredient: 'salt', massG: 5 },
]))`,
    warnings: () =>
      glassTransition(
        mixture([
          { ingredient: 'sucrose', massG: 95 },
          { ingredient: 'salt', massG: 5 },
        ]),
      ).warnings,
  },
  'sugar-decomposes': {
    why: 'The model knows sugar and water. Up there it is no longer only sugar and water.',
    call: `boilingPoint(solutionOf('sucrose', { drySolidsMassFraction: 0.995 }))`,
    warnings: () => boilingPoint(solutionOf('sucrose', { drySolidsMassFraction: 0.995 })).warnings,
  },
  'shown-from-memory': {
    why: 'The figure was recalled and not found again in print. It is used, and says so.',
    call: `measureToGrams({ ingredient: 'golden-syrup', quantity: 1, unit: 'us-cup' })`,
    warnings: () => {
      const weighed = measureToGrams({ ingredient: 'golden-syrup', quantity: 1, unit: 'us-cup' });
      return isNone(weighed) ? [] : weighed.warnings;
    },
  },
};
