import type { Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';
import { ModelRangeError, unknownName } from '../../foundation/validity/model-range-error.js';
import { totalG } from '../../matter/mixture/assemble.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { vapourPressurePa } from '../../matter/water/vapour-pressure.js';
import { WRAP_FILMS, type WrapFilm, type WrapFilmId } from './films.js';
import { AREA_DOMAIN_CM2, PIECE_DOMAIN_G } from './moisture-pick-up.js';

/** How transmission is measured, and what it may be wrong by. */
export const WRAP_CONSTANTS = {
  measuredAtC: { value: 38, source: 'food-packages', grade: 'secondary' },
  measuredAtHumidity: { value: 0.9, source: 'food-packages', grade: 'secondary' },
  filmError: { value: 1.4, source: 'moisture-band', grade: 'derived' },
  leakingSeals: { value: 3, source: 'biscuit-wraps-1999', grade: 'secondary', note: '1.1 to 3.0' },
  tighterAt25C: {
    value: 2,
    source: 'moisture-band',
    grade: 'derived',
    note: 'permeance of 0.5 to 0.7 of that at 38 °C',
  },
  isothermError: { value: 1.15, source: 'moisture-band', grade: 'derived' },
} as const satisfies CitedConstants;

/** From the best foil to bare paper, g/(m²·day). */
export const WVTR_DOMAIN_G_PER_M2_DAY: Span = [0.0001, 10_000];
/** A pack is never tighter than its film. */
export const SEAL_DOMAIN: Span = [1, 10];

/** What is in one pack: weighed as it is, or only what is dry. */
export type PackContents =
  | { readonly pieceG: number; readonly dryMassG?: undefined }
  | { readonly dryMassG: number; readonly pieceG?: undefined };

/** What it is wrapped in: a film by name, none, a twist, or a transmission from a data sheet. */
export type PackFilm =
  | { readonly film: WrapFilmId | 'none' | 'twist'; readonly wvtrGPerM2Day?: undefined }
  | { readonly wvtrGPerM2Day: number; readonly film?: undefined };

/** One pack. */
export type Pack = PackContents &
  PackFilm & { readonly areaCm2: number; readonly sealFactor?: number | undefined };

/** A pack that was checked. */
export type WrappedPack = {
  readonly solidsG: number;
  readonly wvtr: { readonly value: number; readonly low: number; readonly high: number };
  readonly sealKnown: boolean;
  /** Water that would come in between air of humidity 1 and 0, g a day. */
  readonly gPerDayAt: (storeC: number) => number;
};

/** Checks a pack; open where there is nothing to count on. */
export function readPack(mixture: Mixture, pack: Pack): WrappedPack | 'open' {
  const { areaCm2, sealFactor = 1 } = pack;
  const solidsG = solidsIn(mixture, pack);
  requireWithin('areaCm2', areaCm2, AREA_DOMAIN_CM2);
  requireWithin('sealFactor', sealFactor, SEAL_DOMAIN);
  const wvtr = transmission(pack);
  if (wvtr === 'open') return 'open';
  const { measuredAtC, measuredAtHumidity } = WRAP_CONSTANTS;
  const perPa = wvtr.value / (measuredAtHumidity.value * vapourPressurePa(measuredAtC.value));
  return {
    solidsG,
    wvtr,
    sealKnown: pack.sealFactor !== undefined,
    gPerDayAt: (storeC) => perPa * sealFactor * (areaCm2 / 10_000) * vapourPressurePa(storeC),
  };
}

function solidsIn(mixture: Mixture, { pieceG, dryMassG }: PackContents): number {
  refuseBoth('dryMassG', dryMassG, pieceG, 'Give the piece as it is or its dry mass, not both.');
  const dissolvedG = totalG(mixture.solids);
  if (dryMassG !== undefined) {
    requireWithin('dryMassG', dryMassG, PIECE_DOMAIN_G);
    return (dryMassG * dissolvedG) / (mixture.massG - mixture.waterG);
  }
  requireWithin('pieceG', pieceG, PIECE_DOMAIN_G);
  return (pieceG * dissolvedG) / mixture.massG;
}

function transmission({ film, wvtrGPerM2Day }: PackFilm): WrappedPack['wvtr'] | 'open' {
  refuseBoth('wvtrGPerM2Day', wvtrGPerM2Day, film, 'Give the film or its transmission, not both.');
  if (film === undefined) {
    requireWithin('wvtrGPerM2Day', wvtrGPerM2Day, WVTR_DOMAIN_G_PER_M2_DAY);
    const { filmError } = WRAP_CONSTANTS;
    return {
      value: wvtrGPerM2Day,
      low: wvtrGPerM2Day / filmError.value,
      high: wvtrGPerM2Day * filmError.value,
    };
  }
  if (film === 'none' || film === 'twist') return 'open';
  if (!Object.hasOwn(WRAP_FILMS, film)) {
    throw unknownName('film', film, 'A film must be none, twist or one the library knows by name');
  }
  const { value, low, high }: WrapFilm = WRAP_FILMS[film];
  // Of a film with no lowest value in print, only as much better as it may be worse.
  return { value, high, low: low > 0 ? low : value ** 2 / high };
}

function refuseBoth(parameter: string, received: unknown, other: unknown, sentence: string): void {
  if (received === undefined || other === undefined) return;
  throw new ModelRangeError(sentence, { code: 'not-allowed-together', parameter, received });
}
