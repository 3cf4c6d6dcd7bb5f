import { CookTime } from '@vitrose/figures';
import type { JSX } from 'preact';
import { panelWords } from '../../../words/bench-panels.js';
import type { BenchProps } from '../bench-context.js';
import { Part } from './part.js';
import { SectionLines } from './section-lines.js';

/** The boil against the clock, as this thermometer shows it. */
export function Clock({ planned, described, state }: BenchProps): JSX.Element | null {
  const { plan, isOld } = planned;
  if (plan === undefined) return null;
  const { cooking } = plan;
  return (
    <Part id="clock" title={panelWords.clock} isOld={isOld}>
      {cooking !== undefined && (
        <CookTime
          id="cook-time"
          path={cooking.path.map(({ minutes, readingC }) => ({ minutes, temperatureC: readingC }))}
          moments={cooking.moments.map(({ id, atMin, readingC }) => ({
            id,
            minutes: atMin.value,
            temperatureC: readingC,
          }))}
          bandMinutes={cooking.toStopMin.band}
          units={state.manner.units === 'us' ? 'f' : 'c'}
          widthPx={640}
        />
      )}
      <SectionLines described={described} id="time" />
    </Part>
  );
}
