import type { BatchDocument, Hob } from 'vitrose';
import { withValue } from './place.js';

/** What the cook can know about the air; one way at a time, and the weather app needs the altitude. */
export type AirField = 'altitude' | 'weather' | 'barometer' | 'trusted';

/**
 * The batch with another word about the air. The ways exclude each other in the document, so the
 * newest one stands; the altitude stays beside the weather app's number.
 */
export function withAir(
  batch: BatchDocument,
  field: AirField,
  value: number | undefined,
): BatchDocument {
  const elevationM = elevationOf(batch);
  const seaLevelPressurePa =
    batch.kitchen !== undefined && 'seaLevelPressurePa' in batch.kitchen
      ? batch.kitchen.seaLevelPressurePa
      : undefined;
  switch (field) {
    case 'altitude':
      if (value === undefined) return withValue(batch, '/kitchen', undefined);
      return withValue(
        batch,
        '/kitchen',
        seaLevelPressurePa === undefined
          ? { elevationM: value }
          : { seaLevelPressurePa, elevationM: value },
      );
    case 'weather':
      return withValue(
        batch,
        '/kitchen',
        value === undefined
          ? elevationM === undefined
            ? undefined
            : { elevationM }
          : { seaLevelPressurePa: value, elevationM: elevationM ?? 0 },
      );
    case 'barometer':
      return withValue(batch, '/kitchen', value === undefined ? undefined : { pressurePa: value });
    case 'trusted':
      return withValue(
        batch,
        '/kitchen',
        value === undefined ? undefined : { waterBoilsAtC: value },
      );
  }
}

/** The altitude, where it is given. */
export function elevationOf({ kitchen }: BatchDocument): number | undefined {
  return kitchen !== undefined && 'elevationM' in kitchen ? kitchen.elevationM : undefined;
}

/** Half a litre of cold water, as the kettle test asks for. */
const TEST_WATER_G = 500;
const COLD_WATER_C = 20;

/** The hob as the kettle test finds it. */
export function hobFromKettle(boilsInMin: number): Hob {
  return { kind: 'timed', waterG: TEST_WATER_G, fromC: COLD_WATER_C, boilsInMin };
}

/** Specific heat of water between 20 and 100 °C, J/(g·K). */
const WATER_HEAT = 4.187;

/** What such a hob puts into the water, W: mass times specific heat times rise, by the clock. */
export function wattsOf(hob: Hob | undefined, waterBoilsAtC: number): number | undefined {
  if (hob?.kind !== 'timed') return undefined;
  const { waterG, fromC, boilsInMin } = hob;
  return (waterG * WATER_HEAT * (waterBoilsAtC - fromC)) / (boilsInMin * 60);
}
