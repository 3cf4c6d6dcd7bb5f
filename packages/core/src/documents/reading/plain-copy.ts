import { pathTo, shortened } from '../../job/batch/limits.js';
import type { Problem } from '../../job/batch/problems.js';
import { DOCUMENT_CAPS } from '../caps.js';

/** A copy that holds data and nothing else, or what keeps it from being one. */
export type PlainCopy = { readonly value?: unknown; readonly problems: readonly Problem[] };

/**
 * Copies a value that came from anywhere into plain data: no getters, no classes, no rings, no
 * keys that reach into prototypes. Everything after this may read it without care.
 *
 * A value has no bytes, so it is weighed: one for each value, and the length of each key and
 * string. No JSON text is shorter than that, hence one cap serves both.
 */
export function plainCopy(input: unknown): PlainCopy {
  const problems: Problem[] = [];
  let room: number = DOCUMENT_CAPS.bytes;

  const copy = (value: unknown, path: string, depth: number): unknown => {
    room -= typeof value === 'string' ? value.length + 1 : 1;
    if (Array.isArray(value)) room -= value.length;
    if (room < 0) return undefined;
    if (typeof value !== 'object' || value === null) {
      if (['function', 'symbol', 'bigint'].includes(typeof value)) {
        problems.push({ code: 'wrong-type', path, received: shortened(value) });
      }
      // JSON has one nought, so the other would not survive being written down.
      return value === 0 ? 0 : value;
    }
    if (depth > DOCUMENT_CAPS.depth) {
      problems.push({ code: 'too-deep', path, limits: [0, DOCUMENT_CAPS.depth] });
      return undefined;
    }
    if (Array.isArray(value)) {
      return Array.from(value, (item, at) => copy(item, pathTo(path, at), depth + 1));
    }
    if (!isPlain(value)) {
      problems.push({ code: 'wrong-type', path, received: {}, known: ['object'] });
      return undefined;
    }
    const copied: Record<string, unknown> = {};
    for (const [key, held] of Object.entries(value)) {
      room -= key.length;
      if (room < 0) break;
      if (key === '__proto__' || key === 'constructor' || key === 'prototype') {
        problems.push({ code: 'hostile-key', path: pathTo(path, key), received: key });
      } else if (held !== undefined) {
        copied[key] = copy(held, pathTo(path, key), depth + 1);
      }
    }
    return copied;
  };

  try {
    const value = copy(input, '', 1);
    if (room >= 0) return { value, problems };
    return { problems: [{ code: 'too-large', path: '', limits: [0, DOCUMENT_CAPS.bytes] }] };
  } catch {
    // A getter or a proxy that throws when it is read.
    return { problems: [{ code: 'wrong-type', path: '', received: {}, known: ['object'] }] };
  }
}

/** Made by `{}` or without a prototype, also in another frame of a page. */
function isPlain(value: object): boolean {
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === null || Object.getPrototypeOf(prototype) === null;
}
