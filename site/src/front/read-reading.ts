/** What was understood of an entry, or why it cannot be. */
export type ReadReading =
  | { readonly kind: 'reading'; readonly temperatureC: number; readonly wasFahrenheit: boolean }
  | { readonly kind: 'unreadable' | 'too-low' | 'too-high' };

/** From the highest town to a heavy anticyclone at the Dead Sea. */
const READINGS_C = [80, 103] as const;

/** No open pan of water is this hot in °C, and none this cool in °F. */
const FAHRENHEIT_FROM = 150;

/**
 * A reading in boiling water as people type it: `95,8`, `95.8 °C`, `204 F`.
 *
 * Above 150 no water boils in °C, so that a bare 204 is understood as °F.
 */
export function readReading(entry: string): ReadReading {
  const written = /^\s*(\d{1,3}(?:[.,]\d+)?)\s*°?\s*([cf]?)\s*$/i.exec(entry);
  if (written === null) return { kind: 'unreadable' };
  const number = Number((written[1] ?? '').replace(',', '.'));
  const unit = (written[2] ?? '').toLowerCase();
  const wasFahrenheit = unit === 'f' || (unit === '' && number > FAHRENHEIT_FROM);
  const temperatureC = wasFahrenheit ? (number - 32) / 1.8 : number;
  if (temperatureC < READINGS_C[0]) return { kind: 'too-low' };
  if (temperatureC > READINGS_C[1]) return { kind: 'too-high' };
  return { kind: 'reading', temperatureC, wasFahrenheit };
}
