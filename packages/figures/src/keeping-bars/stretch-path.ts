import { px } from '../scale/path.js';
import type { KeepingBarsLayout, PlacedRow } from './layout.js';
import type { Stretch } from './rows.js';

/** The `d` of a stretch: square where the sweet is set, rounded where it flows, a wedge where it grows. */
export function stretchPath(
  { x, widthPx }: Pick<KeepingBarsLayout, 'x' | 'widthPx'>,
  { barTop: top, barBottom: bottom }: Pick<PlacedRow, 'barTop' | 'barBottom'>,
  { from, to, kind }: Stretch,
): string {
  const [left, right] = [x.at(from), x.at(to)];
  const box = `M${px(left)} ${px(bottom)}`;
  if (kind === 'growing') return `${box}L${px(right)} ${px(top)}V${px(bottom)}Z`;
  if (kind === 'set') return `${box}V${px(top)}H${px(right)}V${px(bottom)}Z`;
  const r = Math.min(9 * Math.max(1, widthPx / 900), right - left, (bottom - top) / 2);
  return `${box}V${px(top)}H${px(right - r)}Q${px(right)} ${px(top)} ${px(right)} ${px(top + r)}V${px(bottom - r)}Q${px(right)} ${px(bottom)} ${px(right - r)} ${px(bottom)}Z`;
}
