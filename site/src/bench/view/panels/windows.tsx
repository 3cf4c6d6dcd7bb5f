import { TemperatureAxis } from '@vitrose/figures';
import type { JSX } from 'preact';
import { panelWords } from '../../../words/bench-panels.js';
import type { BenchProps } from '../bench-context.js';
import { Part } from './part.js';
import { SectionLines } from './section-lines.js';

/** One temperature axis: what the mass lets the hand do, the glass point, the room. */
export function Windows({ planned, described, state, batch }: BenchProps): JSX.Element | null {
  const { plan, isOld } = planned;
  if (plan === undefined) return null;
  const { glassTransitionC, storeC } = plan.keeping;
  return (
    <Part id="windows" title={panelWords.windows} isOld={isOld}>
      <TemperatureAxis
        id="working-windows"
        windows={plan.windows}
        stopC={plan.target.hereC.value}
        glassC={glassTransitionC.value}
        glassBandC={glassTransitionC.band}
        roomC={batch.room?.temperatureC ?? storeC}
        storeC={storeC}
        mouldMaxC={plan.pour.mouldMaxC}
        units={state.manner.units === 'us' ? 'f' : 'c'}
        wide
        widthPx={640}
      />
      <SectionLines described={described} id="windows" />
    </Part>
  );
}
