import type { JSX } from 'preact';
import { BottomAxis } from '../axes/bottom-axis.js';
import { LeftAxis } from '../axes/left-axis.js';
import { Drawing } from '../figure/drawing.js';
import { Figure } from '../figure/figure.js';
import { degrees, printed } from '../ladder/temperature-words.js';
import { linePath, px } from '../scale/path.js';
import { describeCookTime } from './describe.js';
import { cookTimeLabels, earlyLead, type LateLabel, lateLabels, leadEnd } from './labels.js';
import { type CookTimeLayout, cookTimeLayout, placeOf } from './layout.js';
import { OtherPlan } from './other-plan.js';
import type { CookPoint, CookTimeState } from './state.js';
import { cookTimeTable } from './table.js';
import { COOK_TIME_NOTES, COOK_TIME_QUESTION } from './words.js';

/**
 * A cook against the clock: the way up to the stop, what the hand does then, and how sure the minutes are.
 *
 * @param state - What it is drawn from; nothing else is looked at, and nothing is kept.
 */
export function CookTime(state: CookTimeState): JSX.Element {
  const drawing = drawCook(cookTimeLayout(state));
  if (state.compact) return drawing;
  return (
    <Figure
      id={state.id}
      question={COOK_TIME_QUESTION}
      notes={COOK_TIME_NOTES}
      table={cookTimeTable(state)}
    >
      {drawing}
    </Figure>
  );
}

function drawCook(layout: CookTimeLayout): JSX.Element {
  const { state, course, textPx, left, right, top, bottom, x, y } = layout;
  const late = lateLabels(layout);
  const path = (points: readonly CookPoint[]): string =>
    linePath(points.map((point) => placeOf(layout, point)));
  return (
    <Drawing
      id={state.id}
      kind={textPx >= 20 ? 'cook vf-large' : 'cook'}
      question={COOK_TIME_QUESTION}
      description={describeCookTime(state)}
      size={[layout.widthPx, layout.heightPx]}
    >
      <StopBand layout={layout} />
      <LeftAxis
        x={left}
        top={top}
        bottom={bottom}
        textPx={textPx}
        unit={degrees(state.units ?? 'c')}
        ticks={layout.yTicks.map((value) => ({ place: y.at(value), text: printed(value, 0) }))}
      />
      <BottomAxis
        left={left}
        right={right}
        y={bottom}
        textPx={textPx}
        unit="minutes from the cold pan"
        ticks={layout.xTicks.map((value) => ({ place: x.at(value), text: `${value}` }))}
      />
      {state.other !== undefined && (
        <OtherPlan layout={layout} other={state.other} namesFrom={late[0]?.at[1] ?? top} />
      )}
      <path class="vf-cooling" d={path(course.cooling)} />
      <path class="vf-heating" d={path(course.heat)} />
      <Moments layout={layout} late={late} />
    </Drawing>
  );
}

/** The minutes the stop may come in, on the clock, and the line that falls on them from the stop. */
function StopBand({ layout }: { readonly layout: CookTimeLayout }): JSX.Element {
  const { state, course, textPx, bottom, x } = layout;
  const [from, to] = [x.at(state.bandMinutes[0]), x.at(state.bandMinutes[1])];
  const [stopX, stopY] = placeOf(layout, course.stop);
  const high = textPx * 0.7;
  return (
    <>
      <rect
        class="vf-window"
        x={px(from)}
        y={px(bottom - high)}
        width={px(to - from)}
        height={px(high)}
      />
      <path
        class="vf-window-end"
        d={`M${px(from)} ${px(bottom)}v${px(-high)}H${px(to)}v${px(high)}`}
      />
      <path class="vf-hairline" d={`M${px(stopX)} ${px(stopY)}V${px(bottom)}`} />
    </>
  );
}

/** A tick for each moment, the dot of the stop, and all their names. */
function Moments(props: {
  readonly layout: CookTimeLayout;
  readonly late: readonly LateLabel[];
}): JSX.Element {
  const { layout, late } = props;
  const { course, textPx } = layout;
  const early = cookTimeLabels(layout, late);
  const leads = [
    ...late.map(({ from, at }) => [from, leadEnd(at, textPx)] as const),
    ...early.map((label) => earlyLead(layout, label)),
  ];
  const long = textPx * 0.45;
  const ticks = course.moments
    .filter(({ id }) => id !== 'stop')
    .map((moment) => {
      const [x, y] = placeOf(layout, moment);
      return `M${px(x)} ${px(y - long)}v${px(2 * long)}`;
    });
  const [stopX, stopY] = placeOf(layout, course.stop);
  return (
    <>
      <path class="vf-ghost" d={leads.map(linePath).join('')} />
      <path class="vf-moment" d={ticks.join('')} />
      <circle class="vf-dot" cx={px(stopX)} cy={px(stopY)} r={px(textPx * 0.45)} />
      {late.map(({ moment, text, at: [x, y] }) => (
        <text
          key={moment.id}
          {...(moment.id === 'stop' ? { class: 'vf-strong' } : {})}
          x={px(x)}
          y={px(y)}
          font-size={textPx}
        >
          {text}
        </text>
      ))}
      {early.map((label) => (
        <text
          key={label.id}
          {...(label.id === 'band' ? { class: 'vf-quiet' } : {})}
          x={px(label.x)}
          y={px(label.y)}
          font-size={textPx}
        >
          {label.lines[0]}
        </text>
      ))}
    </>
  );
}
