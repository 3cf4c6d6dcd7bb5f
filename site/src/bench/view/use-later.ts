import { useEffect, useState } from 'preact/hooks';

/** What comes after the first paint: drawings, steps, card, code, link. */
export type Later = typeof import('./later.js');

/**
 * Fetches what is under the answer once the page has come alive, or is changed before. Until then
 * the page shows what the server drew.
 */
export function useLater(isWanted: boolean): Later | undefined {
  const [later, setLater] = useState<Later | undefined>(undefined);
  useEffect(() => {
    if (!isWanted) return undefined;
    let current = true;
    void import('./later.js').then((parts) => {
      if (current) setLater(parts);
    });
    // The list of ingredients is wanted soon; nothing waits for it.
    void import('../state/search.js');
    return () => {
      current = false;
    };
  }, [isWanted]);
  return later;
}
