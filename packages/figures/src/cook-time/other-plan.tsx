import type { JSX } from 'preact';
import { cutToWidth } from '../labels/cut-to-width.js';
import { linePath, px } from '../scale/path.js';
import { type CookTimeLayout, placeOf } from './layout.js';
import type { CookTimeState } from './state.js';

/** Another plan as a quiet dashed line up to its stop, and above the drawing what it is. */
export function OtherPlan(props: {
  readonly layout: CookTimeLayout;
  readonly other: NonNullable<CookTimeState['other']>;
  /** The baseline of the highest name at the right. */
  readonly namesFrom: number;
}): JSX.Element {
  const { layout, other, namesFrom } = props;
  const { left, right, namesLeft, textPx } = layout;
  const points = other.path.map((point) => placeOf(layout, point));
  const end = points.at(-1);
  const baseline = textPx;
  const long = textPx * 2;
  const textLeft = left + long + textPx * 0.5;
  const textRight = namesFrom > baseline + textPx * 1.2 ? right : namesLeft - textPx * 0.5;
  return (
    <>
      <path class="vf-other" d={linePath(points)} />
      {end !== undefined && (
        <circle class="vf-other-end" cx={px(end[0])} cy={px(end[1])} r={px(textPx * 0.3)} />
      )}
      <path class="vf-other" d={`M${px(left)} ${px(baseline - textPx * 0.35)}h${px(long)}`} />
      <text class="vf-quiet" x={px(textLeft)} y={px(baseline)} font-size={textPx}>
        {cutToWidth(other.label, textPx, textRight - textLeft)}
      </text>
    </>
  );
}
