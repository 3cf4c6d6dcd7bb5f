import type { JSX } from 'preact';
import type { Aim, StageId } from 'vitrose';
import { stageName } from 'vitrose/words';
import { benchWords } from '../../words/bench.js';
import { setTarget } from '../state/edits.js';
import {
  STAGES,
  stageTargetOf,
  TARGET_KINDS,
  targetKindOf,
  targetOfKind,
} from '../state/target.js';
import type { BenchProps } from './bench-context.js';
import { Choice, Pick } from './choice.js';
import { NumberBox } from './number-box.js';

/** Where to stop, said in one of four ways. */
export function Target(props: BenchProps): JSX.Element {
  const { batch, planned, edit } = props;
  const words = benchWords.target;
  const kind = targetKindOf(batch);
  return (
    <section class="part target" aria-labelledby="target-title">
      <h2 id="target-title">{words.title}</h2>
      <Choice
        id="target"
        label={words.label}
        value={kind}
        options={TARGET_KINDS.map((one) => [one, words[one]] as const)}
        onChoose={(next) => edit((before) => setTarget(before, targetOfKind(next, planned.plan)))}
      />
      {kind === 'stage' && <StageBoxes {...props} />}
      {kind === 'printed' && <NumberBox {...props} name="printed" label={words.printedField} />}
      {kind === 'moisture' && <NumberBox {...props} name="moisture" label={words.moistureField} />}
      {kind === 'glass' && <NumberBox {...props} name="glass" label={words.glassField} />}
    </section>
  );
}

function StageBoxes({ batch, edit }: BenchProps): JSX.Element {
  const words = benchWords.target;
  const { cook } = batch;
  const stage: StageId = 'toStage' in cook ? cook.toStage : 'hard-crack';
  const aim: Aim = ('toStage' in cook ? cook.aim : undefined) ?? 'middle';
  return (
    <div class="row">
      <Pick
        id="f-stage"
        label={words.stageField}
        value={stage}
        options={STAGES.map((one) => [one, stageName(one)] as const)}
        onChoose={(next) => edit((before) => setTarget(before, stageTargetOf(next, aim)))}
      />
      <Pick
        id="f-aim"
        label={words.aim}
        value={aim}
        options={Object.entries(words.aims) as [Aim, string][]}
        onChoose={(next) => edit((before) => setTarget(before, stageTargetOf(stage, next)))}
      />
    </div>
  );
}
