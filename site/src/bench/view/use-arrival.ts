import { useEffect } from 'preact/hooks';
import type { BatchDocument } from 'vitrose';
import type { Manner } from '../state/read/types.js';
import type { BenchState } from '../state/types.js';
import { shelf } from './use-storage.js';

/** The one way to change what is on the bench. */
export type Edit = (change: (state: BenchState) => BenchState) => void;

/** Where the site keeps the words a reader chose, and the bench their units. */
export const REGION_KEY = 'vitrose-region';
export const UNITS_KEY = 'vitrose-units';

/**
 * Lays on the table what this device keeps, or what the address brings.
 *
 * @param onceLaid - Called when it lies there, or nothing does.
 */
export function useArrival(start: BatchDocument, edit: Edit, onceLaid: () => void): void {
  // Once, when the page begins to come alive; neither function ever changes.
  useEffect(() => {
    const manner = keptManner();
    if (manner.units !== 'metric' || manner.region !== 'world') {
      edit((state) => ({ ...state, manner }));
    }
    void begin(start, edit).finally(onceLaid);
    const listen = (): void => {
      if (location.hash.startsWith('#b')) {
        void import('./arrivals.js').then(({ openLink }) => openLink(edit));
      }
    };
    addEventListener('hashchange', listen);
    return () => removeEventListener('hashchange', listen);
  }, [start, edit, onceLaid]);
}

/** Most visits bring nothing, and fetch nothing for it. */
async function begin(start: BatchDocument, edit: Edit): Promise<void> {
  const kept = shelf();
  const holds = (key: string): boolean => {
    try {
      return kept?.getItem(key) != null;
    } catch {
      return false;
    }
  };
  const hasKept = holds('vitrose.kitchen') || holds('vitrose.recipe');
  const hasLink = location.hash.startsWith('#b');
  if (!hasKept && !hasLink) return;
  const { layKept, openLink } = await import('./arrivals.js');
  if (hasKept && kept !== undefined) await layKept(kept, start, edit);
  if (hasLink) await openLink(edit);
}

function keptManner(): Manner {
  try {
    const region = shelf()?.getItem(REGION_KEY) === 'us' ? 'us' : 'world';
    const units = shelf()?.getItem(UNITS_KEY) ?? (region === 'us' ? 'us' : 'metric');
    return { region, units: units === 'us' ? 'us' : 'metric' };
  } catch {
    return { region: 'world', units: 'metric' };
  }
}
