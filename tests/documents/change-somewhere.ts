/** The keys that lead to one place of a document. */
export type Way = readonly (string | number)[];

/** The way to every value in a document that passes, the document itself left out. */
export function placesIn(
  document: unknown,
  passes: (value: unknown) => boolean = () => true,
): readonly Way[] {
  const walk = (value: unknown, way: Way): readonly Way[] => {
    const here = way.length > 0 && passes(value) ? [way] : [];
    if (typeof value !== 'object' || value === null) return here;
    const entries: readonly (readonly [string | number, unknown])[] = Array.isArray(value)
      ? value.map((item, at) => [at, item])
      : Object.entries(value);
    return [...here, ...entries.flatMap(([key, held]) => walk(held, [...way, key]))];
  };
  return walk(document, []);
}

/** A copy of the document with one value made into another. */
export function changedSomewhere(
  document: unknown,
  way: Way,
  change: (value: unknown) => unknown,
): unknown {
  const [key, ...rest] = way;
  if (key === undefined) return change(document);
  if (Array.isArray(document)) {
    return document.map((item, at) => (at === key ? changedSomewhere(item, rest, change) : item));
  }
  const held = document as Readonly<Record<string, unknown>>;
  return { ...held, [key]: changedSomewhere(held[key], rest, change) };
}
