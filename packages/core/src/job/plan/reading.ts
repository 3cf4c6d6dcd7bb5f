import { thermometerReading } from '../../models/thermometer/index.js';
import type { Kitchen } from './kitchen.js';

/** A true temperature as this thermometer shows it, in this kitchen. */
export function readingOf(trueC: number, kitchen: Kitchen): ReturnType<typeof thermometerReading> {
  const { boilingWaterReadingC, iceWaterReadingC, waterBoilsAtC } = kitchen;
  return thermometerReading({ trueC, boilingWaterReadingC, iceWaterReadingC, waterBoilsAtC });
}
