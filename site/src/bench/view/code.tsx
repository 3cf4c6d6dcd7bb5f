import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { benchLaterWords } from '../../words/bench-later.js';
import { fileNameOf, programFor } from '../state/program.js';
import type { BenchProps } from './bench-context.js';
import { copyText } from './devices.js';

/** This batch as a document, and the six lines that plan it in a program. */
export function Code({ batch, say }: BenchProps): JSX.Element {
  const words = benchLaterWords.code;
  const [isOpen, setOpen] = useState(false);
  const [text, setText] = useState('');
  useEffect(() => {
    if (!isOpen) return undefined;
    let current = true;
    void import('vitrose/documents').then(({ batchText }) => {
      if (current) setText(batchText(batch));
    });
    return () => {
      current = false;
    };
  }, [isOpen, batch]);
  return (
    <details class="part code" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <h2>{words.title}</h2>
      </summary>
      <Listing id="code-batch" title={words.batch} text={text} say={say} />
      <Listing
        id="code-program"
        title={words.program}
        text={programFor(fileNameOf(batch))}
        say={say}
      />
    </details>
  );
}

function Listing(props: {
  readonly id: string;
  readonly title: string;
  readonly text: string;
  readonly say: (text: string) => void;
}): JSX.Element {
  const { id, title, text, say } = props;
  const words = benchLaterWords.code;
  return (
    <div class="listing">
      <h3 id={`${id}-title`}>{title}</h3>
      <button
        type="button"
        aria-describedby={`${id}-title`}
        onClick={() => void copyText(text).then((done) => say(done ? words.copied : words.select))}
      >
        {words.copy}
      </button>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls has to be reached by keyboard. */}
      <section class="listing-text" tabIndex={0} aria-labelledby={`${id}-title`}>
        <pre id={id}>{text}</pre>
      </section>
    </div>
  );
}
