import type { JSX } from 'preact';
import type { StageRange } from 'vitrose';
import { stageName } from 'vitrose/words';
import { px } from '../scale/path.js';
import { beadPlaces } from './bead-places.js';
import { Drop } from './drops.js';
import { rungEnds, type SugarRuleGeometry } from './geometry.js';
import { NAME_LEFT, type RungWords, rungWords } from './rung-words.js';

const DROP_MIDDLE = 29;

/** Names, drops and beads. The line passes behind them, never through. */
export function TextureWords(props: {
  readonly geometry: SugarRuleGeometry;
  readonly here: StageRange | undefined;
  readonly lineY: number | undefined;
}): JSX.Element {
  const { geometry, here, lineY } = props;
  const { ladder, top, joint, scale } = geometry;
  const thinEnds = scale.at(ladder.rungs[0]?.lowSeaLevelC ?? 110);
  return (
    <g>
      {ladder.namesApply ? (
        <text class="vf-quiet" x={NAME_LEFT} y={px((top + thinEnds) / 2 + 5)} font-size={14}>
          {stageName('too-thin')}
        </text>
      ) : (
        <NoNames geometry={geometry} />
      )}
      {ladder.rungs.map((rung) => {
        const words = rungWords(geometry, rung, lineY);
        const [rungTop, rungBottom] = rungEnds(geometry, rung);
        return (
          words !== undefined && (
            <Words
              key={rung.id}
              words={words}
              rung={rung}
              height={rungBottom - rungTop}
              wordsRight={joint - 14}
              isHere={rung === here}
            />
          )
        );
      })}
    </g>
  );
}

function Words(props: {
  readonly words: RungWords;
  readonly rung: StageRange;
  readonly height: number;
  readonly wordsRight: number;
  readonly isHere: boolean;
}): JSX.Element {
  const { words, rung, height, wordsRight, isHere } = props;
  const { name, isStage, sizePx, y, beads, crossed } = words;
  const ground = rung.kind === 'stage' && rung.drySolidsMassFraction !== null;
  return (
    <g>
      {crossed && (
        <rect
          class={ground ? 'vf-rung' : 'vf-sheet'}
          x={12}
          y={px(y - 6)}
          width={wordsRight - 12}
          height={12}
        />
      )}
      {rung.kind === 'stage' && name !== '' && (
        <Drop id={rung.id} x={DROP_MIDDLE} y={y} scale={Math.min(1, (height - 5) / 17)} />
      )}
      <text
        class={isStage ? 'vf-strong' : isHere ? undefined : 'vf-quiet'}
        x={NAME_LEFT}
        y={px(y + sizePx * 0.34)}
        font-size={sizePx}
      >
        {name}
      </text>
      {beads !== undefined && (
        <g class="vf-beads">
          {beadPlaces(beads.count, beads.pitch).map(([beadX, beadY]) => (
            <circle
              key={`${beadX} ${beadY}`}
              cx={px(beads.left + beadX)}
              cy={px(y + beadY)}
              r={px(beads.pitch * 0.37)}
            />
          ))}
        </g>
      )}
    </g>
  );
}

/** A mass whose cooled feel the names would misstate. */
function NoNames({ geometry }: { readonly geometry: SugarRuleGeometry }): JSX.Element {
  return (
    <g class="vf-quiet">
      {['Stage names are for', 'sugar. The beads count:', 'water left in 100 g.'].map(
        (line, at) => (
          <text
            key={line}
            class="vf-quiet"
            x={14}
            y={px(geometry.bottom - 90 + 20 * at)}
            font-size={14}
          >
            {line}
          </text>
        ),
      )}
    </g>
  );
}
