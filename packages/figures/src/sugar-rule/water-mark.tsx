import type { JSX } from 'preact';
import { reading } from '../ladder/temperature-words.js';
import { px } from '../scale/path.js';
import type { SugarRuleGeometry } from './geometry.js';

/** Where the rule begins: what boiling water reads in this kitchen. */
export function WaterMark(props: {
  readonly geometry: SugarRuleGeometry;
  readonly lineY: number | undefined;
}): JSX.Element | null {
  const { geometry, lineY } = props;
  const { top, edge, state, ladder } = geometry;
  const { readingOffsetK = 0, units = 'c' } = state;
  // The reading at the line goes first where the two would meet.
  if (lineY !== undefined && lineY < top + 64) return null;
  const x = edge + 7;
  return (
    <g class="vf-water">
      <path class="vf-edge" d={`M${edge - 6} ${px(top)}H${edge + 5}`} />
      <text class="vf-strong" x={x} y={px(top + 5)} font-size={16}>
        {reading(ladder.waterBoilsAtC + readingOffsetK, units, units === 'c' ? 1 : 0)}
      </text>
      <text class="vf-quiet" x={x} y={px(top + 21)} font-size={13}>
        boiling
      </text>
      <text class="vf-quiet" x={x} y={px(top + 36)} font-size={13}>
        water
      </text>
    </g>
  );
}
