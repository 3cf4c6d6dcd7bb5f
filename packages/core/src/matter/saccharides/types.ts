/**
 * Shares of chain lengths in the dry substance of a starch syrup; they sum to 1. `dp1` is glucose,
 * `dp2` maltose, `dp3` maltotriose, `dp4plus` everything longer.
 */
export type Profile = {
  readonly dp1: number;
  readonly dp2: number;
  readonly dp3: number;
  readonly dp4plus: number;
};

/** How the starch was cut. It decides which chains make up a given dextrose equivalent. */
export type Conversion = 'acid' | 'enzyme' | 'high-maltose';
