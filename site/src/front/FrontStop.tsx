import { SugarRule } from '@vitrose/figures';
import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { FRONT_RECIPE_NAMES, FRONT_WORDS as words } from '../words/front.js';
import type { FrontQuestion } from './question.js';
import { readReading } from './read-reading.js';
import type { FrontRecipeId } from './recipes.js';
import { showStop } from './show-stop.js';
import { stopHere } from './stop-here.js';

const PROBLEM_WORDS = {
  unreadable: words.unreadable,
  'too-low': words.tooLow,
  'too-high': words.tooHigh,
} as const;

/** How long a changed number shows by how much. */
const DIFFERENCE_SHOWN_MS = 4_000;

/** One sentence with two blanks, the rule it sets, and where to stop. */
export function FrontStop(props: {
  readonly questions: readonly FrontQuestion[];
  readonly firstReadingC: number;
}): JSX.Element | null {
  const { questions, firstReadingC } = props;
  const [entry, setEntry] = useState(String(firstReadingC));
  const [readingC, setReadingC] = useState(firstReadingC);
  const [recipe, setRecipe] = useState<FrontRecipeId>('lemon-drops');
  const fahrenheit = useFahrenheit((us) => setEntry(written(readingC, us)));

  const read = readReading(entry);
  const problem = read.kind === 'reading' ? undefined : PROBLEM_WORDS[read.kind];
  const echo =
    read.kind === 'reading' && read.wasFahrenheit && !fahrenheit
      ? words.echo(read.temperatureC.toFixed(1))
      : undefined;
  const question = questions.find(({ id }) => id === recipe) ?? questions[0];
  if (question === undefined) return null;

  const here = stopHere(question, readingC);
  const shown = showStop(here, fahrenheit);
  const shift = Math.round((question.seaLevelC - here.stopC) * (fahrenheit ? 1.8 : 1));
  const printed = Math.round(fahrenheit ? question.seaLevelC * 1.8 + 32 : question.seaLevelC);

  function onEntry(text: string): void {
    setEntry(text);
    const next = readReading(text);
    if (next.kind === 'reading') setReadingC(next.temperatureC);
  }

  return (
    <div class="front not-content">
      <div class="front-rule">
        <SugarRule
          id="front-rule"
          pressurePa={here.pressurePa}
          stopHereC={here.stopC}
          windowHereC={here.windowC}
          mixture={question.base}
          units={fahrenheit ? 'f' : 'c'}
          widthPx={400}
          heightPx={760}
          compact
        />
      </div>
      <div class="front-words">
        <form class="front-sentence" onSubmit={(event) => event.preventDefault()}>
          <label for="front-reading">{words.readingLabel}</label>{' '}
          <span class="front-blank">
            <input
              id="front-reading"
              inputMode="decimal"
              autocomplete="off"
              spellcheck={false}
              value={entry}
              aria-describedby="front-problem"
              aria-invalid={problem === undefined ? undefined : true}
              onInput={(event) => onEntry(event.currentTarget.value)}
            />
            <span aria-hidden="true">{fahrenheit ? '°F' : '°C'},</span>
          </span>{' '}
          <label for="front-recipe">{words.recipeLabel}</label>{' '}
          <span class="front-blank">
            <select
              id="front-recipe"
              value={recipe}
              onChange={(event) => setRecipe(event.currentTarget.value as FrontRecipeId)}
            >
              {questions.map(({ id }) => (
                <option key={id} value={id} selected={id === recipe}>
                  {FRONT_RECIPE_NAMES[id]}
                </option>
              ))}
            </select>
            <span aria-hidden="true">.</span>
          </span>
        </form>
        <p id="front-problem" class="front-problem" role="status">
          {problem ?? echo}
        </p>
        <output
          class="front-answer"
          for="front-reading front-recipe"
          data-stale={problem !== undefined}
        >
          <span class="front-stop">
            <span class="front-stop-words">{words.stopAt}</span> <Changing value={shown.stop} />
          </span>
          <span class="front-window">
            {words.between(shown.low, shown.high)} ·{' '}
            {words.leaves(String(Math.round(question.waterGPer100G)))}
          </span>
        </output>
        <p class="front-because">{words.because(shift, String(printed))}</p>
      </div>
    </div>
  );
}

/** A number that says for a while by how much it changed. */
function Changing({ value }: { readonly value: string }): JSX.Element {
  const last = useRef(value);
  const [difference, setDifference] = useState('');
  useEffect(() => {
    const by = Number(value) - Number(last.current);
    last.current = value;
    if (by === 0) return;
    setDifference(`${by < 0 ? '−' : '+'}${Number(Math.abs(by).toFixed(1))}`);
    const timer = setTimeout(() => setDifference(''), DIFFERENCE_SHOWN_MS);
    return () => clearTimeout(timer);
  }, [value]);
  return (
    <span class="front-number">
      {value}
      <span class="front-difference" aria-hidden="true">
        {difference}
      </span>
    </span>
  );
}

/** The reader's scale, as kept on the device; follows a change on this page. */
function useFahrenheit(onChange: (us: boolean) => void): boolean {
  const [us, setUs] = useState(false);
  // The effect runs once; what it calls is always the latest.
  const latest = useRef(onChange);
  latest.current = onChange;
  useEffect(() => {
    const root = document.documentElement;
    const follow = (): void => {
      const now = root.dataset.region === 'us';
      setUs(now);
      latest.current(now);
    };
    if (root.dataset.region === 'us') follow();
    const watch = new MutationObserver(follow);
    watch.observe(root, { attributeFilter: ['data-region'] });
    return () => watch.disconnect();
  }, []);
  return us;
}

function written(readingC: number, us: boolean): string {
  return String(Number((us ? readingC * 1.8 + 32 : readingC).toFixed(1)));
}
