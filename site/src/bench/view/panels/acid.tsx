import type { JSX } from 'preact';
import { panelWords } from '../../../words/bench-panels.js';
import { type BesideId, besides } from '../../state/beside.js';
import type { BenchProps } from '../bench-context.js';
import { Choice } from '../choice.js';
import { Part } from './part.js';
import { SectionLines } from './section-lines.js';

type AcidTime = 'first-boil' | 'off-heat';

/** What acid and heat do to the sugar, and a switch that shows the other way without taking it. */
export function Acid(
  props: BenchProps & {
    readonly chosen: BesideId | '';
    readonly choose: (id: BesideId | '') => void;
  },
): JSX.Element | null {
  const { planned, described, state, chosen, choose } = props;
  const { plan, isOld } = planned;
  const words = panelWords.acid;
  if (plan?.inversion === undefined) return null;
  const offered = besides(state).map(({ id }) => id);
  const canBe = {
    'first-boil': offered.includes('acid-first'),
    'off-heat': offered.includes('acid-last'),
  };
  // Where only one way is another, the acid stands the other way now.
  const isNow: AcidTime = canBe['off-heat'] ? 'first-boil' : 'off-heat';
  const shown: AcidTime =
    chosen === 'acid-first' ? 'first-boil' : chosen === 'acid-last' ? 'off-heat' : isNow;
  return (
    <Part id="acid" title={words.title} isOld={isOld}>
      <SectionLines described={described} id="acid" />
      {(canBe['first-boil'] || canBe['off-heat']) && (
        <>
          <Choice<AcidTime>
            id="f-acid-time"
            label={words.label}
            value={shown}
            options={[
              ['first-boil', words.first],
              ['off-heat', words.last],
            ]}
            onChoose={(time) =>
              choose(time === isNow ? '' : time === 'first-boil' ? 'acid-first' : 'acid-last')
            }
          />
          <p class="quiet">{words.note}</p>
        </>
      )}
    </Part>
  );
}
