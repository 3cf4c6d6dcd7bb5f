import type { JSX } from 'preact';
import { Drawing } from '../figure/drawing.js';
import { rungAt } from '../ladder/rung-at.js';
import { degrees } from '../ladder/temperature-words.js';
import { px } from '../scale/path.js';
import { DegreeStrip } from './degree-strip.js';
import { describeGeometry } from './describe.js';
import { rulePx, type SugarRuleGeometry, sugarRuleGeometry } from './geometry.js';
import type { SugarRuleState } from './state.js';
import { lineY, StopLine, StopReading } from './stop-line.js';
import { TextureStrip } from './texture-strip.js';
import { TextureWords } from './texture-words.js';
import { WaterMark } from './water-mark.js';

export const SUGAR_RULE_QUESTION = 'How hot is each texture in your kitchen?';

/**
 * The sugar rule alone: for a page that asks its question itself.
 *
 * @param state - What it is drawn from; nothing else is looked at, and nothing is kept.
 */
export function SugarRuleDrawing(state: SugarRuleState): JSX.Element {
  return drawRule(sugarRuleGeometry(state));
}

/** The same for a rule that is worked out already. */
export function drawRule(geometry: SugarRuleGeometry): JSX.Element {
  const { state, ladder, zoom } = geometry;
  const { id, stopHereC } = state;
  const y = lineY(geometry);
  const here = y === undefined || stopHereC === undefined ? undefined : rungAt(ladder, stopHereC);
  return (
    <Drawing
      id={id}
      kind="rule"
      question={SUGAR_RULE_QUESTION}
      description={describeGeometry(geometry)}
      size={rulePx(state)}
      zoom={zoom}
    >
      <Heads geometry={geometry} />
      <TextureStrip geometry={geometry} here={here} />
      <DegreeStrip geometry={geometry} lineY={y} />
      {y !== undefined && <StopLine geometry={geometry} y={y} />}
      <TextureWords geometry={geometry} here={here} lineY={y} />
      <WaterMark geometry={geometry} lineY={y} />
      {y !== undefined && <StopReading geometry={geometry} y={y} />}
    </Drawing>
  );
}

function Heads({ geometry }: { readonly geometry: SugarRuleGeometry }): JSX.Element {
  const { joint, top, state } = geometry;
  const { readingOffsetK = 0, units = 'c' } = state;
  const y = px(top - 19);
  const [where, whose] = readingOffsetK === 0 ? ['in', 'your kitchen'] : ['on your', 'thermometer'];
  return (
    <g class="vf-heads vf-strong">
      <text x={8} y={y} font-size={16}>
        Texture
      </text>
      <text x={joint + 4} y={y - 18} font-size={16}>
        {`${degrees(units)} ${where}`}
      </text>
      <text x={joint + 4} y={y} font-size={16}>
        {whose}
      </text>
    </g>
  );
}
