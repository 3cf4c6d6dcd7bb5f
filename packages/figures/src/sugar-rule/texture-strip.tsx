import type { JSX } from 'preact';
import type { StageRange } from 'vitrose';
import { px, stripPath } from '../scale/path.js';
import { rungEnds, type SugarRuleGeometry } from './geometry.js';

/** Corners harden with the sugar. */
const CORNERS: Readonly<Partial<Record<StageRange['id'], number>>> = {
  thread: 12,
  'soft-ball': 12,
  'firm-ball': 9,
  'hard-ball': 7,
  'soft-crack': 3,
};
/** Sugar's own colours, where it has any. */
const COLOURS: Readonly<Partial<Record<StageRange['id'], string>>> = {
  'clear-liquid': 'vf-clear',
  'between-clear-liquid-and-brown-liquid': 'vf-amber',
  'brown-liquid': 'vf-brown',
};
const STRIP_LEFT = 2;
const RUNG_LEFT = 7;
/** Between a rung and the joint, where its ends are marked. */
const GUTTER = 8;

/** The strip that never moves, with a rung for each stage. Its words are drawn above the line. */
export function TextureStrip(props: {
  readonly geometry: SugarRuleGeometry;
  /** The rung the line stands on. */
  readonly here: StageRange | undefined;
}): JSX.Element {
  const { geometry, here } = props;
  const { top, bottom, joint, ladder } = geometry;
  return (
    <g class="vf-texture">
      <path
        class="vf-strip"
        d={stripPath(STRIP_LEFT, top, joint - 1 - STRIP_LEFT, bottom - top, 12)}
      />
      {ladder.rungs.map((rung) => (
        <Rung key={rung.id} geometry={geometry} rung={rung} isHere={rung === here} />
      ))}
    </g>
  );
}

function Rung(props: {
  readonly geometry: SugarRuleGeometry;
  readonly rung: StageRange;
  readonly isHere: boolean;
}): JSX.Element {
  const { geometry, rung, isHere } = props;
  const [top, bottom] = rungEnds(geometry, rung);
  const right = geometry.joint - 1;
  const isDry = rung.drySolidsMassFraction === null;
  const place = {
    x: RUNG_LEFT,
    y: px(top + 1),
    width: right - RUNG_LEFT - GUTTER,
    height: px(bottom - top - 2),
    rx: Math.min(CORNERS[rung.id] ?? 0, px(bottom - top - 2) / 2),
  };
  const colour = COLOURS[rung.id];
  const isStage = rung.kind === 'stage';
  return (
    <g>
      {isStage && <rect class={isDry ? 'vf-rung-dry' : 'vf-rung'} {...place} />}
      {isStage && !isDry && (
        <rect class="vf-hatch" fill={`url(#${geometry.state.id}-hatch)`} {...place} />
      )}
      {colour !== undefined && (
        <rect
          class={`vf-sugar ${colour}`}
          x={right - GUTTER - 9}
          y={px(top + 1)}
          width={9}
          height={px(bottom - top - 2)}
        />
      )}
      {isHere && <rect class="vf-here" {...place} />}
      <path class="vf-edge" d={`M${right} ${px(top)}h-6M${right} ${px(bottom)}h-6`} />
    </g>
  );
}
