import type { JSX } from 'preact';
import type { Hob, MouldKind, ThermometerKind } from 'vitrose';
import { benchWords } from '../../words/bench.js';
import { hobFromKettle, wattsOf } from '../state/air.js';
import { setValue } from '../state/edits.js';
import type { FieldName } from '../state/fields.js';
import { type HobKind, hobOf, type WrapChoice, wrapChoice, wrapOf } from '../state/hob-and-wrap.js';
import { tidy } from '../state/read/tidy.js';
import type { BenchProps } from './bench-context.js';
import { Pick } from './choice.js';
import { Gate } from './gate.js';
import { NumberBox } from './number-box.js';

const NOT_SAID = '';

/** Pan, mould, thermometer, room and pieces: what the plan needs to count and to warn. */
export function Things(props: BenchProps): JSX.Element {
  const { state, batch, edit } = props;
  const words = benchWords.things;
  const { region } = state.manner;
  const { plan } = props.planned;
  const watts = wattsOf(batch.hob, plan?.kitchen.waterBoilsAtC.value ?? 100);
  const box = (name: FieldName, label: string): JSX.Element => (
    <NumberBox {...props} key={name} name={name} label={label} />
  );
  return (
    <section class="part things" aria-labelledby="things-title">
      <h2 id="things-title">{words.title}</h2>
      <Group {...props} id="pieces" of={[batch.pieces]} title={words.pieces}>
        {box('count', words.count)}
        {box('pieceMass', words.pieceMass)}
        {batch.pieces?.finishedMassG !== undefined && box('finished', words.finished)}
      </Group>
      <Group {...props} id="mould" of={[batch.mould]} title={words.mould(region)}>
        <Pick
          id="f-mould-kind"
          label={words.mouldKind}
          value={batch.mould?.kind ?? NOT_SAID}
          options={kinds<MouldKind>(words.mouldKinds)}
          onChoose={(kind) => edit((before) => setValue(before, '/mould/kind', given(kind)))}
        />
        {box('cavity', words.cavity)}
        {box('cavities', words.cavities(region))}
        {box('moulds', words.moulds(region))}
        {box('mouldMax', words.mouldMax)}
      </Group>
      <Group {...props} id="pan" of={[batch.pan]} title={words.pan}>
        {box('diameter', words.diameter)}
        {box('capacity', words.capacity)}
        {box('empty', words.empty)}
      </Group>
      <Group {...props} id="thermometer" of={[batch.thermometer]} title={words.thermometer}>
        <Pick
          id="f-thermometer-kind"
          label={words.thermometerKind}
          value={batch.thermometer?.kind ?? NOT_SAID}
          options={kinds<ThermometerKind>(words.thermometerKinds)}
          onChoose={(kind) => edit((before) => setValue(before, '/thermometer/kind', given(kind)))}
        />
        {box('scaleEnd', words.scaleEnd)}
        {box('readsIn', words.readsIn)}
      </Group>
      <Group {...props} id="hob" of={[batch.hob, watts]} title={words.hob(region)}>
        <Pick<HobKind>
          id="f-hob-kind"
          label={words.hobKind}
          value={batch.hob?.kind ?? NOT_SAID}
          options={kinds<Hob['kind']>(words.hobKinds)}
          onChoose={(kind) =>
            edit((before) => setValue(before, '/hob', hobOf(kind, before.now.batch)))
          }
        />
        {batch.hob !== undefined && 'powerW' in batch.hob && box('power', words.power)}
        {batch.hob?.kind === 'timed' && (
          <NumberBox
            {...props}
            name="kettle"
            label={words.kettle}
            means={
              watts === undefined
                ? undefined
                : words.kettleAnswer(tidy(Math.round(watts / 10) * 10))
            }
            onValue={(before, value) =>
              setValue(before, '/hob', value === undefined ? undefined : hobFromKettle(value))
            }
          />
        )}
      </Group>
      <Group {...props} id="room" of={[batch.room, batch.store]} title={words.room}>
        {box('roomC', words.roomC)}
        {box('humidity', words.humidity)}
        {box('storeC', words.storeC)}
        {box('storeHumidity', words.storeHumidity)}
        {box('days', words.days)}
      </Group>
      <details class="more">
        <summary>{words.more}</summary>
        <Group {...props} id="wrap" of={[batch.wrap, plan?.yield.pieceG?.value]} title={words.wrap}>
          <Pick<WrapChoice>
            id="f-wrap"
            label={words.wrapKind}
            value={wrapChoice(batch)}
            options={[
              [NOT_SAID, words.notSaid],
              ...(Object.entries(words.wraps) as [WrapChoice, string][]),
            ]}
            onChoose={(choice) =>
              edit((before) => setValue(before, '/wrap', wrapOf(choice, before.now.batch, plan)))
            }
          />
          {typeof batch.wrap === 'object' && box('wrapArea', words.wrapArea)}
          {typeof batch.wrap === 'object' && box('seal', words.seal)}
        </Group>
        <Group
          {...props}
          id="pan-matters"
          of={[batch.handling, batch.water, batch.cook]}
          title={words.inThePan}
        >
          <Pick<'' | 'no' | 'yes'>
            id="f-stirred"
            label={words.stirred}
            value={
              batch.handling?.stirredAfterBoil === undefined
                ? NOT_SAID
                : batch.handling.stirredAfterBoil
                  ? 'yes'
                  : 'no'
            }
            options={[
              [NOT_SAID, words.notSaid],
              ['no', words.no],
              ['yes', words.yes],
            ]}
            onChoose={(said) =>
              edit((before) =>
                setValue(
                  before,
                  '/handling/stirredAfterBoil',
                  said === NOT_SAID ? undefined : said === 'yes',
                ),
              )
            }
          />
          {box('alkalinity', words.alkalinity)}
          {box('vacuum', words.vacuum)}
        </Group>
      </details>
    </section>
  );
}

function Group(
  props: BenchProps & {
    readonly id: string;
    readonly title: string;
    /** What its fields hold. */
    readonly of: readonly unknown[];
    readonly children: JSX.Element | (JSX.Element | false)[];
  },
): JSX.Element {
  const { turns, state, id, title, of, children } = props;
  return (
    <Gate
      turns={turns}
      of={[...of, state.manner, state.round]}
      draw={() => (
        <fieldset class="group" id={`${id}-group`}>
          <legend>{title}</legend>
          <div class="row">{children}</div>
        </fieldset>
      )}
    />
  );
}

function kinds<Kind extends string>(
  labels: Readonly<Record<Kind, string>>,
): readonly (readonly [Kind | '', string])[] {
  return [[NOT_SAID, benchWords.things.notSaid], ...(Object.entries(labels) as [Kind, string][])];
}

function given<Kind extends string>(kind: Kind | ''): Kind | undefined {
  return kind === '' ? undefined : kind;
}
