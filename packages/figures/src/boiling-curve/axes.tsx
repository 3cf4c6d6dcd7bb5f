import type { JSX } from 'preact';
import { degrees, printed } from '../ladder/temperature-words.js';
import { px } from '../scale/path.js';
import type { CurveLayout } from './layout.js';

/** Two axes with their units, and a tick at every round number. */
export function Axes({ layout }: { readonly layout: CurveLayout }): JSX.Element {
  const { left, right, top, bottom, textPx, x, y, xTicks, yTicks, state } = layout;
  const long = textPx * 0.4;
  const solids = state.across === 'solids';
  const ticks = [
    ...xTicks.map((waterG) => `M${px(x.at(waterG))} ${px(bottom)}v${px(long)}`),
    ...yTicks.map((temperature) => `M${px(left)} ${px(y.at(temperature))}h${px(-long)}`),
  ];
  return (
    <g class="vf-axes">
      <path
        class="vf-tick"
        d={`M${px(left)} ${px(top)}V${px(bottom)}H${px(right)}${ticks.join('')}`}
      />
      {yTicks.map((temperature) => (
        <text
          key={temperature}
          x={px(left - long * 1.6)}
          y={px(y.at(temperature) + textPx * 0.35)}
          font-size={textPx}
          text-anchor="end"
        >
          {printed(temperature, 0)}
        </text>
      ))}
      {xTicks.map((waterG) => (
        <text
          key={waterG}
          x={px(x.at(waterG))}
          y={px(bottom + long + textPx)}
          font-size={textPx}
          text-anchor="middle"
        >
          {printed(solids ? 100 - waterG : waterG, 0)}
        </text>
      ))}
      <text
        class="vf-quiet"
        x={px(left - long * 1.6)}
        y={px(top - textPx * 0.9)}
        font-size={textPx}
        text-anchor="end"
      >
        {degrees(state.units ?? 'c')}
      </text>
      <text
        class="vf-quiet"
        x={px(right)}
        y={px(bottom + long + textPx * 2.3)}
        font-size={textPx}
        text-anchor="end"
      >
        {solids ? 'g of solids in 100 g' : 'g of water left in 100 g'}
      </text>
    </g>
  );
}
