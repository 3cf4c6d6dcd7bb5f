import { KeepingBars } from '@vitrose/figures';
import type { JSX } from 'preact';
import { panelWords } from '../../../words/bench-panels.js';
import type { BenchProps } from '../bench-context.js';
import { Buttons } from '../watch-line.js';
import { Fitted } from './fitted.js';
import { Part } from './part.js';
import { SectionLines } from './section-lines.js';

/** Whether it stays hard, what air it bears, whether it grains, and the best single remedy. */
export function Keeping(props: BenchProps): JSX.Element | null {
  const { planned, described, batch } = props;
  const { plan, isOld } = planned;
  if (plan === undefined) return null;
  const { air } = plan.keeping;
  const graining = plan.advice.find(({ code }) => code === 'may-grain' || code === 'no-doctor');
  const best = graining?.remedies.slice(0, 1) ?? [];
  return (
    <Part id="keeping" title={panelWords.keeping} isOld={isOld}>
      {air !== undefined && (
        <Fitted
          draw={(widthPx) => (
            <KeepingBars
              id="keeping-bars"
              relativeHumidity={batch.room?.relativeHumidity ?? plan.keeping.storeRelativeHumidity}
              equilibrium={air.ownRelativeHumidity.value}
              criticalRelativeHumidity={air.criticalRelativeHumidity.value}
              stickyFrom={air.sticksFromRelativeHumidity}
              stickyAt={air.stickyAtRelativeHumidity}
              widthPx={widthPx}
            />
          )}
        />
      )}
      <SectionLines described={described} id="keeping" />
      {best.length > 0 && <Buttons {...props} remedies={best} />}
    </Part>
  );
}
