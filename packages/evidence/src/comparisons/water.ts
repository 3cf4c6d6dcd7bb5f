import {
  standardPressure,
  stationPressure,
  waterBoilingPoint,
  waterLatentHeat,
  waterVapourPressure,
} from 'vitrose';
import type { EvidenceRow } from '../types.js';
import type { Comparison } from './types.js';
import { numberIn } from './types.js';

const METRES_PER_FOOT = 0.3048;

/** The printed table goes on past the last row of latent heat the library holds. */
const LATENT_HEAT_TOP_C = 180;

const boilingAtElevation = (elevationM: number): number =>
  waterBoilingPoint(standardPressure(elevationM).pressurePa).boilingPointC;

const stationPressurePa = (row: EvidenceRow): number =>
  stationPressure({
    seaLevelPressurePa: numberIn(row, 'seaLevelPressureHPa') * 100,
    elevationM: numberIn(row, 'elevationM'),
  }).pressurePa;

const reductionLabel = (row: EvidenceRow): string =>
  `${numberIn(row, 'elevationM')} m, ${numberIn(row, 'seaLevelPressureHPa')} hPa at sea level`;

/** Steam, the standard atmosphere and the weather. */
export const WATER_COMPARISONS: readonly Comparison[] = [
  {
    table: 'boiling-psat-check',
    column: 'vapourPressureKPa',
    model: 'waterVapourPressure',
    answer: (row) => ({
      label: `${numberIn(row, 'temperatureC')} °C`,
      computed: waterVapourPressure(numberIn(row, 'temperatureC')).vapourPressurePa / 1_000,
    }),
  },
  {
    table: 'boiling-psat-check',
    column: 'latentHeatKJPerKg',
    model: 'waterLatentHeat',
    answer: (row) => {
      const temperatureC = numberIn(row, 'temperatureC');
      if (temperatureC > LATENT_HEAT_TOP_C) return undefined;
      return {
        label: `${temperatureC} °C`,
        computed: waterLatentHeat(temperatureC).latentHeatKJPerKg,
      };
    },
  },
  {
    table: 'boiling-atmosphere',
    column: 'pressurePa',
    model: 'standardPressure',
    answer: (row) => ({
      label: `${numberIn(row, 'elevationM')} m`,
      computed: standardPressure(numberIn(row, 'elevationM')).pressurePa,
    }),
  },
  {
    table: 'boiling-atmosphere',
    column: 'waterBoilingPointC',
    model: 'waterBoilingPoint',
    answer: (row) => ({
      label: `${numberIn(row, 'elevationM')} m`,
      computed: boilingAtElevation(numberIn(row, 'elevationM')),
    }),
  },
  {
    table: 'boiling-altitude-water',
    column: 'boilingPointC',
    model: 'waterBoilingPoint',
    answer: (row) => ({
      label: `${numberIn(row, 'elevationFt')} ft`,
      computed: boilingAtElevation(numberIn(row, 'elevationFt') * METRES_PER_FOOT),
    }),
  },
  {
    table: 'boiling-pressure-reduction',
    column: 'stationPressureHPa',
    model: 'stationPressure',
    answer: (row) => ({ label: reductionLabel(row), computed: stationPressurePa(row) / 100 }),
  },
  {
    table: 'boiling-pressure-reduction',
    column: 'waterBoilingPointC',
    model: 'waterBoilingPoint',
    answer: (row) => ({
      label: reductionLabel(row),
      computed: waterBoilingPoint(stationPressurePa(row)).boilingPointC,
    }),
  },
  {
    table: 'heat-latent',
    column: 'latentHeatKJPerKg',
    model: 'waterLatentHeat',
    answer: (row) => ({
      label: `${numberIn(row, 'temperatureC')} °C`,
      computed: waterLatentHeat(numberIn(row, 'temperatureC')).latentHeatKJPerKg,
    }),
  },
  {
    table: 'stages-pressure-computed',
    column: 'waterBoilingPointC',
    model: 'waterBoilingPoint',
    answer: (row) => ({
      label: `${numberIn(row, 'pressureHPa')} hPa`,
      computed: waterBoilingPoint(numberIn(row, 'pressureHPa') * 100).boilingPointC,
    }),
  },
];
