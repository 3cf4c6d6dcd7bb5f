/** A number as one would write it: four figures are enough, and no trailing noughts. */
export function tidy(value: number): string {
  const decimals =
    Math.abs(value) >= 1000 ? 0 : Math.abs(value) >= 10 ? 1 : Math.abs(value) >= 1 ? 2 : 3;
  const rounded = Number(value.toFixed(decimals));
  return String(rounded === 0 && value !== 0 ? Number(value.toPrecision(2)) : rounded);
}
