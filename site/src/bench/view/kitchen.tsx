import type { JSX } from 'preact';
import { benchWords } from '../../words/bench.js';
import { type AirField, elevationOf, hobFromKettle, wattsOf, withAir } from '../state/air.js';
import { keepAsMine } from '../state/arrive.js';
import { setValue } from '../state/edits.js';
import { tidy } from '../state/read/tidy.js';
import type { BenchState } from '../state/types.js';
import type { BenchProps } from './bench-context.js';
import { Gate } from './gate.js';
import { NumberBox } from './number-box.js';

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
  const watts = wattsOf(batch.hob, planned.plan?.kitchen.waterBoilsAtC.value ?? 100);
  const needsAltitude =
    batch.kitchen !== undefined &&
    'seaLevelPressurePa' in batch.kitchen &&
    elevationOf(batch) === 0;
  const boxes = (draw: () => JSX.Element): JSX.Element => (
    <Gate
      turns={turns}
      of={[batch.kitchen, batch.thermometer, batch.hob, state.manner, state.round]}
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
            <NumberBox
              {...props}
              name="kettle"
              label={words.kettle}
              onValue={(before, value) =>
                setValue(before, '/hob', value === undefined ? undefined : hobFromKettle(value))
              }
            />
          </div>
        ))}
        {watts !== undefined && (
          <p class="quiet">{words.kettleAnswer(tidy(Math.round(watts / 10) * 10))}</p>
        )}
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
    <div class={isOld ? 'told old' : 'told'}>
      {told.length === 0 ? (
        <p class="quiet">{benchWords.kitchen.skip}</p>
      ) : (
        told.map((line) => <p key={line}>{line}</p>)
      )}
    </div>
  );
}
