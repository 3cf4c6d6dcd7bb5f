import type { Ingredient, IngredientId } from '../ingredients/types.js';
import type { Conversion, Profile } from '../saccharides/types.js';
import type { ApartKind, SpeciesId } from '../species.js';

/** One solute: a pure substance, or the solids of one starch syrup. Two syrups are never merged. */
export type Solid =
  | { readonly kind: 'pure'; readonly species: SpeciesId; readonly massG: number }
  | {
      readonly kind: 'saccharides';
      readonly massG: number;
      readonly dextroseEquivalent: number;
      readonly profile: Profile;
      /** What the cook knew: only the dextrose equivalent, or (through the conversion) the profile. */
      readonly given: 'de' | 'profile';
    };

/** Something weighed but not dissolved: fat, oil, alcohol, pigment. */
export type Apart = { readonly kind: ApartKind; readonly massG: number };

/** What is in the pan. */
export type Mixture = {
  readonly waterG: number;
  /** In solution. */
  readonly solids: readonly Solid[];
  /** Weighed, not dissolved. */
  readonly apart: readonly Apart[];
  readonly massG: number;
  /** Everything weighed that is not water, 0–1. */
  readonly drySolidsMassFraction: number;
  /** Solids in solution per mass of solution, 0–1; fat, oil, alcohol and pigment left out. */
  readonly dissolvedMassFraction: number;
};

/** One weighed ingredient, with what the label says about it. */
export type Part = {
  readonly ingredient: IngredientId | Ingredient;
  readonly massG: number;
  /** 0–1 as sold; the ingredient's default if left out. */
  readonly drySolidsMassFraction?: number | undefined;
  /** 0–100; starch syrups only. */
  readonly dextroseEquivalent?: number | undefined;
  readonly conversion?: Conversion | undefined;
  readonly profile?: Profile | undefined;
};
