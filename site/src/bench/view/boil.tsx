import { BoilingCurve } from '@vitrose/figures';
import type { JSX } from 'preact';
import { benchLaterWords } from '../../words/bench-later.js';
import type { FigureState } from './figure-state.js';

/** The boiling curve with the batch on it. */
export function Boil({
  figures,
}: {
  readonly figures: FigureState | undefined;
}): JSX.Element | null {
  if (figures === undefined) return null;
  const { hereC, pressurePa, mass, units } = figures;
  return (
    <section class="part boil" aria-labelledby="boil-title">
      <h2 id="boil-title">{benchLaterWords.curve.title}</h2>
      <BoilingCurve
        id="boiling-curve"
        markC={hereC}
        pressurePa={pressurePa}
        mixture={mass}
        units={units}
        widthPx={640}
      />
    </section>
  );
}
