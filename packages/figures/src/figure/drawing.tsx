import type { ComponentChildren, JSX } from 'preact';
import { px } from '../scale/path.js';

/** What a drawing is told apart and read aloud by. */
export type DrawingProps = {
  readonly id: string;
  readonly kind: string;
  /** The one question the figure answers. */
  readonly question: string;
  /** The drawing in words. */
  readonly description: string;
  /** Width and height on the page, px. */
  readonly size: readonly [widthPx: number, heightPx: number];
  /** Px to a unit of the drawing. */
  readonly zoom?: number;
  readonly children: ComponentChildren;
};

/** One picture with a name and a description, and a hatch for where colour is lost. */
export function Drawing(props: DrawingProps): JSX.Element {
  const { id, kind, question, description, size, zoom = 1, children } = props;
  const [widthPx, heightPx] = size;
  return (
    <div class={`vf vf-${kind}`}>
      <svg
        class="vf-drawing"
        role="img"
        aria-labelledby={`${id}-title`}
        aria-describedby={`${id}-description`}
        width={px(widthPx)}
        height={px(heightPx)}
        viewBox={`0 0 ${px(widthPx / zoom)} ${px(heightPx / zoom)}`}
      >
        <title id={`${id}-title`}>{question}</title>
        <desc id={`${id}-description`}>{description}</desc>
        <pattern
          id={`${id}-hatch`}
          width={5}
          height={5}
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <path class="vf-hatch-line" d="M0 0V5" />
        </pattern>
        {children}
      </svg>
    </div>
  );
}
