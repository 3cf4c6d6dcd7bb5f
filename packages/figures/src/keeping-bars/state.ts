/** Everything the keeping bars are drawn from. Humidities are 0 to 1; only those given are drawn. */
export type KeepingBarsState = {
  /** Begins every id in the drawing; unique on the page. */
  readonly id: string;
  /** Of the air in the room. */
  readonly relativeHumidity?: number | undefined;
  /** The sweet's own: drier air dries it, wetter air wets it. */
  readonly equilibrium?: number | undefined;
  /** From here on it takes up water until it is soft. */
  readonly criticalRelativeHumidity?: number | undefined;
  /** Its surface begins to stick. */
  readonly stickyFrom?: number | undefined;
  /** It is sticky all over; not under `stickyFrom`. */
  readonly stickyAt?: number | undefined;
  /** Px; 320 if left out, and never less. */
  readonly widthPx?: number | undefined;
  /** The drawing alone. */
  readonly compact?: boolean | undefined;
};
