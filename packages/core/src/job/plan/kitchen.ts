import { joinBands } from '../../foundation/results/band.js';
import { isNone } from '../../foundation/results/is-none.js';
import type { Span } from '../../foundation/results/types.js';
import {
  absolutePressure,
  SEA_LEVEL_PRESSURE_PA,
  standardPressure,
  stationPressure,
} from '../../matter/air/index.js';
import { waterBoilingPoint, waterVapourPressure } from '../../matter/water/index.js';
import { THERMOMETER_SCALE_DOMAIN_K } from '../../models/thermometer/index.js';
import { remedy } from '../advice/remedy.js';
import { BATCH_LIMITS } from '../batch/limits.js';
import type { BatchDocument } from '../batch/types.js';
import { assume, type Ledger, refuse, take, warn } from '../ledger.js';
import { figure } from './figure.js';
import type { PlannedKitchen } from './types.js';

/**
 * How far a pressure may be off, nine times in ten. Common practice: two ordinary weather systems
 * lie 20 hPa either side of the standard day; a household barometer is good to 2 hPa; sea-level
 * pressure reduced by a weather service hides the real air temperature, about 0.6 hPa per 100 m.
 */
export const PRESSURE_BANDS = {
  weatherPa: { value: 2_000, source: 'common-practice', grade: 'practice' },
  barometerPa: { value: 200, source: 'common-practice', grade: 'practice' },
  reductionPaPerM: { value: 0.6, source: 'assumption', grade: 'assumed' },
  readingK: { value: 0.5, source: 'common-practice', grade: 'practice' },
} as const;

/** A thermometer whose error this is must be thrown away or mended, K. */
const WORST_THERMOMETER_K = 5;

/** The air at the pan, the air in the pan, and what the thermometer shows in boiling water. */
export type Kitchen = {
  readonly planned: PlannedKitchen;
  readonly pressurePa: number;
  /** In the pan: less than the air when there is a vacuum. */
  readonly pressureInPanPa: number;
  readonly waterBoilsAtC: number;
  /** Under the vacuum, if there is one; the same as outside otherwise. */
  readonly waterBoilsInPanAtC: { readonly value: number; readonly band: Span };
  /** Readings that may still correct the thermometer; the same offset is never counted twice. */
  readonly boilingWaterReadingC?: number | undefined;
  readonly iceWaterReadingC?: number | undefined;
};

/** Finds the pressure at the pan from whatever the cook knows. */
export function readKitchen(batch: BatchDocument, ledger: Ledger): Kitchen | undefined {
  const { boilingWaterReadingC: boil, iceWaterReadingC: ice } = batch.thermometer ?? {};
  if (boil !== undefined && ice !== undefined && boil - ice < THERMOMETER_SCALE_DOMAIN_K[0]) {
    return refuse(ledger, {
      code: 'equal-readings',
      path: '/thermometer/boilingWaterReadingC',
      also: '/thermometer/iceWaterReadingC',
      received: boil,
      numbers: { boilingWaterReadingC: boil, iceWaterReadingC: ice },
    });
  }
  if (boil === undefined) {
    assume(ledger, '/thermometer/boilingWaterReadingC', 'taken-as-right');
  }
  const air = readPressure(batch, ledger);
  if (ledger.problems.length > 0) return undefined;
  const waterBoilsAtC = waterBoilingPoint(air.pressurePa).boilingPointC;
  const trusted = air.from === 'trusted-thermometer';
  const differenceK =
    boil === undefined || air.from === 'boiling-water-reading' ? undefined : boil - waterBoilsAtC;
  if (trusted && differenceK !== undefined && Math.abs(differenceK) > WORST_THERMOMETER_K) {
    refuse(ledger, {
      code: 'readings-disagree',
      path: '/thermometer/boilingWaterReadingC',
      also: '/kitchen/waterBoilsAtC',
      received: boil,
      numbers: { differenceK, boilingWaterReadingC: boil ?? 0, waterBoilsAtC },
    });
  }
  const { pressureInPanPa, vacuum } = readVacuum(batch, air.pressurePa, ledger);
  if (pressureInPanPa === undefined) return undefined;
  const waterBand: Span = [
    waterBoilingPoint(air.band[0]).boilingPointC,
    waterBoilingPoint(air.band[1]).boilingPointC,
  ];
  const model =
    air.from === 'weather-service'
      ? 'station-pressure'
      : air.from === 'elevation' || air.from === 'sea-level'
        ? 'standard-atmosphere'
        : air.from === 'barometer'
          ? 'given'
          : 'water';
  return {
    planned: {
      from: air.from,
      pressurePa: figure(air.pressurePa, air.band, model),
      waterBoilsAtC: figure(waterBoilsAtC, waterBand, 'water'),
      vacuum,
      readingDifferenceK:
        differenceK === undefined
          ? undefined
          : figure(
              differenceK,
              [
                differenceK - PRESSURE_BANDS.readingK.value,
                differenceK + PRESSURE_BANDS.readingK.value,
              ],
              'thermometer',
            ),
      differenceIsTheThermometers: trusted && differenceK !== undefined,
    },
    pressurePa: air.pressurePa,
    pressureInPanPa,
    waterBoilsAtC,
    waterBoilsInPanAtC:
      vacuum === undefined
        ? { value: waterBoilsAtC, band: waterBand }
        : boilsUnder(pressureInPanPa, air),
    // When the reading made the pressure, its offset is in the target already.
    boilingWaterReadingC: air.from === 'boiling-water-reading' ? undefined : boil,
    iceWaterReadingC: ice,
  };
}

type AirAtPan = {
  readonly from: PlannedKitchen['from'];
  readonly pressurePa: number;
  readonly band: Span;
};

function readPressure(batch: BatchDocument, ledger: Ledger): AirAtPan {
  const { kitchen } = batch;
  const { weatherPa, barometerPa, reductionPaPerM, readingK } = PRESSURE_BANDS;
  if (kitchen === undefined) {
    const reading = batch.thermometer?.boilingWaterReadingC;
    if (reading !== undefined) {
      assume(ledger, '/kitchen', 'from-the-boiling-water-reading');
      // An ice reading tells how much of it is the thermometer's own.
      const air = fromBoil(
        'boiling-water-reading',
        reading - (batch.thermometer?.iceWaterReadingC ?? 0),
      );
      refuseImpossibleAir(air.pressurePa, reading, ledger);
      return air;
    }
    take(ledger, '/kitchen/elevationM', undefined, { value: 0, grade: 'assumed' });
    return about('sea-level', SEA_LEVEL_PRESSURE_PA, weatherPa.value);
  }
  if ('waterBoilsAtC' in kitchen) return fromBoil('trusted-thermometer', kitchen.waterBoilsAtC);
  if ('pressurePa' in kitchen) return about('barometer', kitchen.pressurePa, barometerPa.value);
  if ('seaLevelPressurePa' in kitchen) {
    const { pressurePa, warnings } = stationPressure(kitchen);
    warn(ledger, warnings);
    return about(
      'weather-service',
      pressurePa,
      barometerPa.value + reductionPaPerM.value * Math.abs(kitchen.elevationM),
    );
  }
  take(ledger, '/kitchen/seaLevelPressurePa', undefined, {
    value: SEA_LEVEL_PRESSURE_PA,
    grade: 'assumed',
  });
  const { pressurePa, warnings } = standardPressure(kitchen.elevationM);
  warn(ledger, warnings);
  return about('elevation', pressurePa, weatherPa.value);

  function fromBoil(from: AirAtPan['from'], boilsAtC: number): AirAtPan {
    const { vapourPressurePa: low } = waterVapourPressure(boilsAtC - readingK.value);
    const { vapourPressurePa } = waterVapourPressure(boilsAtC);
    const { vapourPressurePa: high } = waterVapourPressure(boilsAtC + readingK.value);
    return { from, pressurePa: vapourPressurePa, band: joinBands(vapourPressurePa, [low, high]) };
  }
}

/** No kitchen boils water this hot or this cool: then the thermometer is off, and the altitude must say by how much. */
function refuseImpossibleAir(pressurePa: number, reading: number, ledger: Ledger): void {
  const [low, high] = BATCH_LIMITS['kitchen/pressurePa'];
  if (pressurePa >= low && pressurePa <= high) return;
  refuse(ledger, {
    code: 'readings-disagree',
    path: '/thermometer/boilingWaterReadingC',
    also: '/kitchen',
    received: reading,
    numbers: {
      boilingWaterReadingC: reading,
      lowC: waterBoilingPoint(low).boilingPointC,
      highC: waterBoilingPoint(high).boilingPointC,
    },
    remedies: [
      remedy('give-the-altitude', [{ path: '/kitchen', value: { elevationM: 0 } }], {
        elevationM: 0,
      }),
    ],
  });
}

function about(from: AirAtPan['from'], pressurePa: number, eitherWayPa: number): AirAtPan {
  return { from, pressurePa, band: [pressurePa - eitherWayPa, pressurePa + eitherWayPa] };
}

function readVacuum(
  batch: BatchDocument,
  pressurePa: number,
  ledger: Ledger,
): { pressureInPanPa?: number; vacuum?: PlannedKitchen['vacuum'] } {
  const { underVacuumPa } = batch.cook;
  if (underVacuumPa === undefined) {
    assume(ledger, '/cook/underVacuumPa', 0, 'practice');
    return { pressureInPanPa: pressurePa };
  }
  const left = absolutePressure({ pressurePa, underVacuumPa });
  if (isNone(left) || left.pressurePa < LOWEST_PRESSURE_PA) {
    refuse(ledger, {
      code: 'vacuum-deeper-than-air',
      path: '/cook/underVacuumPa',
      received: underVacuumPa,
      limits: [0, pressurePa - LOWEST_PRESSURE_PA],
      numbers: { pressurePa },
    });
    return {};
  }
  return {
    pressureInPanPa: left.pressurePa,
    vacuum: {
      underVacuumPa,
      pressureInPanPa: figure(left.pressurePa, [left.pressurePa, left.pressurePa], 'given'),
    },
  };
}

/** The gauge hangs on the air around it: what the weather does to the air, it does to the pan. */
function boilsUnder(
  pressureInPanPa: number,
  { pressurePa, band }: AirAtPan,
): Kitchen['waterBoilsInPanAtC'] {
  const at = (movedPa: number) =>
    waterBoilingPoint(Math.max(pressureInPanPa + movedPa, LOWEST_PRESSURE_PA)).boilingPointC;
  return { value: at(0), band: [at(band[0] - pressurePa), at(band[1] - pressurePa)] };
}

/** Below this the boiling model was never tested, and no kettle for sweets goes there, Pa. */
const LOWEST_PRESSURE_PA = 2_000;
