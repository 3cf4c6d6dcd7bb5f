import type { DisplayOptions } from '../types.js';
import {
  formatFraction,
  formatKilograms,
  formatLength,
  formatMass,
  formatMoisture,
  formatPressure,
  formatVolume,
} from './amounts.js';
import { formatNumber } from './number.js';
import { formatDifference, temperaturePair } from './temperature.js';

/**
 * A number in the unit its key names: `readingC` is a temperature, `massG` a mass.
 *
 * One rule for every sentence, so that no sentence has a format of its own.
 */
export function formatByKey(key: string, value: number, options: DisplayOptions): string {
  if (/[Mm]oistureMassFraction$/.test(key)) return formatMoisture(value, options);
  // Near all of it the tenths are the message: 99.6 % solids is 0.4 % water.
  if (/([Ss]olids|dissolved)MassFraction$/.test(key))
    return `${formatNumber(value * 100, 1, options)} %`;
  if (/(Fraction|[Ss]hare|Humidity)$/.test(key)) return formatFraction(value, options);
  if (key.endsWith('GPer100Ml')) return `${formatNumber(value, 1, options)} g in 100 ml`;
  if (key.endsWith('PerMl')) return `${formatNumber(value, 2, options)} g for each ml`;
  const unit = /(Points|Per10K|KPerMin|Days|Min|Kg|Ml|Mm|Cm2|Pa|[CKGMSW])$/.exec(key)?.[1];
  switch (unit) {
    case 'C': {
      // In boiling water the tenths are the message; everywhere else they are noise.
      const decimals = /[Ww]ater(Boils|Reading)/.test(key) ? 1 : 0;
      const [first, second] = temperaturePair(value, decimals, options);
      return `${first} (${second})`;
    }
    case 'K':
    case 'Per10K':
      return formatDifference(value, options);
    case 'KPerMin':
      return `${formatDifference(value, options)} a minute`;
    case 'G':
      return formatMass(value, options);
    case 'Kg':
      return formatKilograms(value, options);
    case 'Ml':
      return formatVolume(value, options);
    case 'Mm':
      return formatLength(value, options);
    case 'Cm2':
      return `${formatNumber(value, 0, options)} cm²`;
    case 'Pa':
      return formatPressure(value, options);
    case 'M':
      return `${formatNumber(value, 0, options)} m`;
    case 'Min':
      return counted(value, 'minute', options);
    case 'S':
      return counted(value, 'second', options);
    case 'Days':
      return counted(value, 'day', options);
    case 'W':
      return `${formatNumber(value, 0, options)} W`;
    case 'Points':
      return formatNumber(value, 1, options);
    default:
      return formatNumber(
        value,
        Number.isInteger(value) ? 0 : Math.abs(value) < 1 ? 2 : 1,
        options,
      );
  }
}

function counted(value: number, unit: string, options: DisplayOptions): string {
  const shown = formatNumber(value, value < 3 ? 1 : 0, options);
  return `${shown} ${unit}${shown === '1' ? '' : 's'}`;
}
