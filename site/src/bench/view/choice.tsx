import type { JSX } from 'preact';

/** One of a few, each with its own label: radio buttons in a row. */
export function Choice<Value extends string>(props: {
  readonly id: string;
  readonly label: string;
  readonly value: Value;
  readonly options: readonly (readonly [value: Value, label: string])[];
  readonly onChoose: (value: Value) => void;
}): JSX.Element {
  const { id, label, value, options, onChoose } = props;
  return (
    <fieldset class="choice" id={id}>
      <legend>{label}</legend>
      {options.map(([one, text]) => (
        <span key={one}>
          <input
            type="radio"
            id={`${id}-${one}`}
            name={id}
            checked={one === value}
            onChange={() => onChoose(one)}
          />
          <label for={`${id}-${one}`}>{text}</label>
        </span>
      ))}
    </fieldset>
  );
}

/** One of several, in a list that opens. */
export function Pick<Value extends string>(props: {
  readonly id: string;
  readonly label: string;
  readonly hideLabel?: boolean | undefined;
  readonly value: Value;
  readonly options: readonly (readonly [value: Value, label: string])[];
  readonly onChoose: (value: Value) => void;
}): JSX.Element {
  const { id, label, hideLabel, value, options, onChoose } = props;
  return (
    <div class="field pick">
      <label for={id} class={hideLabel === true ? 'only-read-aloud' : undefined}>
        {label}
      </label>
      <select
        id={id}
        value={value}
        onChange={(event) => onChoose(event.currentTarget.value as Value)}
      >
        {options.map(([one, text]) => (
          <option key={one} value={one} selected={one === value}>
            {text}
          </option>
        ))}
      </select>
    </div>
  );
}
