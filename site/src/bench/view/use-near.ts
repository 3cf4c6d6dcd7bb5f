import { useEffect, useRef, useState } from 'preact/hooks';

/** How near, so that it is alive before it is seen. */
const NEAR = '400px';

/** Whether the reader has come near a part of the page; it stays near once it was. */
export function useNear(): readonly [boolean, { current: HTMLDivElement | null }] {
  const box = useRef<HTMLDivElement>(null);
  const [isNear, setNear] = useState(false);
  useEffect(() => {
    // The box itself has no place on the page; the first part in it has.
    const part = box.current?.querySelector('section');
    if (isNear || part === null || part === undefined) return undefined;
    const watch = new IntersectionObserver(
      (entries) => {
        if (entries.some(({ isIntersecting }) => isIntersecting)) setNear(true);
      },
      { rootMargin: NEAR },
    );
    watch.observe(part);
    return () => watch.disconnect();
  }, [isNear]);
  return [isNear, box];
}
