import type { JSX } from 'preact';
import type { PlacedLabel } from '../labels/place-labels.js';
import { uncovered } from '../labels/uncovered.js';
import { linePath, px } from '../scale/path.js';
import { MARK_LINE, markLabels } from './labels.js';
import { placeOf, type TemperatureAxisLayout } from './layout.js';
import { type AxisMark, shownMarks } from './marks.js';
import type { AxisMarkId } from './words.js';

/** Amber where there is heat; ink for the room; dashes for what is not met on the bench. */
const LINES: Readonly<Record<AxisMarkId, string>> = {
  stop: 'vf-hairline',
  'mould-max': 'vf-limit',
  glass: 'vf-glass',
  store: 'vf-limit',
  room: 'vf-room',
};

/** A line across the bars for each mark, and its name beside them. */
export function Marks(props: {
  readonly layout: TemperatureAxisLayout;
  /** Of the windows. */
  readonly names: readonly PlacedLabel[];
}): JSX.Element {
  const { layout, names } = props;
  const { lies, textPx, state } = layout;
  const labels = markLabels(layout);
  return (
    <>
      {labels.map(({ mark, from, to }) => (
        <path key={mark.id} class="vf-ghost" d={linePath([from, to])} />
      ))}
      {shownMarks(state).map((mark) => (
        <path key={mark.id} class={LINES[mark.id]} d={markLine(layout, mark, names)} />
      ))}
      {labels.map(({ mark, lines, at: [x, y] }) => (
        <text
          key={mark.id}
          {...(mark.id === 'stop' || mark.id === 'room' ? { class: 'vf-strong' } : {})}
          font-size={textPx}
          text-anchor={lies ? 'middle' : 'start'}
        >
          {lines.map((line, at) => (
            <tspan key={line} x={px(x)} y={px(y + at * MARK_LINE * textPx)}>
              {line}
            </tspan>
          ))}
        </text>
      ))}
    </>
  );
}

/** Across all bars; where a name stands in its way it steps over it. */
function markLine(
  layout: TemperatureAxisLayout,
  { temperatureC }: AxisMark,
  names: readonly PlacedLabel[],
): string {
  const { lies, left, right, top, bottom } = layout;
  const place = placeOf(layout, temperatureC);
  if (lies) return `M${px(place)} ${px(top)}V${px(bottom)}`;
  const covers = names
    .filter(({ box }) => box.top - 2 < place && box.bottom + 2 > place)
    .map(({ box }) => [box.left - 1, box.right + 1] as const);
  return uncovered([left, right], covers)
    .map(([from, to]) => `M${px(from)} ${px(place)}H${px(to)}`)
    .join('');
}
