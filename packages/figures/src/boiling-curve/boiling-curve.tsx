import type { JSX } from 'preact';
import { Drawing } from '../figure/drawing.js';
import { Figure } from '../figure/figure.js';
import { LINE_SPACING } from '../labels/place-labels.js';
import { bandPath, linePath, type Point, px } from '../scale/path.js';
import { Axes } from './axes.js';
import { describeLayout } from './describe.js';
import { curveLabels } from './labels.js';
import { type CurveLayout, curveLayout, yOf } from './layout.js';
import type { BoilingCurveState } from './state.js';
import { boilingCurveTable } from './table.js';

const NOTES = [
  'Left out: fat, oil, alcohol and pigment, which are weighed but not dissolved; the head of a deep pan (0.4 °C for 10 cm); a mass that boils late; what hot sugar turns into.',
  'Curve: this library’s model, an estimate, fitted to Robinson and Stokes 1961 and Starzak and Peacock 1997; its band is the spread of what is in print. Stages: medians of seven published charts, an estimate.',
];

const QUESTION = 'How much water is left when it boils this hot?';

/**
 * The temperature of a boiling sugar mass against the water left in it, with the batch on it.
 *
 * @param state - What it is drawn from; nothing else is looked at, and nothing is kept.
 */
export function BoilingCurve(state: BoilingCurveState): JSX.Element {
  const drawing = drawCurve(curveLayout(state));
  if (state.compact) return drawing;
  return (
    <Figure id={state.id} question={QUESTION} notes={NOTES} table={boilingCurveTable(state)}>
      {drawing}
    </Figure>
  );
}

function drawCurve(layout: CurveLayout): JSX.Element {
  const { points, x, textPx, widthPx, heightPx, state } = layout;
  const along = (pick: (point: CurveLayout['points'][number]) => number): readonly Point[] =>
    points.map((point): Point => [x.at(point.waterG), yOf(layout, pick(point))]);
  return (
    <Drawing
      id={state.id}
      kind={textPx >= 20 ? 'curve vf-large' : 'curve'}
      question={QUESTION}
      description={describeLayout(layout)}
      size={[widthPx, heightPx]}
    >
      <Stages layout={layout} />
      <path
        class="vf-band"
        d={bandPath(
          along(({ highC }) => highC),
          along(({ lowC }) => lowC),
        )}
      />
      <Axes layout={layout} />
      <path class="vf-line" d={linePath(along(({ boilsAtC }) => boilsAtC))} />
      <MarkLines layout={layout} />
      {curveLabels(layout).map((label) => (
        <text
          key={label.id}
          class={label.id === 'mark' ? 'vf-strong' : 'vf-quiet'}
          font-size={label.sizePx}
          text-anchor={label.anchor}
        >
          {label.lines.map((line, at) => (
            <tspan key={line} x={px(label.x)} y={px(label.y + at * LINE_SPACING * label.sizePx)}>
              {line}
            </tspan>
          ))}
        </text>
      ))}
    </Drawing>
  );
}

function Stages({ layout }: { readonly layout: CurveLayout }): JSX.Element | null {
  const { ladder, left, right, top, bottom, state } = layout;
  if (!ladder.namesApply) return null;
  return (
    <>
      {ladder.rungs
        .filter((rung) => rung.kind === 'stage' && rung.drySolidsMassFraction !== null)
        .map((rung) => {
          const from = Math.max(top, yOf(layout, rung.highC));
          const to = Math.min(bottom, yOf(layout, rung.lowC));
          const place = {
            x: px(left),
            y: px(from),
            width: px(right - left),
            height: px(to - from),
          };
          return (
            to > from && (
              <g key={rung.id}>
                <rect class="vf-rung" {...place} />
                <rect class="vf-hatch" fill={`url(#${state.id}-hatch)`} {...place} />
              </g>
            )
          );
        })}
    </>
  );
}

function MarkLines({ layout }: { readonly layout: CurveLayout }): JSX.Element | null {
  const { mark, x, left, bottom, textPx } = layout;
  if (mark === undefined) return null;
  const [markX, markY] = [px(x.at(mark.waterG)), px(yOf(layout, mark.temperatureC))];
  return (
    <>
      <path class="vf-hairline" d={`M${px(left)} ${markY}H${markX}V${px(bottom)}`} />
      <circle class="vf-dot" cx={markX} cy={markY} r={px(textPx * 0.45)} />
    </>
  );
}
