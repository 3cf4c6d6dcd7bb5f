import { TemperatureAxis } from '@vitrose/figures';
import type { JSX } from 'preact';
import { formatTemperature } from 'vitrose/words';
import { panelWords } from '../../../words/bench-panels.js';
import type { BenchProps } from '../bench-context.js';
import { Fitted } from './fitted.js';
import { glued } from './glued.js';
import { Part } from './part.js';
import { SectionLines } from './section-lines.js';

/** One temperature axis: what the mass lets the hand do, the glass point, the room. */
export function Windows({ planned, described, state, batch }: BenchProps): JSX.Element | null {
  const { plan, isOld } = planned;
  if (plan === undefined) return null;
  const { manner } = state;
  const { glassTransitionC, storeC } = plan.keeping;
  const { hereC, readingC } = plan.target;
  const roomC = batch.room?.temperatureC ?? storeC;
  const [mass, reading] = [hereC, readingC].map(({ value }) => formatTemperature(value, manner));
  return (
    <Part id="windows" title={panelWords.windows.title} isOld={isOld}>
      <Fitted
        draw={(widthPx) => (
          <TemperatureAxis
            id="working-windows"
            windows={plan.windows}
            stopC={hereC.value}
            glassC={glassTransitionC.value}
            glassBandC={glassTransitionC.band}
            roomC={roomC}
            storeC={storeC === roomC ? undefined : storeC}
            mouldMaxC={plan.pour.mouldMaxC}
            units={manner.units === 'us' ? 'f' : 'c'}
            wide
            widthPx={widthPx}
          />
        )}
      />
      {/* Elsewhere the stop is what the thermometer shows: two numbers for one moment need a word. */}
      {mass !== undefined && reading !== undefined && mass !== reading && (
        <p class="told-apart">{glued(panelWords.windows.mass(mass, reading))}</p>
      )}
      <SectionLines described={described} id="windows" />
    </Part>
  );
}
