import type { JSX } from 'preact';
import { panelWords } from '../../../words/bench-panels.js';
import { Choice } from '../choice.js';
import { Part } from './part.js';
import type { BesideProps } from './props.js';
import { SectionLines } from './section-lines.js';

type AcidTime = 'first-boil' | 'off-heat';

const BESIDE = { 'first-boil': 'acid-first', 'off-heat': 'acid-last' } as const;
const TIMES: readonly AcidTime[] = ['first-boil', 'off-heat'];

/** What acid and heat do to the sugar, and a switch that shows the other way without taking it. */
export function Acid(props: BesideProps): JSX.Element | null {
  const { planned, described, offered, other, lay, say } = props;
  const { plan, isOld } = planned;
  const words = panelWords.acid;
  if (plan?.inversion === undefined) return null;
  const can = (time: AcidTime): boolean => offered.some(({ kind }) => kind === BESIDE[time]);
  const [canFirst, canLast] = [can('first-boil'), can('off-heat')];
  // Where both are another way, the acid goes in at several times, and neither is how it stands.
  const stands = canFirst && canLast ? undefined : canLast ? 'first-boil' : 'off-heat';
  const shown = TIMES.find((time) => BESIDE[time] === other?.kind) ?? stands ?? '';
  return (
    <Part id="acid" title={words.title} isOld={isOld}>
      <SectionLines described={described} id="acid" />
      {(canFirst || canLast) && (
        <>
          <Choice<AcidTime | ''>
            id="f-acid-time"
            label={words.label}
            value={shown}
            options={[
              ['first-boil', words.first],
              ['off-heat', words.last],
            ]}
            onChoose={(time) => {
              const isNow = time === '' || time === stands;
              lay(isNow ? '' : BESIDE[time]);
              say(isNow ? words.asNow : words.shown);
            }}
          />
          <p class="quiet">{words.note}</p>
        </>
      )}
    </Part>
  );
}
