import type { Conversion } from '../../matter/saccharides/types.js';

/** How dry a syrup, a dried syrup or a powder is. */
export type DryStrength = { readonly drySolidsMassFraction: number };

/** A starch syrup, a dried one, a maltodextrin or dextrose, by its two figures. */
export type SyrupStrength = DryStrength & {
  /** Reducing power of the dry solids, dextrose = 100. */
  readonly dextroseEquivalent: number;
  /** How the starch was cut, where it is known: a figure it does not reach is then refused. */
  readonly conversion?: Conversion | undefined;
};

/** The syrup that is wanted. */
export type SyrupTarget = {
  readonly massG: number;
  readonly drySolidsMassFraction: number;
  readonly dextroseEquivalent: number;
};
