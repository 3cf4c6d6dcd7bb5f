import type { KeepingBarsState } from './state.js';
import { humidity } from './words.js';

/** A stretch of humidities in which something happens. */
export type Stretch = {
  readonly from: number;
  readonly to: number;
  /** `set`: nothing that shows. `soft`: in full. `growing`: from nothing to full. */
  readonly kind: 'set' | 'soft' | 'growing';
};

/** One thing the air does, in words and as stretches of the axis. */
export type KeepingRow = {
  readonly id: 'water' | 'soft' | 'sticky';
  readonly text: string;
  readonly stretches: readonly Stretch[];
};

/** What the air does, one thing a row; only what is known. */
export function keepingRows(state: KeepingBarsState): readonly KeepingRow[] {
  return [waterRow(state), softRow(state), stickyRow(state)].filter((row) => row !== undefined);
}

function waterRow({ equilibrium: own }: KeepingBarsState): KeepingRow | undefined {
  if (own === undefined) return undefined;
  return {
    id: 'water',
    text: `dries below ${humidity(own)}, takes up water above`,
    stretches: [
      { from: 0, to: own, kind: 'set' },
      { from: own, to: 1, kind: 'soft' },
    ],
  };
}

function softRow({ criticalRelativeHumidity: from }: KeepingBarsState): KeepingRow | undefined {
  if (from === undefined) return undefined;
  return {
    id: 'soft',
    text: `goes soft in time above ${humidity(from)}`,
    stretches: [{ from, to: 1, kind: 'soft' }],
  };
}

function stickyRow({ stickyFrom, stickyAt }: KeepingBarsState): KeepingRow | undefined {
  if (stickyFrom === undefined && stickyAt === undefined) return undefined;
  const full: readonly Stretch[] =
    stickyAt === undefined ? [] : [{ from: stickyAt, to: 1, kind: 'soft' }];
  if (stickyFrom === undefined)
    return {
      id: 'sticky',
      text: `sticky all over from ${humidity(stickyAt ?? 1)}`,
      stretches: full,
    };
  const text =
    stickyAt === undefined
      ? `sticks from ${humidity(stickyFrom)}`
      : `sticks from ${humidity(stickyFrom)}, all over from ${humidity(stickyAt)}`;
  return {
    id: 'sticky',
    text,
    stretches: [{ from: stickyFrom, to: stickyAt ?? 1, kind: 'growing' }, ...full],
  };
}
