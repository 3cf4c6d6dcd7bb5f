import type { JSX } from 'preact';
import type { StageId } from 'vitrose';
import { px } from '../scale/path.js';

/**
 * The drop as it looks in cold water, about its middle.
 *
 * From a line that will not hold a shape to a rod in two: what flows is round, what is set is square.
 */
export function Drop(props: {
  readonly id: StageId;
  readonly x: number;
  readonly y: number;
  /** 1 at full size; smaller where a rung is low. */
  readonly scale: number;
}): JSX.Element {
  const k = props.scale;
  return (
    <g class="vf-drop" transform={`translate(${px(props.x)} ${px(props.y)})`}>
      {shape(props.id, k)}
    </g>
  );
}

function shape(id: StageId, k: number): JSX.Element {
  const at = (value: number): number => px(value * k);
  switch (id) {
    case 'thread':
      return (
        <>
          <path
            d={`M${at(-16)} 0C${at(-12)} ${at(-8)} ${at(-8)} ${at(-8)} ${at(-5)} 0S${at(2)} ${at(8)} ${at(6)} ${at(0)}`}
          />
          <circle class="vf-solid" cx={at(11)} cy={at(-1)} r={Math.max(2.6, at(3.6))} />
        </>
      );
    case 'soft-ball':
      return <ellipse rx={at(16)} ry={at(7)} />;
    case 'firm-ball':
      return <ellipse rx={at(13)} ry={at(9.5)} />;
    case 'hard-ball':
      return <circle r={at(11)} />;
    case 'soft-crack':
      return <path d={`M${at(-16)} ${at(5)}Q0 ${at(-11)} ${at(16)} ${at(5)}`} />;
    case 'hard-crack':
      return (
        <path
          d={`M${at(-16)} ${at(5)}L${at(-3)} ${at(1)}M${at(3)} ${at(-5)}L${at(16)} ${at(-1)}`}
        />
      );
    case 'clear-liquid':
      return <rect class="vf-clear" x={at(-10)} y={at(-10)} width={at(20)} height={at(20)} />;
    case 'brown-liquid':
      return <rect class="vf-brown" x={at(-10)} y={at(-10)} width={at(20)} height={at(20)} />;
  }
}
