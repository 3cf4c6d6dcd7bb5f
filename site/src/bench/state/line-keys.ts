/** A fresh key for a line of the formula, one more than any in use. */
export function nextKey(keys: readonly string[]): string {
  const highest = keys.reduce((most, key) => Math.max(most, Number(key.slice(1)) || 0), 0);
  return `l${highest + 1}`;
}

/** Keys for the lines of a batch that was just laid on the table. */
export function freshKeys(count: number, before: readonly string[] = []): readonly string[] {
  const keys = [...before];
  while (keys.length < count) keys.push(nextKey(keys));
  return keys.slice(0, count);
}
