import type { JSX } from 'preact';
import type { BenchProps } from '../bench-context.js';
import { Acid } from './acid.js';
import { BesidePart } from './beside.js';
import { Clock } from './clock.js';
import { Jar } from './jar.js';
import { Keeping } from './keeping.js';
import { LabelPart } from './label.js';
import type { Lay } from './props.js';
import { useBeside } from './use-beside.js';
import { Windows } from './windows.js';

/** Minutes, windows, keeping, acid, another plan, the label: what the answer rests on, to be played with. */
export function Panels(
  props: BenchProps & { readonly beside: string; readonly lay: Lay },
): JSX.Element {
  const beside = { ...props, ...useBeside(props.state, props.beside) };
  return (
    <>
      <Clock {...props} />
      <Windows {...props} />
      <Keeping {...props} />
      <Acid {...beside} />
      <BesidePart {...beside} />
      <LabelPart {...props} />
      <Jar {...props} />
    </>
  );
}
