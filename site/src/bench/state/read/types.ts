/** A way to say it that can be meant instead: a button that puts `text` into the field. */
export type Offer = { readonly label: string; readonly text: string };

/** What became of what somebody typed. */
export type Reading<Value> =
  | { readonly kind: 'empty' }
  | {
      readonly kind: 'read';
      readonly value: Value;
      /** What was understood, to be shown beside the field. */
      readonly echo: string;
      /** Other ways to understand it, where it is not quite plain. */
      readonly offers: readonly Offer[];
    }
  | { readonly kind: 'unread'; readonly reason: string; readonly offers: readonly Offer[] };

/** How the reader thinks: °C and grams, or °F and ounces; which cups and whose names. */
export type Manner = {
  readonly units: 'metric' | 'us';
  readonly region: 'world' | 'us';
};
