import { px } from '../scale/path.js';

/** A bar along an axis. */
export type Bar = {
  /** Across the axis, px. */
  readonly near: number;
  readonly far: number;
  /** Along it, px: `from` before `to` on the page. */
  readonly from: number;
  readonly to: number;
  readonly openFrom: boolean;
  readonly openTo: boolean;
  readonly radius: number;
  /** The axis lies. */
  readonly lies: boolean;
};

/** The `d` of its outline: an open end is left open, a closed one has the corners of its mass. */
export function barPath({ near, far, from, to, openFrom, openTo, radius, lies }: Bar): string {
  const r = Math.max(0, Math.min(radius, (far - near) / 2, (to - from) / 2));
  const at = (along: number, across: number): string =>
    lies ? `${px(along)} ${px(across)}` : `${px(across)} ${px(along)}`;
  /** Around a closed end, from one side to the other. */
  const around = (end: number, inward: number, first: number, second: number): string => {
    const turn = Math.sign(second - first) * r;
    return `${at(end + inward * r, first)}Q${at(end, first)} ${at(end, first + turn)}L${at(end, second - turn)}Q${at(end, second)} ${at(end + inward * r, second)}`;
  };
  if (openFrom && openTo)
    return `M${at(from, near)}L${at(to, near)}M${at(from, far)}L${at(to, far)}`;
  if (openTo) return `M${at(to, near)}L${around(from, 1, near, far)}L${at(to, far)}`;
  if (openFrom) return `M${at(from, near)}L${around(to, -1, near, far)}L${at(from, far)}`;
  return `M${around(to, -1, near, far)}L${around(from, 1, far, near)}Z`;
}
