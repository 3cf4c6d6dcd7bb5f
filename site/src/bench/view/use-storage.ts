import { useEffect } from 'preact/hooks';
import type { BatchDocument } from 'vitrose';
import { keepKitchen, keepRecipe, type Shelf } from '../state/kitchen-store.js';
import type { BenchState } from '../state/types.js';

const PAUSE_MS = 400;

/** The shelf of this device; a browser may have none. */
export function shelf(): Shelf | undefined {
  try {
    return window.localStorage;
  } catch {
    return undefined;
  }
}

/** Keeps the recipe, and my kitchen where it is mine, a moment after each change. */
export function useStorage(state: BenchState, start: BatchDocument): void {
  const { batch, whose } = state.now;
  useEffect(() => {
    // The worked example is not the reader's own until it is touched.
    if (batch === start) return undefined;
    const timer = setTimeout(async () => {
      const kept = shelf();
      if (kept === undefined) return;
      const documents = await import('vitrose/documents');
      keepRecipe(kept, batch, documents);
      if (whose === 'mine') keepKitchen(kept, batch, documents);
    }, PAUSE_MS);
    return () => clearTimeout(timer);
  }, [batch, whose, start]);
}
