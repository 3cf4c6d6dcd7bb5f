import type { PlanDocument } from '../../job/plan/types.js';
import { KITCHEN_FROM, WINDOW_ENDS } from '../names/models.js';
import { isStage, stageName, stageSentence } from '../stages/stage-name.js';
import type { DisplayOptions } from '../types.js';
import { formatPressure } from '../units/amounts.js';
import { formatByKey } from '../units/by-key.js';
import { countInWords, formatNumber, roundTo } from '../units/number.js';
import { formatDifference, formatReading } from '../units/temperature.js';
import { stopDecimals, stopInText, windowEnds } from './stop-figures.js';
import { trustIn } from './trust.js';

/** The stop, as this kitchen and this thermometer make it. */
export function kitchenLines(plan: PlanDocument, options: DisplayOptions): readonly string[] {
  const { target, kitchen } = plan;
  return [
    shiftLine(plan, options),
    ...(target.stageAtStop !== undefined && isStage(target.stageAtStop.id)
      ? [
          stageSentence(target.stageAtStop.id, {
            ...options,
            units: options.units ?? 'metric',
          }),
        ]
      : []),
    windowLine(plan, options),
    `Water boils here at ${formatByKey('waterBoilsAtC', kitchen.waterBoilsAtC.value, options)}, ${KITCHEN_FROM[kitchen.from]}; the air is at ${formatPressure(kitchen.pressurePa.value, options)}.`,
    vacuumLine(plan, options),
    causeLine(plan, options),
    ...thermometerLines(plan, options),
    trustLine(plan, options),
    isomaltLine(plan, options),
    target.kneeReadingC === undefined
      ? undefined
      : `Past ${formatByKey('readingC', target.kneeReadingC, options)} every ${formatDifference(10, options)} more buy little hardness.`,
  ].filter((line) => line !== undefined);
}

function shiftLine({ target }: PlanDocument, options: DisplayOptions): string | undefined {
  const shiftK = target.shiftK.value;
  const degrees = Math.round(Math.abs(options.units === 'us' ? shiftK * 1.8 : shiftK));
  const seaLevel = formatReading(target.seaLevelC.value, 0, options);
  if (Math.abs(shiftK) < 1) {
    return target.asked === 'sea-level'
      ? `Your kitchen moves the recipe's ${seaLevel} by less than a degree.`
      : undefined;
  }
  const moved = `In your kitchen syrup boils about ${countInWords(degrees, options)} degree${degrees === 1 ? '' : 's'} ${shiftK < 0 ? 'cooler' : 'hotter'}`;
  if (target.asked === 'sea-level') return `${moved}, so this is the recipe's ${seaLevel}.`;
  if (target.asked === 'stage' && target.stage !== undefined) {
    return `${moved}, so this is the ${stageName(target.stage, options)} of a chart, ${seaLevel} for this mix at sea level.`;
  }
  return `${moved} than the ${seaLevel} it would take at sea level.`;
}

function windowLine(plan: PlanDocument, options: DisplayOptions): string {
  const [low, high] = plan.target.windowEnds;
  const [from, to] = windowEnds(plan, options);
  return low === high
    ? `Outside ${from} to ${to}, ${WINDOW_ENDS[low]}.`
    : `Below ${from}, ${WINDOW_ENDS[low]}; above ${to}, ${WINDOW_ENDS[high]}.`;
}

function vacuumLine(
  { kitchen: { vacuum } }: PlanDocument,
  options: DisplayOptions,
): string | undefined {
  return vacuum === undefined
    ? undefined
    : `With ${formatPressure(vacuum.underVacuumPa, options)} on the gauge, ${formatPressure(vacuum.pressureInPanPa.value, options)} is left in the pan.`;
}

/** How little, or how much, it matters what the reading comes from; rounded up, never down. */
function causeLine({ kitchen }: PlanDocument, options: DisplayOptions): string | undefined {
  const { from, causeMattersK } = kitchen;
  if (from !== 'boiling-water-reading' || causeMattersK === undefined) return undefined;
  const us = options.units === 'us';
  const within = Math.max(
    1,
    Math.ceil(roundTo(Math.abs(us ? causeMattersK * 1.8 : causeMattersK), 6)),
  );
  return `Height, weather or thermometer: the stop is the same within about ${formatNumber(within, 0, options)} ${us ? '°F' : '°C'}.`;
}

/** What the thermometer shows against what is true, at each end it was checked at and at the stop. */
function thermometerLines(plan: PlanDocument, options: DisplayOptions): readonly string[] {
  const { correction, hereC, readingC } = plan.target;
  if (correction === 'scale') return bothEndsLines(plan, options);
  const inIce = iceLine(plan, options);
  const atStop =
    Math.abs(readingC.value - hereC.value) < 0.5
      ? undefined
      : `The mass itself is then at ${formatByKey('hereC', hereC.value, options)}.`;
  return [differenceLine(plan, options), inIce, atStop].filter((line) => line !== undefined);
}

/** Two checks make a scale: what it shows in ice lies on the line through the boil and the stop. */
function bothEndsLines(plan: PlanDocument, options: DisplayOptions): readonly string[] {
  const { kitchen, target } = plan;
  const boilsC = kitchen.waterBoilsAtC.value;
  const boilReadingC = boilsC + (kitchen.readingDifferenceK?.value ?? 0);
  const perK = (target.readingC.value - boilReadingC) / (target.hereC.value - boilsC);
  if (!Number.isFinite(perK)) return [];
  const shown = (readingC: number) => formatByKey('waterReadingC', readingC, options);
  const whose = kitchen.differenceIsTheThermometers
    ? ''
    : ' In boiling water that is thermometer and weather together.';
  return [
    `In melting ice your thermometer shows ${shown(boilReadingC - perK * boilsC)}, in boiling water ${shown(boilReadingC)}.${whose}`,
    `Its scale is corrected at both ends: when it shows ${stopInText(plan, options)}, the mass is at ${formatByKey('hereC', target.hereC.value, options)}.`,
  ];
}

/** Shifted with no word of boiling water: the ice did it. */
function iceLine({ kitchen, target }: PlanDocument, options: DisplayOptions): string | undefined {
  if (target.correction !== 'shift' || kitchen.readingDifferenceK !== undefined) return undefined;
  const iceReadingC = target.readingC.value - target.hereC.value;
  return `In melting ice your thermometer shows ${formatByKey('waterReadingC', iceReadingC, options)}, and the stop allows for it.`;
}

function differenceLine({ kitchen }: PlanDocument, options: DisplayOptions): string | undefined {
  const { readingDifferenceK, differenceIsTheThermometers } = kitchen;
  if (readingDifferenceK === undefined) return undefined;
  const differenceK = readingDifferenceK.value;
  if (Math.abs(differenceK) < 0.05) return 'Your thermometer agrees with it.';
  const whose = differenceIsTheThermometers
    ? "that is the thermometer's own"
    : 'thermometer and weather together';
  return `Your thermometer shows ${formatDifference(Math.abs(differenceK), options)} ${differenceK > 0 ? 'more' : 'less'}: ${whose}, and the stop allows for it.`;
}

function trustLine(plan: PlanDocument, options: DisplayOptions): string | undefined {
  const { readingC, asked } = plan.target;
  const degrees = (value: number) => formatReading(value, 0, options);
  const model = { moisture: 'boiling', 'glass-transition': 'glass' } as const;
  const trust =
    asked === 'moisture' || asked === 'glass-transition'
      ? trustIn(plan, readingC, degrees, model[asked])
      : trustIn(plan, readingC, degrees);
  if (trust === '') return undefined;
  const what = {
    'sea-level':
      "The number is the recipe's own; what may be off is the way to your kitchen and the thermometer",
    stage:
      'What may be off is the way from plain sugar to this mix, the way to your kitchen and the thermometer',
    moisture: 'All that the boiling model may be off is in this number',
    'glass-transition': 'All that the boiling and glass models may be off is in this number',
  }[asked];
  return `${what}${trust}.`;
}

function isomaltLine(plan: PlanDocument, options: DisplayOptions): string | undefined {
  const { composition, target } = plan;
  return (composition.drySolidsShares.isomalt ?? 0) < 0.5
    ? undefined
    : `Nobody has published a boiling curve for isomalt. Take ${formatReading(target.readingC.value, stopDecimals(plan), options)} as a place to start and judge the first drop.`;
}
