import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { benchLaterWords } from '../../words/bench-later.js';
import { recipeOf } from '../state/recipe.js';
import { packed } from '../state/share-link.js';
import type { BenchProps } from './bench-context.js';
import { copyText } from './devices.js';

/** A link that holds the recipe. The kitchen stays out unless it is asked for. */
export function Share({ batch, say }: BenchProps): JSX.Element {
  const words = benchLaterWords.share;
  const [link, setLink] = useState('');
  const [trouble, setTrouble] = useState('');
  const share = async (withKitchen: boolean): Promise<void> => {
    const { batchText } = await import('vitrose/documents');
    // As one line: the indents of the file would only make the link longer.
    const text = JSON.stringify(JSON.parse(batchText(withKitchen ? batch : recipeOf(batch))));
    const made = await packed(text);
    if (made.kind === 'too-long') {
      setLink('');
      setTrouble(words.tooLong);
      return say(words.tooLong);
    }
    const address = `${location.origin}${location.pathname}${made.fragment}`;
    setTrouble('');
    setLink(address);
    say((await copyText(address)) ? words.copied : words.ready);
  };
  return (
    <section class="part share" id="share" tabIndex={-1} aria-labelledby="share-title">
      <h2 id="share-title">{words.title}</h2>
      <p class="quiet">{words.note}</p>
      <p class="ways">
        <button type="button" onClick={() => void share(false)}>
          {words.recipe}
        </button>
        <button type="button" onClick={() => void share(true)}>
          {words.withKitchen}
        </button>
      </p>
      <div class="field" hidden={link === ''}>
        <label for="share-link">{words.link}</label>
        <input
          id="share-link"
          type="text"
          readOnly
          value={link}
          onFocus={(event) => event.currentTarget.select()}
        />
      </div>
      {trouble !== '' && <p>{trouble}</p>}
    </section>
  );
}
