import type { RefObject } from 'preact';
import { useCallback, useRef, useState } from 'preact/hooks';
import { createTurns, type Turns } from './turns.js';

/** The turns of a page, and whether every part of it has come alive. */
export function useTurns(): {
  readonly turns: Turns;
  readonly root: RefObject<HTMLDivElement>;
  readonly give: () => void;
  readonly areOver: boolean;
} {
  const root = useRef<HTMLDivElement>(null);
  const [turns] = useState(() => createTurns(typeof document === 'undefined'));
  const [areOver, setOver] = useState(false);
  const give = useCallback(() => {
    if (root.current !== null) void turns.give(root.current).then(() => setOver(true));
  }, [turns]);
  return { turns, root, give, areOver };
}
