import { useEffect, useRef } from 'preact/hooks';

/** What the keys do, whatever has the focus. */
export type KeyActions = {
  readonly onUndo: () => void;
  readonly onRedo: () => void;
  readonly onSave: () => void;
};

/** Ctrl or Command with Z, Shift Z, Y and S. Single letters are left to those who type or speak. */
export function useKeys(actions: KeyActions): void {
  const latest = useRef(actions);
  latest.current = actions;
  useEffect(() => {
    const listen = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const { onUndo, onRedo, onSave } = latest.current;
      const key = event.key.toLowerCase();
      // A line that is not on the table yet has only the browser's own undo.
      const isDraft =
        event.target instanceof HTMLInputElement && event.target.id.startsWith('new-');
      if (key === 'z' && isDraft && event.target.value !== '') return;
      const action =
        key === 'z'
          ? event.shiftKey
            ? onRedo
            : onUndo
          : key === 'y'
            ? onRedo
            : key === 's'
              ? onSave
              : undefined;
      if (action === undefined) return;
      event.preventDefault();
      action();
    };
    addEventListener('keydown', listen);
    return () => removeEventListener('keydown', listen);
  }, []);
}
