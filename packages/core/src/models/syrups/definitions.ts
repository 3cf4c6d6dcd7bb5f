// biome-ignore-all format: one definition a line, to be held against its source

import type { Grade } from '../../foundation/validity/constants.js';
import type { SourceId } from '../../sources/ids.js';

/** What a rule calls by a name, as far as figures say it. Shares are 0 to 1. */
export type SyrupDefinition = {
  readonly id:
    | 'glucose-syrup'
    | 'dried-glucose-syrup'
    | 'dextrose-monohydrate'
    | 'dextrose-anhydrous'
    | 'maltodextrin'
    | 'invert-sugar-solution'
    | 'invert-sugar-syrup';
  /** The rule that says so. */
  readonly rule: string;
  readonly source: SourceId;
  readonly grade: Grade;
  /** A powder, or not; either where it is left out. */
  readonly dried?: boolean;
  readonly dextroseEquivalentFrom?: number;
  readonly dextroseEquivalentBelow?: number;
  readonly drySolidsFrom?: number;
  /** Not in the rule: from here on the crystals hold no water any more. */
  readonly drySolidsBelow?: number;
  readonly glucoseOfDrySolidsFrom?: number;
  readonly invertOfDrySolidsAbove?: number;
  readonly invertOfDrySolidsTo?: number;
  /** The rule asks for this too; nothing here can tell. */
  readonly sulphatedAshOfDrySolidsTo?: number;
};

const CODEX = 'CXS 212-1999';
const EU = 'Directive 2001/111/EC';
const US = '21 CFR 184.1444';

/** Legal minimums of starch sugars and invert sugar. Information only: law differs and changes. */
export const SYRUP_DEFINITIONS = [
  { id: 'glucose-syrup', rule: CODEX, source: 'codex-212-1999', grade: 'secondary', dried: false, dextroseEquivalentFrom: 20, drySolidsFrom: 0.7, sulphatedAshOfDrySolidsTo: 0.01 },
  { id: 'glucose-syrup', rule: EU, source: 'eu-2001-111', grade: 'secondary', dried: false, dextroseEquivalentFrom: 20, drySolidsFrom: 0.7, sulphatedAshOfDrySolidsTo: 0.01 },
  { id: 'dried-glucose-syrup', rule: CODEX, source: 'codex-212-1999', grade: 'secondary', dried: true, dextroseEquivalentFrom: 20, drySolidsFrom: 0.93, sulphatedAshOfDrySolidsTo: 0.01 },
  { id: 'dried-glucose-syrup', rule: EU, source: 'eu-2001-111', grade: 'secondary', dried: true, dextroseEquivalentFrom: 20, drySolidsFrom: 0.93, sulphatedAshOfDrySolidsTo: 0.01 },
  { id: 'dextrose-monohydrate', rule: CODEX, source: 'codex-212-1999', grade: 'secondary', dried: true, glucoseOfDrySolidsFrom: 0.995, drySolidsFrom: 0.9, drySolidsBelow: 0.98 },
  { id: 'dextrose-anhydrous', rule: CODEX, source: 'codex-212-1999', grade: 'secondary', dried: true, glucoseOfDrySolidsFrom: 0.995, drySolidsFrom: 0.98 },
  { id: 'maltodextrin', rule: US, source: 'us-21-cfr-184-1444', grade: 'secondary', dextroseEquivalentBelow: 20 },
  { id: 'invert-sugar-solution', rule: EU, source: 'eu-2001-111', grade: 'secondary', dried: false, invertOfDrySolidsAbove: 0.03, invertOfDrySolidsTo: 0.5, drySolidsFrom: 0.62 },
  { id: 'invert-sugar-syrup', rule: EU, source: 'eu-2001-111', grade: 'memory', dried: false, invertOfDrySolidsAbove: 0.5, drySolidsFrom: 0.62 },
] as const satisfies readonly SyrupDefinition[];
