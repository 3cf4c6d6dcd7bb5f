import type { JSX } from 'preact';
import { px } from '../scale/path.js';
import type { AxisTick } from './bottom-axis.js';

/** An axis that stands, with its numbers to the left of it and its unit above them. */
export function LeftAxis(props: {
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
  readonly textPx: number;
  readonly ticks: readonly AxisTick[];
  readonly unit: string;
}): JSX.Element {
  const { x, top, bottom, textPx, ticks, unit } = props;
  const long = textPx * 0.4;
  const marks = ticks.map(({ place }) => `M${px(x)} ${px(place)}h${px(-long)}`);
  return (
    <g class="vf-axes">
      <path class="vf-tick" d={`M${px(x)} ${px(top)}V${px(bottom)}${marks.join('')}`} />
      {ticks.map(({ place, text }) => (
        <text
          key={text}
          x={px(x - long * 1.6)}
          y={px(place + textPx * 0.35)}
          font-size={textPx}
          text-anchor="end"
        >
          {text}
        </text>
      ))}
      <text
        class="vf-quiet"
        x={px(x - long * 1.6)}
        y={px(top - textPx * 0.9)}
        font-size={textPx}
        text-anchor="end"
      >
        {unit}
      </text>
    </g>
  );
}
