/** The scale the reader uses. */
export type Units = 'c' | 'f';

/** A temperature on the reader's scale. */
export function inUnits(temperatureC: number, units: Units): number {
  return units === 'f' ? temperatureC * 1.8 + 32 : temperatureC;
}

/** Back to °C. */
export function fromUnits(reading: number, units: Units): number {
  return units === 'f' ? (reading - 32) / 1.8 : reading;
}

/** A number as it is printed, with a true minus and no negative nought. */
export function printed(value: number, decimals: number): string {
  const text = Math.abs(value).toFixed(decimals);
  return value < 0 && Number(text) !== 0 ? `−${text}` : text;
}

/** The bare number: `143`. */
export function reading(temperatureC: number, units: Units, decimals = 0): string {
  return printed(inUnits(temperatureC, units), decimals);
}

/** `°C` or `°F`. */
export function degrees(units: Units): string {
  return units === 'f' ? '°F' : '°C';
}

/** `143 °C`. */
export function temperature(temperatureC: number, units: Units, decimals = 0): string {
  return `${reading(temperatureC, units, decimals)} ${degrees(units)}`;
}

/** `143 to 148 °C`. */
export function temperatures(lowC: number, highC: number, units: Units, decimals = 0): string {
  return `${reading(lowC, units, decimals)} to ${temperature(highC, units, decimals)}`;
}
