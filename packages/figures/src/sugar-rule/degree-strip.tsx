import type { JSX } from 'preact';
import { printed } from '../ladder/temperature-words.js';
import { px, stripPath } from '../scale/path.js';
import type { SugarRuleGeometry } from './geometry.js';
import { graduations, numbered } from './graduations.js';

type StripProps = {
  readonly geometry: SugarRuleGeometry;
  /** Where the line stands: a number it would cross is left out. */
  readonly lineY: number | undefined;
};

/** The strip that slides, degrees as they are read in this kitchen; below it dry sugar, which does not. */
export function DegreeStrip({ geometry, lineY }: StripProps): JSX.Element {
  const { joint, edge, slideTop, slideBottom, dryTop, bottom, top } = geometry;
  const x = joint + 1;
  const width = edge - x;
  const middle = px(x + width / 2);
  const marks = (from: number, to: number, lift: number): JSX.Element => (
    <Marks geometry={geometry} lineY={lineY} from={from} to={to} lift={lift} />
  );
  return (
    <g class="vf-degrees">
      {slideTop > top + 14 && (
        <path
          class="vf-ghost"
          d={`M${x + 6} ${top}H${edge - 6}M${middle} ${top}V${px(slideTop - 4)}m-5 -6l5 6l5 -6`}
        />
      )}
      <g class="vf-slide" transform={`translate(0 ${px(slideTop)})`}>
        <path class="vf-strip" d={stripPath(x, 0, width, slideBottom - slideTop, 12)} />
        {marks(slideTop, slideBottom, slideTop)}
      </g>
      {dryTop < bottom && (
        <>
          <path
            class="vf-bellows"
            d={`M${x} ${px(slideBottom)}V${px(dryTop)}M${edge} ${px(slideBottom)}V${px(dryTop)}`}
          />
          <rect class="vf-strip" x={x} y={px(dryTop)} width={width} height={px(bottom - dryTop)} />
          {marks(slideBottom, dryTop, 0)}
          {marks(dryTop, bottom, 0)}
        </>
      )}
    </g>
  );
}

const TICK = { long: 16, middle: 11, short: 6 };

function Marks(
  props: StripProps & {
    readonly from: number;
    readonly to: number;
    /** What the group they stand in is moved down by. */
    readonly lift: number;
  },
): JSX.Element {
  const { geometry, from, to, lift, lineY } = props;
  const x = geometry.joint + 1;
  // None on the round corners of the slide.
  const all = graduations(geometry, Math.max(from + 2, geometry.top), to);
  return (
    <>
      <path
        class="vf-tick"
        d={all.map(({ y, weight }) => `M${x} ${px(y - lift)}h${TICK[weight]}`).join('')}
      />
      {numbered(all, from, to, lineY).map(({ reading, y, weight }) => (
        <text
          key={reading}
          class={weight === 'long' ? 'vf-strong' : 'vf-quiet'}
          x={x + 20}
          y={px(y - lift + 5)}
          font-size={weight === 'long' ? 16 : 14}
        >
          {printed(reading, 0)}
        </text>
      ))}
    </>
  );
}
