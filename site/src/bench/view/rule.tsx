import { SugarRule } from '@vitrose/figures';
import type { JSX } from 'preact';
import type { FigureState } from './figure-state.js';

/** The sugar rule at the left, with the stop on it. */
export function Rule({
  figures,
}: {
  readonly figures: FigureState | undefined;
}): JSX.Element | null {
  if (figures === undefined) return null;
  const { hereC, windowHereC, pressurePa, readingOffsetK, mass, units } = figures;
  return (
    <SugarRule
      id="sugar-rule"
      compact
      stopHereC={hereC}
      windowHereC={windowHereC}
      pressurePa={pressurePa}
      readingOffsetK={readingOffsetK}
      mixture={mass}
      units={units}
      widthPx={320}
      heightPx={680}
    />
  );
}
