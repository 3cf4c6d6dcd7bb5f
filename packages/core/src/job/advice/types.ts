/** How bad it is if nothing is changed. */
export type Severity = 'danger' | 'will-fail' | 'may-disappoint' | 'note';

/** What can be advised. Codes are stable; sentences stand in `vitrose/words`. */
export type AdviceCode =
  | 'pan-too-full'
  | 'probe-not-covered'
  | 'target-above-thermometer'
  | 'reading-and-altitude-differ'
  | 'stage-names-do-not-apply'
  | 'altitude-would-help'
  | 'too-soft-for-the-store'
  | 'no-doctor'
  | 'dextrose-not-syrup'
  | 'beyond-the-knee'
  | 'late-water'
  | 'too-little-water-to-dissolve'
  | 'moulds-short'
  | 'pieces-short'
  | 'target-above-mould'
  | 'sticky-room'
  | 'much-acid'
  | 'weigh-this-one'
  | 'heat-spoils-sweetener'
  | 'sugar-burns'
  | 'never-boils'
  | 'reading-lags'
  | 'acid-too-early'
  | 'much-water'
  | 'may-grain'
  | 'less-sweet-than-sugar';

/** One change of the batch document: the field at `path` takes `value`; `null` takes it out. */
export type Change = {
  /** JSON Pointer into the batch document. */
  readonly path: string;
  readonly value: unknown;
};

/** The remedies the library offers. */
export type RemedyCode =
  | 'bigger-pan'
  | 'smaller-batch'
  | 'narrower-pan'
  | 'bigger-batch'
  | 'longer-scale-thermometer'
  | 'trust-the-reading'
  | 'trust-the-altitude'
  | 'give-the-altitude'
  | 'ask-for-a-glass-point'
  | 'cook-drier'
  | 'less-xylitol'
  | 'add-glucose-syrup'
  | 'add-cream-of-tartar'
  | 'syrup-for-dextrose'
  | 'stop-at-the-knee'
  | 'powder-colour'
  | 'oil-flavour'
  | 'cook-the-base-drier'
  | 'more-water'
  | 'more-moulds'
  | 'fewer-pieces'
  | 'heat-proof-mould'
  | 'drier-room'
  | 'less-acid'
  | 'weigh-it'
  | 'acesulfame-instead'
  | 'add-it-later'
  | 'stop-lower'
  | 'cooler-store'
  | 'stronger-hob'
  | 'quicker-thermometer'
  | 'acid-at-the-end'
  | 'less-water'
  | 'powder-for-syrup'
  | 'syrup-for-powder'
  | 'do-not-stir'
  | 'wrap-it'
  | 'add-acesulfame';

/** A way out, as a change of the batch document. */
export type Remedy = {
  /** Stable code; the label of its button stands in `vitrose/words`. */
  readonly code: RemedyCode;
  readonly changes: readonly Change[];
  /** Numbers its sentence needs, each under a unit-named key. */
  readonly numbers?: Readonly<Record<string, number>> | undefined;
};

/** Something the cook should know before anything is hot. */
export type Advice = {
  readonly code: AdviceCode;
  readonly severity: Severity;
  /** The field of the document it is about. */
  readonly path?: string | undefined;
  /** Numbers its sentence needs, each under a unit-named key. */
  readonly numbers: Readonly<Record<string, number>>;
  /** Names its sentence needs: ingredient ids, stage ids. */
  readonly names?: Readonly<Record<string, string>> | undefined;
  /** Best first; empty where there is no remedy in the document. */
  readonly remedies: readonly Remedy[];
};
