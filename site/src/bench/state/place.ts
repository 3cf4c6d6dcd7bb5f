import type { BatchDocument } from 'vitrose';

type Holder = Readonly<Record<string, unknown>>;

/** What stands at a path of two keys or more, such as `/pan/diameterMm`. */
export function valueAt(batch: BatchDocument, path: string): unknown {
  return keysOf(path).reduce<unknown>(
    (held, key) => (isHolder(held) && Object.hasOwn(held, key) ? held[key] : undefined),
    batch,
  );
}

/**
 * The batch with another value at a path; without a value the field goes, and a group that holds
 * nothing any more goes with it. The given batch stays as it was.
 */
export function withValue(batch: BatchDocument, path: string, value: unknown): BatchDocument {
  return (changed(batch, keysOf(path), value) ?? batch) as BatchDocument;
}

function changed(held: unknown, keys: readonly string[], value: unknown): unknown {
  const [key, ...rest] = keys;
  if (key === undefined) return value;
  if (Array.isArray(held)) {
    return held.map((one, at) => (String(at) === key ? changed(one, rest, value) : one));
  }
  const before: Holder = isHolder(held) ? held : {};
  const { [key]: old, ...others } = before;
  const next = changed(old, rest, value);
  if (next === undefined) return Object.keys(others).length === 0 ? undefined : others;
  // The order of the fields stays, so that a comparison of two versions shows what changed.
  return Object.hasOwn(before, key)
    ? Object.fromEntries(
        Object.entries(before).map(([name, one]) => [name, name === key ? next : one]),
      )
    : { ...before, [key]: next };
}

function keysOf(path: string): readonly string[] {
  return path.split('/').slice(1);
}

function isHolder(value: unknown): value is Holder {
  return typeof value === 'object' && value !== null;
}
