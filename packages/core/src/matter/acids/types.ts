import type { Mixture } from '../mixture/types.js';
import type { ACIDS } from './constants.js';

/** Acids, their salts and bicarbonate whose part in the pH is known. */
export type AcidSpecies = keyof typeof ACIDS;

/** How much of each, g, dry and without crystal water. */
export type AcidMasses = Readonly<Partial<Record<AcidSpecies, number>>>;

/** Acid in water, where the rest of the recipe does not matter. */
export type AcidWater = { readonly waterG: number; readonly acids: AcidMasses };

/** The water tap and the room, as far as acid cares. */
export type AcidityOptions = {
  /** Alkalinity of the tap water, mmol/L, 0 to 50; none by default. */
  readonly alkalinityMmolPerL?: number | undefined;
  /** Tap water that went in, g, where some has boiled away since; all the water by default. */
  readonly tapWaterG?: number | undefined;
  /** °C; only cream of tartar minds. */
  readonly temperatureC?: number | undefined;
};

/** Where acids are looked for. */
export type AcidSource = Mixture | AcidWater;
