/** A value with the ends it may really have. */
export type Ranged = { readonly value: number; readonly low: number; readonly high: number };
