import { useEffect, useRef } from 'preact/hooks';
import type { Manner } from '../state/read/types.js';
import { type Edit, REGION_KEY, UNITS_KEY } from './use-arrival.js';
import { shelf } from './use-storage.js';

/** The choice of words holds for the whole site, and for the next visit; the site's own choice holds here. */
export function useManner(manner: Manner, edit: Edit): void {
  const { units, region } = manner;
  const isFirst = useRef(true);
  useEffect(() => {
    if (isFirst.current) {
      isFirst.current = false;
      return;
    }
    const { documentElement: root } = document;
    root.setAttribute('data-region', region);
    const choice = document.querySelector<HTMLSelectElement>('region-choice select');
    if (choice !== null) choice.value = region;
    try {
      shelf()?.setItem(REGION_KEY, region);
      shelf()?.setItem(UNITS_KEY, units);
    } catch {
      // A browser that keeps nothing still changes this page.
    }
  }, [units, region]);
  useEffect(() => {
    const { documentElement: root } = document;
    const observer = new MutationObserver(() => {
      const chosen = root.getAttribute('data-region') === 'us' ? 'us' : 'world';
      edit((state) =>
        state.manner.region === chosen
          ? state
          : { ...state, manner: { region: chosen, units: chosen === 'us' ? 'us' : 'metric' } },
      );
    });
    observer.observe(root, { attributes: true, attributeFilter: ['data-region'] });
    return () => observer.disconnect();
  }, [edit]);
}
