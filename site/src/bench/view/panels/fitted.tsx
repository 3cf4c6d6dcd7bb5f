import type { JSX } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';

/** Figures are drawn from this narrow to this wide, px; the server knows no width and draws wide. */
const NARROW = 320;
const WIDE = 640;
/** Not every pixel of a window that is being drawn larger is a new drawing. */
const STEP = 40;

/** A figure as wide as its place, so that its letters stay as large as the text around it. */
export function Fitted(props: { readonly draw: (widthPx: number) => JSX.Element }): JSX.Element {
  const box = useRef<HTMLDivElement>(null);
  const [widthPx, setWidth] = useState(WIDE);
  useLayoutEffect(() => {
    const { current } = box;
    if (current === null) return undefined;
    const fit = (): void => {
      const steps = Math.floor(current.clientWidth / STEP) * STEP;
      setWidth(Math.min(WIDE, Math.max(NARROW, steps)));
    };
    fit();
    const watch = new ResizeObserver(fit);
    watch.observe(current);
    return () => watch.disconnect();
  }, []);
  return (
    <div class="fitted" ref={box}>
      {props.draw(widthPx)}
    </div>
  );
}
