/** A place on the page, px. */
export type Point = readonly [x: number, y: number];

/** A tenth of a pixel is finer than any screen; more digits only weigh. */
export function px(value: number): number {
  return Math.round(value * 10) / 10;
}

/** The `d` of a line through points. */
export function linePath(points: readonly Point[]): string {
  return points.map(([x, y], at) => `${at === 0 ? 'M' : 'L'}${px(x)} ${px(y)}`).join('');
}

/** The `d` of the area between an upper and a lower line. */
export function bandPath(upper: readonly Point[], lower: readonly Point[]): string {
  return `${linePath([...upper, ...[...lower].reverse()])}Z`;
}

/** The `d` of a strip whose upper corners are round and whose lower corners are set. */
export function stripPath(
  x: number,
  y: number,
  width: number,
  height: number,
  radius: number,
): string {
  const r = Math.max(0, Math.min(radius, width / 2, height));
  const [left, right, top, bottom] = [px(x), px(x + width), px(y), px(y + height)];
  return `M${left} ${bottom}V${px(y + r)}Q${left} ${top} ${px(x + r)} ${top}H${px(x + width - r)}Q${right} ${top} ${right} ${px(y + r)}V${bottom}Z`;
}
