/** Figures for a page: enough digits to see the difference, a true minus, spaces in thousands. */
export function figure(value: number, digits = 4): string {
  if (value === 0) return '0';
  const decimals = Math.max(0, Math.min(6, digits - 1 - Math.floor(Math.log10(Math.abs(value)))));
  const fixed = Math.abs(value).toFixed(decimals);
  const [whole = '', part = ''] = fixed.split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, '\u00a0');
  const tail = part.replace(/0+$/, '');
  const text = tail === '' ? grouped : `${grouped}.${tail}`;
  return value < 0 && Number(fixed) !== 0 ? `−${text}` : text;
}

/** A difference with its sign: `+9.2`, `−0.05`. */
export function signed(value: number, digits = 2): string {
  const text = figure(value, digits);
  return value > 0 && text !== '0' ? `+${text}` : text;
}

/** The next of 1, 2 and 5 times a power of ten that covers a value. */
export function niceBound(value: number): number {
  if (value <= 0) return 1;
  const power = 10 ** Math.floor(Math.log10(value));
  for (const step of [1, 2, 5, 10]) {
    if (step * power >= value * (1 - 1e-9)) return step * power;
  }
  return 10 * power;
}
