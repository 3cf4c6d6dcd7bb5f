import type { JSX } from 'preact';
import { formatMass } from 'vitrose/words';
import { benchWords } from '../../words/bench.js';
import { setBasis } from '../state/edits.js';
import { isInShares } from '../state/shares.js';
import type { BenchProps } from './bench-context.js';
import { Choice } from './choice.js';
import { FormulaRow } from './formula-row.js';
import { Gate } from './gate.js';
import { NewRow } from './new-row.js';

/** What goes in: the lines, one to add, and whether amounts are weights or per cent. */
export function Formula(props: BenchProps): JSX.Element {
  const { state, batch, planned, edit, turns } = props;
  const { manner } = state;
  const words = benchWords.formula;
  const { plan, isOld } = planned;
  const basis = isInShares(batch) ? 'shares' : 'weights';
  return (
    <section class="part formula" aria-labelledby="formula-title">
      <h2 id="formula-title">{words.title}</h2>
      <ol class="lines">
        {batch.formula.map((line, index) => {
          const lineKey = state.now.lineKeys[index] ?? `l${index}`;
          return (
            <Gate
              key={lineKey}
              turns={turns}
              of={[line, index, lineKey, manner, state.round, plan, isOld]}
              draw={() => <FormulaRow {...props} line={line} index={index} lineKey={lineKey} />}
            />
          );
        })}
      </ol>
      <Gate turns={turns} of={[manner, basis]} draw={() => <NewRow {...props} />} />
      {plan !== undefined && batch.formula.length > 0 && (
        <p class={isOld ? 'total old' : 'total'}>
          {words.total}: <b>{formatMass(plan.composition.chargeG.value, manner)}</b>
        </p>
      )}
      {plan !== undefined && !isOld && (
        <Choice
          id="basis"
          label={words.basis}
          value={basis}
          options={[
            ['weights', words.weights],
            ['shares', words.shares],
          ]}
          onChoose={(next) => edit((before) => setBasis(before, next, plan))}
        />
      )}
      {basis === 'shares' && <p class="quiet">{words.sharesNote}</p>}
    </section>
  );
}
