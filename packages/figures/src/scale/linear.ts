/** From a value to a place on the page, and back. */
export type LinearScale = {
  readonly at: (value: number) => number;
  readonly valueAt: (place: number) => number;
};

/**
 * A straight scale.
 *
 * @param values - Two values, in either order, not equal.
 * @param places - Where the two stand, px.
 */
export function linearScale(
  [fromValue, toValue]: readonly [number, number],
  [fromPlace, toPlace]: readonly [number, number],
): LinearScale {
  const perValue = (toPlace - fromPlace) / (toValue - fromValue);
  return {
    at: (value) => fromPlace + (value - fromValue) * perValue,
    valueAt: (place) => fromValue + (place - fromPlace) / perValue,
  };
}
