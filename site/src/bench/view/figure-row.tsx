import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { PlanDocument } from 'vitrose';
import { gradeWord } from 'vitrose/words';
import { benchLaterWords } from '../../words/bench-later.js';
import { type Opened, openedFigures } from '../state/opened.js';
import type { Manner } from '../state/read/types.js';

/** The numbers behind a line of the answer, each of which opens. */
export function FigureRows(props: {
  readonly plan: PlanDocument;
  readonly lineId: 'stop' | 'weighs' | 'makes' | 'keeps';
  readonly manner: Manner;
}): JSX.Element {
  const { plan, lineId, manner } = props;
  return (
    <>
      {openedFigures(lineId, plan, manner).map((opened) => (
        <FigureRow key={opened.id} opened={opened} plan={plan} lineId={lineId} />
      ))}
    </>
  );
}

/** One number that opens: its band, the equation behind it, where that comes from, how well it is known. */
function FigureRow(props: {
  readonly opened: Opened;
  readonly plan: PlanDocument;
  readonly lineId: string;
}): JSX.Element {
  const { opened, plan, lineId } = props;
  const { id, label, figure, format } = opened;
  const words = benchLaterWords.figures;
  const model = plan.models[figure.model];
  const [low, high] = figure.band.map(format) as [string, string];
  const [sources, setSources] = useState<readonly string[] | undefined>(undefined);
  const open = async (): Promise<void> => {
    if (sources !== undefined || model === undefined) return;
    const { cite } = await import('vitrose/sources');
    setSources(model.sources.map((source) => cite(source)));
  };
  return (
    <details class="figure" id={`open-${lineId}-${id}`} onToggle={() => void open()}>
      <summary>
        <span>{label}</span> <b>{format(figure.value)}</b>
      </summary>
      <p>{low === high ? words.exact : words.within(low, high)}</p>
      {model !== undefined && figure.model !== 'given' && (
        <>
          <p class="equation">{model.equation}</p>
          <p>
            <b class="grade">{gradeWord(model.grade)}</b>
          </p>
          {sources === undefined ? (
            <p class="quiet">{words.loading}</p>
          ) : (
            <ul class="sources">
              {sources.map((source) => (
                <li key={source}>{source}</li>
              ))}
            </ul>
          )}
        </>
      )}
    </details>
  );
}
