import type { DisplayOptions } from '../types.js';
import { formatNumber } from './number.js';

/** A share as it is printed. */
export type ShownShare = { readonly id: string; readonly share: string };

/**
 * Shares of a whole as per cent, rounded so that what is printed sums to a hundred: the largest
 * remainders are rounded up. Tenths where any share is under 10 %; what rounds to nothing is a trace.
 */
export function shownShares(
  shares: Readonly<Record<string, number>>,
  options: DisplayOptions = {},
): { readonly shown: readonly ShownShare[]; readonly traces: readonly string[] } {
  const entries = Object.entries(shares).filter(([, share]) => share > 0);
  const whole = entries.reduce((sum, [, share]) => sum + share, 0);
  const decimals = entries.some(([, share]) => 0.0005 <= share / whole && share < 0.1 * whole)
    ? 1
    : 0;
  const units = 100 * 10 ** decimals;
  const parts = entries.map(([id, share]) => {
    const exact = (share / whole) * units;
    return { id, count: Math.floor(exact), rest: exact - Math.floor(exact) };
  });
  const missing = units - parts.reduce((sum, { count }) => sum + count, 0);
  const raised = [...parts].sort((a, b) => b.rest - a.rest).slice(0, Math.round(missing));
  const counted = parts.map((part) => ({
    id: part.id,
    count: part.count + (raised.includes(part) ? 1 : 0),
  }));
  return {
    shown: counted
      .filter(({ count }) => count > 0)
      .map(({ id, count }) => ({
        id,
        share: `${formatNumber(count / 10 ** decimals, decimals, options, true)} %`,
      })),
    traces: counted.filter(({ count }) => count === 0).map(({ id }) => id),
  };
}
