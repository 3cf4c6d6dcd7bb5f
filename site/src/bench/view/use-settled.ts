import { useLayoutEffect, useState } from 'preact/hooks';
import type { BenchProps } from './bench-context.js';

/** What is under the answer waits until the typing pauses: the answer must not wait for it. */
const PAUSE_MS = 120;

/**
 * The bench a little behind itself, for what is read and not typed in.
 *
 * @returns nothing while nobody has changed anything: the page stands as the server drew it.
 */
export function useSettled(bench: BenchProps, isTouched: boolean): BenchProps | undefined {
  const [settled, setSettled] = useState<BenchProps | undefined>(undefined);
  useLayoutEffect(() => {
    if (!isTouched || bench === settled) return undefined;
    const settle = (): void => setSettled(bench);
    const timer = setTimeout(settle, PAUSE_MS);
    // Paper does not wait.
    addEventListener('beforeprint', settle);
    return () => {
      clearTimeout(timer);
      removeEventListener('beforeprint', settle);
    };
  }, [bench, settled, isTouched]);
  return settled;
}
