import type { JSX } from 'preact';
import type { Span } from 'vitrose';
import { reading } from '../ladder/temperature-words.js';
import { px } from '../scale/path.js';
import { placeOf, type SugarRuleGeometry } from './geometry.js';

/** Where the line stands, px; none without a stop, and none for a stop off the rule. */
export function lineY(geometry: SugarRuleGeometry): number | undefined {
  const { stopHereC } = geometry.state;
  if (stopHereC === undefined) return undefined;
  const y = placeOf(geometry, stopHereC);
  return y >= geometry.top && y <= geometry.bottom ? y : undefined;
}

/** The amber line across both strips, and beside the degrees the span of stops that are still good. */
export function StopLine(props: {
  readonly geometry: SugarRuleGeometry;
  readonly y: number;
}): JSX.Element {
  const { geometry, y } = props;
  const { windowHereC } = geometry.state;
  const { joint, edge } = geometry;
  return (
    <g class="vf-stop">
      {windowHereC !== undefined && <Window geometry={geometry} windowHereC={windowHereC} />}
      <path class="vf-hairline" d={`M2 ${px(y)}H${edge + 2}`} />
      <circle class="vf-crossing" cx={joint} cy={px(y)} r={4} />
    </g>
  );
}

/** From the first good stop to the last, closed at both ends so that it does not live by colour. */
function Window(props: {
  readonly geometry: SugarRuleGeometry;
  readonly windowHereC: Span;
}): JSX.Element {
  const { geometry, windowHereC } = props;
  const { joint, edge } = geometry;
  const [from, to] = [placeOf(geometry, windowHereC[0]), placeOf(geometry, windowHereC[1])];
  const x = joint + 1;
  return (
    <>
      <rect class="vf-window" x={x} y={px(from)} width={edge - x} height={px(to - from)} />
      <path
        class="vf-window-end"
        d={`M${x} ${px(from)}h16M${x} ${px(to)}h16M${edge - 6} ${px(from)}H${edge}V${px(to)}h-6`}
      />
    </>
  );
}

/** The reading at the end of the line. */
export function StopReading(props: {
  readonly geometry: SugarRuleGeometry;
  readonly y: number;
}): JSX.Element {
  const { geometry, y } = props;
  const { stopHereC = 0, readingOffsetK = 0, units = 'c' } = geometry.state;
  const { edge, width } = geometry;
  const left = edge + 2;
  // At the foot of the rule the reading stays on the drawing, and only its point goes down.
  const middle = Math.min(y, geometry.height - 18);
  return (
    <g class="vf-flag">
      <path
        class="vf-flag-shape"
        d={`M${left} ${px(y)}L${left + 7} ${px(middle - 17)}H${px(width - 1)}V${px(middle + 17)}H${left + 7}Z`}
      />
      <text
        class="vf-flag-text vf-strong"
        x={px((left + 7 + width) / 2)}
        y={px(middle + 9.5)}
        text-anchor="middle"
        font-size={28}
      >
        {reading(stopHereC + readingOffsetK, units)}
      </text>
    </g>
  );
}
