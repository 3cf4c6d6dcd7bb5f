/** `perhaps-fahrenheit` becomes `Perhaps Fahrenheit`: a title for a code without one. */
export function spokenCode(code: string): string {
  const words = code
    .replaceAll('-', ' ')
    .replace('fahrenheit', 'Fahrenheit')
    .replace('json', 'JSON');
  return words.charAt(0).toUpperCase() + words.slice(1);
}
