import { findRoot } from '../../foundation/numeric/find-root.js';
import { standardPressure } from '../../matter/air/index.js';
import type { AdviceContext } from './context.js';
import { remedy } from './remedy.js';
import { ADVICE_THRESHOLDS } from './thresholds.js';
import type { Advice } from './types.js';

/** The end of the scale must lie above the stop, with room for the needle. */
export function targetAboveThermometer({ batch, target }: AdviceContext): Advice | undefined {
  const maxC = batch.thermometer?.maxC;
  const readingC = target.readingC.value;
  const neededMaxC = Math.ceil(readingC + ADVICE_THRESHOLDS.aboveScaleK.value);
  if (maxC === undefined || maxC >= readingC + ADVICE_THRESHOLDS.aboveScaleK.value)
    return undefined;
  return {
    code: 'target-above-thermometer',
    severity: 'will-fail',
    path: '/thermometer/maxC',
    numbers: { readingC, maxC, neededMaxC },
    remedies: [
      remedy('longer-scale-thermometer', [{ path: '/thermometer/maxC', value: neededMaxC }], {
        neededMaxC,
      }),
    ],
  };
}

/** Thermometer and weather together: which of them it is cannot be told from here. */
export function readingAndAltitudeDiffer({ batch, kitchen }: AdviceContext): Advice | undefined {
  const { weatherOrThermometerK, neitherWeatherK } = ADVICE_THRESHOLDS;
  const { readingDifferenceK, differenceIsTheThermometers } = kitchen.planned;
  const boilingWaterReadingC = batch.thermometer?.boilingWaterReadingC;
  if (
    readingDifferenceK === undefined ||
    differenceIsTheThermometers ||
    boilingWaterReadingC === undefined
  )
    return undefined;
  const differenceK = readingDifferenceK.value;
  if (Math.abs(differenceK) <= weatherOrThermometerK.value) return undefined;
  return {
    code: 'reading-and-altitude-differ',
    severity: Math.abs(differenceK) > neitherWeatherK.value ? 'may-disappoint' : 'note',
    path: '/thermometer/boilingWaterReadingC',
    numbers: { differenceK, boilingWaterReadingC, waterBoilsAtC: kitchen.waterBoilsAtC },
    remedies: [
      remedy('trust-the-reading', [{ path: '/kitchen', value: null }]),
      remedy('trust-the-altitude', [{ path: '/thermometer/boilingWaterReadingC', value: null }]),
    ],
  };
}

/** So low a reading means different things for a mountain and for a bad thermometer. */
export function altitudeWouldHelp({
  batch,
  causeMattersK,
  kitchen,
}: AdviceContext): Advice | undefined {
  const boilingWaterReadingC = batch.thermometer?.boilingWaterReadingC;
  if (causeMattersK === undefined || boilingWaterReadingC === undefined) return undefined;
  if (causeMattersK <= ADVICE_THRESHOLDS.causeMattersK.value) return undefined;
  const elevationM = elevationFor(kitchen.pressurePa);
  return {
    code: 'altitude-would-help',
    severity: 'note',
    path: '/kitchen',
    numbers: { causeMattersK, boilingWaterReadingC },
    remedies:
      elevationM === undefined
        ? []
        : [
            remedy('give-the-altitude', [{ path: '/kitchen', value: { elevationM } }], {
              elevationM,
            }),
          ],
  };
}

/** Where the air has this pressure on a standard day, to ten metres. */
function elevationFor(pressurePa: number): number | undefined {
  const [lowest, highest] = [-400, 9_000];
  const over = (elevationM: number) => standardPressure(elevationM).pressurePa - pressurePa;
  if (over(lowest) <= 0 || over(highest) >= 0) return undefined;
  return Math.round(findRoot(over, [lowest, highest], { tolerance: 0.1 }) / 10) * 10;
}
