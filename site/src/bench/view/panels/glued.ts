/** A number stays on the line of its unit. */
export function glued(text: string): string {
  return text.replace(/(?<=\d) (?=[°%])/g, '\u00a0');
}
