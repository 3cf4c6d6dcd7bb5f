import type { JSX } from 'preact';
import { px } from '../scale/path.js';

/** A round number on an axis. */
export type AxisTick = { readonly place: number; readonly text: string };

/** How far an axis at the bottom reaches down, in sizes of its letters. */
export const BOTTOM_AXIS_LINES = 3.2;

/** An axis that lies, with its numbers and its unit under it. */
export function BottomAxis(props: {
  readonly left: number;
  readonly right: number;
  readonly y: number;
  readonly textPx: number;
  readonly ticks: readonly AxisTick[];
  readonly unit: string;
}): JSX.Element {
  const { left, right, y, textPx, ticks, unit } = props;
  const long = textPx * 0.4;
  const marks = ticks.map(({ place }) => `M${px(place)} ${px(y)}v${px(long)}`);
  return (
    <g class="vf-axes">
      <path class="vf-tick" d={`M${px(left)} ${px(y)}H${px(right)}${marks.join('')}`} />
      {ticks.map(({ place, text }) => (
        <text
          key={text}
          x={px(place)}
          y={px(y + long + textPx)}
          font-size={textPx}
          text-anchor="middle"
        >
          {text}
        </text>
      ))}
      <text
        class="vf-quiet"
        x={px(right)}
        y={px(y + long + textPx * 2.3)}
        font-size={textPx}
        text-anchor="end"
      >
        {unit}
      </text>
    </g>
  );
}
