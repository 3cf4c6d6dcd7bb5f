import type { JSX } from 'preact';
import { BottomAxis } from '../axes/bottom-axis.js';
import { Drawing } from '../figure/drawing.js';
import { Figure } from '../figure/figure.js';
import { niceTicks } from '../scale/nice-ticks.js';
import { px } from '../scale/path.js';
import { describeKeepingBars } from './describe.js';
import { type KeepingBarsLayout, keepingBarsLayout, type PlacedRow } from './layout.js';
import { roomDots, roomLine } from './room-line.js';
import type { Stretch } from './rows.js';
import type { KeepingBarsState } from './state.js';
import { stretchPath } from './stretch-path.js';
import { keepingBarsTable } from './table.js';
import { KEEPING_BARS_NOTES, KEEPING_BARS_QUESTION } from './words.js';

/**
 * What the air does to a bare sweet, on one axis of humidity: the bars the room's line crosses happen there.
 *
 * @param state - What it is drawn from; nothing else is looked at, and nothing is kept.
 */
export function KeepingBars(state: KeepingBarsState): JSX.Element {
  const drawing = drawBars(keepingBarsLayout(state));
  if (state.compact) return drawing;
  return (
    <Figure
      id={state.id}
      question={KEEPING_BARS_QUESTION}
      notes={KEEPING_BARS_NOTES}
      table={keepingBarsTable(state)}
    >
      {drawing}
    </Figure>
  );
}

function drawBars(layout: KeepingBarsLayout): JSX.Element {
  const { state, textPx, left, right, bottom, x, rows, room, widthPx, heightPx } = layout;
  return (
    <Drawing
      id={state.id}
      kind={textPx >= 20 ? 'keeping vf-large' : 'keeping'}
      question={KEEPING_BARS_QUESTION}
      description={describeKeepingBars(state)}
      size={[widthPx, heightPx]}
    >
      {rows.map((row) => (
        <Row key={row.id} layout={layout} row={row} />
      ))}
      <BottomAxis
        left={left}
        right={right}
        y={bottom}
        textPx={textPx}
        unit="humidity of the air, %"
        ticks={niceTicks(0, 100, 5).map((value) => ({
          place: x.at(value / 100),
          text: `${value}`,
        }))}
      />
      {room !== undefined && (
        <>
          <path class="vf-room" d={roomLine(layout)} />
          {roomDots(layout).map(([cx, cy]) => (
            <circle key={cy} class="vf-met" cx={px(cx)} cy={px(cy)} r={px(textPx * 0.3)} />
          ))}
          <text
            class="vf-strong"
            x={px(room.textX)}
            y={px(textPx)}
            font-size={textPx}
            text-anchor="middle"
          >
            {room.text}
          </text>
        </>
      )}
    </Drawing>
  );
}

/** Its words, and under them its stretches; hatched where colour is lost. */
function Row(props: { readonly layout: KeepingBarsLayout; readonly row: PlacedRow }): JSX.Element {
  const { layout, row } = props;
  const { state, textPx } = layout;
  const shape = (stretch: Stretch): string => stretchPath(layout, row, stretch);
  return (
    <>
      {row.stretches.map((stretch) => (
        <path
          key={stretch.kind}
          class={stretch.kind === 'set' ? 'vf-bar vf-bar-set' : 'vf-bar'}
          d={shape(stretch)}
        />
      ))}
      {row.stretches
        .filter(({ kind }) => kind !== 'set')
        .map((stretch) => (
          <path
            key={stretch.kind}
            class="vf-hatch"
            fill={`url(#${state.id}-hatch)`}
            d={shape(stretch)}
          />
        ))}
      <text x={px(row.textX)} y={px(row.baseline)} font-size={textPx}>
        {row.text}
      </text>
    </>
  );
}
