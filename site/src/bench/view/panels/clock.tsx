import { CookTime } from '@vitrose/figures';
import type { JSX } from 'preact';
import { panelWords } from '../../../words/bench-panels.js';
import type { BenchProps } from '../bench-context.js';
import { cookState } from './cook-state.js';
import { Fitted } from './fitted.js';
import { Part } from './part.js';
import { SectionLines } from './section-lines.js';

/** The boil against the clock, as this thermometer shows it. */
export function Clock({ planned, described, state }: BenchProps): JSX.Element | null {
  const { plan, isOld } = planned;
  if (plan === undefined) return null;
  const { cooking } = plan;
  return (
    <Part id="clock" title={panelWords.clock} isOld={isOld}>
      {/* Where the hob never gets there, the lines say so. */}
      {cooking !== undefined && (
        <Fitted
          draw={(widthPx) => (
            <CookTime id="cook-time" {...cookState(cooking, state.manner)} widthPx={widthPx} />
          )}
        />
      )}
      <SectionLines described={described} id="time" />
    </Part>
  );
}
