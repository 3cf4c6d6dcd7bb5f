import { useEffect, useRef, useState } from 'preact/hooks';
import { type Difference, differenceAt, moved, unchanged } from '../state/difference.js';

/** What a shown number has changed by, for as long as that is worth showing. */
export function useDifference(value: number | undefined, unit: string): number | undefined {
  const held = useRef<{ readonly difference: Difference; readonly unit: string } | undefined>(
    undefined,
  );
  const [, redraw] = useState(0);
  const nowMs = typeof performance === 'undefined' ? 0 : performance.now();
  if (value !== undefined) {
    const before = held.current;
    // Another unit is another number, not a change.
    held.current =
      before === undefined || before.unit !== unit
        ? { difference: unchanged(value), unit }
        : { difference: moved(before.difference, value, nowMs), unit };
  }
  const until = held.current?.difference.until ?? 0;
  useEffect(() => {
    const leftMs = until - performance.now();
    if (leftMs <= 0) return undefined;
    const timer = setTimeout(() => redraw((count) => count + 1), leftMs + 20);
    return () => clearTimeout(timer);
  }, [until]);
  return held.current === undefined ? undefined : differenceAt(held.current.difference, nowMs);
}
