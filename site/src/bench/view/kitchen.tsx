import type { JSX } from 'preact';
import { benchWords } from '../../words/bench.js';
import { type AirField, elevationOf, withAir } from '../state/air.js';
import { keepAsMine } from '../state/arrive.js';
import { setValue } from '../state/edits.js';
import type { BenchState } from '../state/types.js';
import type { BenchProps } from './bench-context.js';
import { Gate } from './gate.js';
import { NumberBox } from './number-box.js';
import { AdviceText } from './watch-line.js';

const TOLD = 'kitchen-told';

/** The one question about the kitchen, the altitude, and behind them every other way to know the air. */
export function KitchenPart(props: BenchProps): JSX.Element {
  const { state, batch, planned, edit, turns } = props;
  const words = benchWords.kitchen;
  const air =
    (field: AirField) =>
    (before: BenchState, value: number | undefined): BenchState => {
      const next = withAir(before.now.batch, field, value);
      return setValue(before, '/kitchen', next.kitchen);
    };
  const needsAltitude =
    batch.kitchen !== undefined &&
    'seaLevelPressurePa' in batch.kitchen &&
    elevationOf(batch) === 0;
  // Two answers that contradict each other: the ways out stand where they were given.
  const differ = planned.isOld
    ? undefined
    : planned.plan?.advice.find(({ code }) => code === 'reading-and-altitude-differ');
  const boxes = (draw: () => JSX.Element): JSX.Element => (
    <Gate
      turns={turns}
      of={[batch.kitchen, batch.thermometer, state.manner, state.round]}
      draw={draw}
    />
  );
  return (
    <section class="part kitchen" aria-labelledby="kitchen-title">
      <h2 id="kitchen-title">{words.title}</h2>
      {boxes(() => (
        <div class="row two">
          <NumberBox {...props} name="boiling" label={words.question} large />
          <NumberBox
            {...props}
            name="altitude"
            label={words.altitude}
            onValue={air('altitude')}
            large
          />
        </div>
      ))}
      {differ !== undefined && <AdviceText {...props} advice={differ} then={TOLD} />}
      <KitchenWords {...props} />
      <details class="more">
        <summary>{words.other}</summary>
        {boxes(() => (
          <div class="row">
            <NumberBox
              {...props}
              name="weather"
              label={words.weather}
              onValue={air('weather')}
              idle={needsAltitude ? words.needsAltitude : undefined}
            />
            <NumberBox
              {...props}
              name="barometer"
              label={words.barometer}
              onValue={air('barometer')}
            />
            <NumberBox {...props} name="trusted" label={words.trusted} onValue={air('trusted')} />
            <NumberBox {...props} name="ice" label={words.ice} />
          </div>
        ))}
      </details>
      {state.now.whose === 'mine' && <p class="quiet">{words.mine}</p>}
      {state.now.whose === 'theirs' && (
        <p>
          {words.theirs}{' '}
          <button type="button" onClick={() => edit(keepAsMine)}>
            {words.keep}
          </button>
        </p>
      )}
    </section>
  );
}

/** What the answers to the questions come to. */
function KitchenWords({ planned, described }: BenchProps): JSX.Element {
  const lines = described?.sections.find(({ id }) => id === 'kitchen')?.lines ?? [];
  const { isOld } = planned;
  // The sentence about the recipe's number, and those that name the thermometer or the weather.
  const told = lines
    .filter((line) => /kitchen|thermometer|Height|Water boils/.test(line))
    .slice(0, 3);
  return (
    <div class={isOld ? 'told old' : 'told'} id={TOLD} tabIndex={-1}>
      {told.length === 0 ? (
        <p class="quiet">{benchWords.kitchen.skip}</p>
      ) : (
        told.map((line) => <p key={line}>{line}</p>)
      )}
    </div>
  );
}
