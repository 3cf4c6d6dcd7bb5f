import type { RefObject } from 'preact';
import { useEffect } from 'preact/hooks';
import type { BatchDocument, PlanDocument } from 'vitrose';
import type { Later } from './use-later.js';

/**
 * Plans the worked example once more when somebody first enters a field. Nobody sees that plan: the
 * first run of so much code is slow, and it is better slow before the first key than after it.
 */
export function useWarmUp(
  root: RefObject<HTMLElement>,
  start: BatchDocument,
  plan: PlanDocument,
  later: Later | undefined,
): void {
  useEffect(() => {
    const page = root.current;
    if (later === undefined || page === null) return undefined;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const warmUp = (): void => {
      timer = setTimeout(() => {
        later.planBatch(start);
        timer = setTimeout(() => later.describePlan(plan, { units: 'metric', region: 'world' }));
      });
    };
    if (page.contains(document.activeElement)) warmUp();
    else page.addEventListener('focusin', warmUp, { once: true });
    return () => {
      clearTimeout(timer);
      page.removeEventListener('focusin', warmUp);
    };
  }, [root, start, plan, later]);
}
