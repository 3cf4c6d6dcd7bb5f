import { useEffect, useState } from 'preact/hooks';

/** What comes after the first paint: drawings, steps, card, code, link. */
export type Later = typeof import('./later.js');

/**
 * Fetches the lower part of the page once the browser has nothing better to do. Until then the page
 * shows what the server drew.
 */
export function useLater(): Later | undefined {
  const [later, setLater] = useState<Later | undefined>(undefined);
  useEffect(() => {
    let current = true;
    const fetchLater = (): void => {
      void import('./later.js').then((parts) => {
        if (current) setLater(parts);
      });
      // The list of ingredients is wanted soon; nothing waits for it.
      void import('../state/search.js');
    };
    const timer = setTimeout(fetchLater, 60);
    return () => {
      current = false;
      clearTimeout(timer);
    };
  }, []);
  return later;
}
