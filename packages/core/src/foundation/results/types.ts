/** A low and a high end, in the unit of the value it belongs to. */
export type Span = readonly [low: number, high: number];

/** A model was asked beyond what it was tested on; the answer stands, with less behind it. */
export type ModelWarning = {
  /** Stable code, for example `outside-tested-range` or `species-not-modelled`. */
  readonly code: WarningCode;
  /** The quantity in question, under the name it has in code. */
  readonly parameter: string;
  /** What was given or computed. */
  readonly value: number;
  /** What was tested. */
  readonly limits: Span;
  /** What the warning is about, when the parameter alone does not say it: a species id. */
  readonly subject?: string | undefined;
};

/** Every code a {@link ModelWarning} can carry. */
export type WarningCode =
  | 'outside-tested-range'
  | 'species-not-modelled'
  | 'sugar-decomposes'
  | 'shown-from-memory';

/** A result that carries the warnings of every model that had a part in it. */
export type Checked<T> = Readonly<T> & { readonly warnings: readonly ModelWarning[] };

/** The answer to a sensible question that has no answer, with the reason. */
export type None<Reason extends string = string> = {
  /** Tells this answer from a result. */
  readonly kind: 'none';
  /** Why there is no answer. */
  readonly reason: Reason;
};
