import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { panelWords } from '../../../words/bench-panels.js';
import { type BesideId, besides } from '../../state/beside.js';
import type { BenchProps } from '../bench-context.js';
import { Acid } from './acid.js';
import { BesidePart } from './beside.js';
import { Clock } from './clock.js';
import { Jar } from './jar.js';
import { Keeping } from './keeping.js';
import { LabelPart } from './label.js';
import { Windows } from './windows.js';

/** Minutes, windows, keeping, acid, another plan, the label: what the answer rests on, to be played with. */
export function Panels(props: BenchProps): JSX.Element {
  const [chosen, choose] = useState<BesideId | ''>('');
  const beside = { ...props, chosen, choose };
  const canDoWithout = besides(props.state).some(({ id }) => id === 'without-xylitol');
  return (
    <>
      <Clock {...props} />
      <Windows {...props} />
      <Keeping {...props} />
      <Acid {...beside} />
      {canDoWithout && (
        <p class="part">
          <button
            type="button"
            class="way"
            id="without-xylitol"
            onClick={() => {
              choose('without-xylitol');
              document.getElementById('f-beside')?.focus();
            }}
          >
            {panelWords.withoutXylitol}
          </button>
        </p>
      )}
      <BesidePart {...beside} />
      <LabelPart {...props} />
      <Jar {...props} />
    </>
  );
}
