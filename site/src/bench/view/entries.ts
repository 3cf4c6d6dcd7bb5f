/** What stands in a field by a reader's hand, and how to enter it again. */
export type Entry = { readonly field: HTMLElement; readonly enterAgain: () => void };

/** The fields that hold something else than the server wrote. */
export function entriesIn(root: HTMLElement): readonly Entry[] {
  const fields = root.querySelectorAll<HTMLInputElement | HTMLSelectElement>('input, select');
  return [...fields].flatMap((field) => {
    const enterAgain = field instanceof HTMLSelectElement ? chosenIn(field) : enteredIn(field);
    return enterAgain === undefined ? [] : [{ field, enterAgain }];
  });
}

function chosenIn(field: HTMLSelectElement): (() => void) | undefined {
  if (field.selectedOptions[0]?.defaultSelected === true) return undefined;
  const { value } = field;
  return () => {
    field.value = value;
    field.dispatchEvent(new Event('change', { bubbles: true }));
  };
}

function enteredIn(field: HTMLInputElement): (() => void) | undefined {
  const { type, value, selectionStart, selectionEnd } = field;
  if (type === 'radio' && field.checked && !field.defaultChecked) {
    return () => {
      field.checked = true;
      field.dispatchEvent(new Event('change', { bubbles: true }));
    };
  }
  if (type !== 'text' || value === field.defaultValue) return undefined;
  return () => {
    // Writing moves the caret, so nothing is written that stands there already.
    if (field.value !== value) {
      field.value = value;
      if (document.activeElement === field) field.setSelectionRange(selectionStart, selectionEnd);
    }
    field.dispatchEvent(new InputEvent('input', { bubbles: true }));
  };
}
