/** A value with the ends it may really have. */
export type Ranged = { readonly value: number; readonly low: number; readonly high: number };

/** A value with its ends; an end that is not known is the value itself. */
export function ranged(value: number, low = value, high = value): Ranged {
  return { value, low, high };
}
