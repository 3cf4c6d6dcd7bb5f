import {
  ingredient,
  isModelRangeError,
  type ModelRangeError,
  type RangeErrorCode,
  standardPressure,
  thermometerReading,
} from 'vitrose';

/** A call that throws: as written, and as run when its page is built. */
export type ErrorExample = { readonly call: string; readonly run: () => unknown };

export const ERROR_EXAMPLES: Readonly<Record<RangeErrorCode, ErrorExample>> = {
  'not-a-number': {
    call: 'standardPressure(Number.NaN)',
    run: () => standardPressure(Number.NaN),
  },
  'outside-range': {
    call: 'standardPressure(50_000)',
    run: () => standardPressure(50_000),
  },
  'not-allowed-together': {
    call: 'thermometerReading({ trueC: 143, boilingWaterReadingC: 95.8 })',
    run: () => thermometerReading({ trueC: 143, boilingWaterReadingC: 95.8 }),
  },
  'unknown-name': {
    call: `ingredient('sukrose')`,
    // A name from outside, as a program without types would pass it.
    run: () => ingredient('sukrose' as 'sucrose'),
  },
};

/** The error an example throws. */
export function thrownBy({ call, run }: ErrorExample): ModelRangeError {
  try {
    run();
  } catch (error) {
    if (isModelRangeError(error)) return error;
    throw error;
  }
  throw new Error(`${call} does not throw.`);
}
