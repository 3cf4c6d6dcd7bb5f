import type { Span } from '../results/types.js';

/** Every code a {@link ModelRangeError} can carry. */
export type RangeErrorCode =
  | 'not-a-number'
  | 'outside-range'
  | 'not-allowed-together'
  | 'unknown-name';

/** What a {@link ModelRangeError} says to a program. */
export type RangeErrorDetails = {
  readonly code: RangeErrorCode;
  readonly parameter: string;
  readonly received: unknown;
  readonly limits?: Span | undefined;
};

/** Thrown when a question cannot be meant: an impossible, meaningless or missing number. */
export class ModelRangeError extends RangeError {
  /** Tells this error from others, also when two copies of the library are loaded. */
  override readonly name = 'ModelRangeError';
  /** Stable code. */
  readonly code!: RangeErrorCode;
  /** The quantity in question, under the name it has in code. */
  readonly parameter!: string;
  /** What was given. */
  readonly received: unknown;
  /** What is possible, in the unit of the parameter. */
  readonly limits: Span | undefined;
  /** Page of the documentation that explains the code. */
  readonly docs: string;

  /** Makes the error; the library's own checks are the usual callers. */
  constructor(message: string, details: RangeErrorDetails) {
    super(message);
    this.docs = `errors/${details.code}`;
    Object.assign(this, details);
  }
}

/**
 * Tells whether something caught is this library's range error.
 *
 * Use it instead of `instanceof` where an application may load the library twice, once as ESM and
 * once as CommonJS: the two copies have two classes.
 *
 * @param error - Whatever was caught.
 * @returns true for a {@link ModelRangeError} of any copy of the library.
 * @example
 * isModelRangeError(new TypeError('no')) // false
 */
export function isModelRangeError(error: unknown): error is ModelRangeError {
  return error instanceof RangeError && error.name === 'ModelRangeError';
}

/** The error for a name that stands in no table; what it should have been is said in the sentence. */
export function unknownName(
  parameter: string,
  received: unknown,
  sentence: string,
): ModelRangeError {
  return new ModelRangeError(`${sentence}; received ${String(received)}.`, {
    code: 'unknown-name',
    parameter,
    received,
  });
}
