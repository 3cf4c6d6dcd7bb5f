import type { JSX } from 'preact';
import { BottomAxis } from '../axes/bottom-axis.js';
import { LeftAxis } from '../axes/left-axis.js';
import { Drawing } from '../figure/drawing.js';
import { Figure } from '../figure/figure.js';
import { LINE_SPACING } from '../labels/place-labels.js';
import { degrees, printed } from '../ladder/temperature-words.js';
import { px } from '../scale/path.js';
import { barPath } from './bar-path.js';
import { describeTemperatureAxis } from './describe.js';
import { windowLabels } from './labels.js';
import { placeOf, type TemperatureAxisLayout, temperatureAxisLayout } from './layout.js';
import { Marks } from './marks-drawn.js';
import type { TemperatureAxisState } from './state.js';
import { temperatureAxisTable } from './table.js';
import { TEMPERATURE_AXIS_NOTES, TEMPERATURE_AXIS_QUESTION } from './words.js';

/**
 * One axis of temperatures with everything on it that a mass meets between the stop and the wrap.
 *
 * @param state - What it is drawn from; nothing else is looked at, and nothing is kept.
 */
export function TemperatureAxis(state: TemperatureAxisState): JSX.Element {
  const drawing = drawAxis(temperatureAxisLayout(state));
  if (state.compact) return drawing;
  return (
    <Figure
      id={state.id}
      question={TEMPERATURE_AXIS_QUESTION}
      notes={TEMPERATURE_AXIS_NOTES}
      table={temperatureAxisTable(state)}
    >
      {drawing}
    </Figure>
  );
}

function drawAxis(layout: TemperatureAxisLayout): JSX.Element {
  const { state, textPx, windows, widthPx, heightPx } = layout;
  const names = windowLabels(layout);
  return (
    <Drawing
      id={state.id}
      kind={textPx >= 20 ? 'axis vf-large' : 'axis'}
      question={TEMPERATURE_AXIS_QUESTION}
      description={describeTemperatureAxis(state)}
      size={[widthPx, heightPx]}
    >
      <GlassBand layout={layout} />
      {layout.lies && <path class="vf-bellows" d={guides(layout)} />}
      {windows.map(({ window, bar }) => (
        <path key={window.id} class="vf-bar" d={barPath(bar)} />
      ))}
      <Degrees layout={layout} />
      <Marks layout={layout} names={names} />
      {names.map((label) => (
        <text key={label.id} font-size={textPx} text-anchor={label.anchor}>
          {label.lines.map((line, at) => (
            <tspan key={line} x={px(label.x)} y={px(label.y + at * LINE_SPACING * textPx)}>
              {line}
            </tspan>
          ))}
        </text>
      ))}
    </Drawing>
  );
}

/** Within which the glass point lies, behind all bars; hatched where colour is lost. */
function GlassBand({ layout }: { readonly layout: TemperatureAxisLayout }): JSX.Element {
  const { state, lies, left, right, top, bottom } = layout;
  const ends = state.glassBandC.map((temperatureC) => placeOf(layout, temperatureC));
  const [from, to] = [Math.min(...ends), Math.max(...ends)];
  const place = lies
    ? { x: px(from), y: px(top), width: px(to - from), height: px(bottom - top) }
    : { x: px(left), y: px(from), width: px(right - left), height: px(to - from) };
  return (
    <>
      <rect class="vf-band" {...place} />
      <rect class="vf-hatch" fill={`url(#${state.id}-hatch)`} {...place} />
    </>
  );
}

/** From the name of a row to its bar. */
function guides({ windows, left, textPx }: TemperatureAxisLayout): string {
  const away = textPx * 0.3;
  return windows
    .filter(({ bar }) => bar.from - away > left)
    .map(({ bar }) => `M${px(left)} ${px((bar.near + bar.far) / 2)}H${px(bar.from - away)}`)
    .join('');
}

function Degrees({ layout }: { readonly layout: TemperatureAxisLayout }): JSX.Element {
  const { state, lies, left, right, top, bottom, textPx, along, ticks } = layout;
  const named = ticks.map((value) => ({ place: along.at(value), text: printed(value, 0) }));
  const unit = degrees(state.units ?? 'c');
  return lies ? (
    <BottomAxis left={left} right={right} y={bottom} textPx={textPx} ticks={named} unit={unit} />
  ) : (
    <LeftAxis x={left} top={top} bottom={bottom} textPx={textPx} ticks={named} unit={unit} />
  );
}
