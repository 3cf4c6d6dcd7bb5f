import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { benchWords } from '../../words/bench.js';
import type { Manner } from '../state/read/types.js';
import type { Found } from '../state/search.js';

/** A list of ingredients one can search: by typing, with the arrows, or by pointing. */
export function IngredientBox(props: {
  readonly id: string;
  readonly label: string;
  readonly hideLabel?: boolean | undefined;
  /** What is chosen now. */
  readonly shown: string;
  readonly manner: Manner;
  readonly onChoose: (found: Found) => void;
  readonly placeholder?: string | undefined;
}): JSX.Element {
  const { id, label, hideLabel, shown, manner, onChoose } = props;
  const [sought, setSought] = useState<string | undefined>(undefined);
  const [active, setActive] = useState(0);
  const list = useRef<HTMLDivElement>(null);
  const isOpen = sought !== undefined;
  const search = useSearch(isOpen);
  const found = isOpen && search !== undefined ? search(sought, manner) : [];
  const at = Math.min(active, found.length - 1);
  useEffect(() => {
    if (isOpen) list.current?.children[at]?.scrollIntoView({ block: 'nearest' });
  }, [at, isOpen]);
  const open = (text: string): void => {
    setSought(text);
    setActive(0);
  };
  const choose = (one: Found | undefined): void => {
    if (one !== undefined) onChoose(one);
    setSought(undefined);
  };
  const onKeyDown = (event: JSX.TargetedKeyboardEvent<HTMLInputElement>): void => {
    const { key } = event;
    if (key === 'ArrowDown' || key === 'ArrowUp') {
      event.preventDefault();
      if (!isOpen) {
        open('');
        return;
      }
      const count = Math.max(1, found.length);
      setActive((at + (key === 'ArrowDown' ? 1 : count - 1)) % count);
    } else if (key === 'Enter' && isOpen) {
      event.preventDefault();
      choose(found[at]);
    } else if (key === 'Escape' && isOpen) {
      event.preventDefault();
      event.stopPropagation();
      setSought(undefined);
    }
  };
  return (
    <div class="field ingredient">
      <label for={id} class={hideLabel === true ? 'only-read-aloud' : undefined}>
        {label}
      </label>
      <input
        id={id}
        type="text"
        role="combobox"
        autocomplete="off"
        spellcheck={false}
        aria-expanded={isOpen}
        aria-controls={`${id}-list`}
        aria-autocomplete="list"
        aria-activedescendant={isOpen && found.length > 0 ? `${id}-o${at}` : undefined}
        value={sought ?? shown}
        onInput={(event) => open(event.currentTarget.value)}
        onClick={() => isOpen || open('')}
        onFocus={(event) => event.currentTarget.select()}
        onBlur={() => {
          // Leaving with a name that is one thing takes it; anything else leaves what was there.
          const exact = found.find(
            (one) => one.label.toLowerCase() === sought?.trim().toLowerCase(),
          );
          choose(sought === '' ? undefined : exact);
        }}
        onKeyDown={onKeyDown}
      />
      {/* The list is there before it is filled, so that what it belongs to can name it. */}
      <div
        id={`${id}-list`}
        ref={list}
        role="listbox"
        aria-label={label}
        class="found"
        hidden={!isOpen || found.length === 0}
      >
        {found.map((one, index) => (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the field keeps the focus and takes the keys.
          <div
            key={one.key}
            id={`${id}-o${index}`}
            role="option"
            aria-selected={index === at}
            tabIndex={-1}
            // The field keeps the focus while one points.
            onMouseDown={(event) => event.preventDefault()}
            onClick={() => choose(one)}
          >
            {one.label}
          </div>
        ))}
      </div>
      {isOpen && search !== undefined && found.length === 0 && (
        <p class="echo">{benchWords.formula.noneFits}</p>
      )}
    </div>
  );
}

type Search = typeof import('../state/search.js').searchIngredients;

/** The names of ingredients are fetched when a list is first opened, or a moment after the page. */
function useSearch(isWanted: boolean): Search | undefined {
  const [held, setHeld] = useState<{ readonly search: Search } | undefined>(undefined);
  useEffect(() => {
    if (!isWanted || held !== undefined) return;
    void import('../state/search.js').then(({ searchIngredients }) =>
      setHeld({ search: searchIngredients }),
    );
  }, [isWanted, held]);
  return held?.search;
}
