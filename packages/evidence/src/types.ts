import type { Grade } from 'vitrose';

/** What one cell of a table may hold. */
export type Cell =
  | number
  | string
  | boolean
  | null
  | readonly Cell[]
  | { readonly [key: string]: Cell };

/** One printed row. The unit of every numeric column stands in its name and in `units`. */
export type EvidenceRow = {
  readonly [column: string]: Cell;
};

/** Where a table was printed. */
export type EvidenceSource = {
  readonly authors: string;
  readonly year: string;
  readonly title: string;
  readonly locator: string;
};

/**
 * How close a model must come to one column. The first limit that fits a row applies to it; a row
 * that no limit fits is shown, not gated.
 */
export type Limit = {
  readonly column: string;
  /** The largest difference allowed, in the unit of the column, or as a fraction if `relative`. */
  readonly worst?: number;
  /** The largest root mean square allowed over the rows of this limit. */
  readonly rms?: number;
  readonly relative?: true;
  /** The printed range and the band of the model must overlap. */
  readonly insideBand?: true;
  /** Which rows it is meant for; all of them if left out. */
  readonly rows?: {
    readonly column: string;
    readonly from?: number;
    readonly to?: number;
    readonly is?: readonly (string | number)[];
  };
};

/** Two columns that lie on one smooth curve, so that a slipped digit shows. */
export type SmoothPair = {
  readonly x: string;
  readonly y: string;
  /** Columns that part the table into curves. */
  readonly by?: readonly string[];
};

/** A published or computed table as printed, with what we know about it. */
export type EvidenceTable = {
  readonly id: string;
  readonly title: string;
  readonly source: EvidenceSource;
  /** `mixed`: every row carries its own grade. */
  readonly grade: Grade | 'mixed';
  /** What was done with the source. */
  readonly did: string;
  /** A lasting page of a publisher, a government or a university. */
  readonly address?: string;
  /** The unit of each numeric column. */
  readonly units: Readonly<Record<string, string>>;
  /** Coefficients and equations printed beside the rows. */
  readonly constants?: Readonly<Record<string, Cell>>;
  readonly rows: readonly EvidenceRow[];
  /** What a test may ask of a model that is held against this table. */
  readonly tolerance?: { readonly text: string; readonly limits?: readonly Limit[] };
  /** Smaller tables printed with this one. */
  readonly extra?: Readonly<Record<string, Cell>>;
  readonly notes?: readonly string[];
  readonly smooth?: readonly SmoothPair[];
  /** Frozen when the table was entered, so that a slipped digit fails loudly. */
  readonly check: {
    readonly rows: number;
    readonly sums: Readonly<Record<string, number>>;
    /** Columns of each row that add up to a printed total. */
    readonly rowTotals?: {
      readonly columns: readonly string[];
      readonly total: number;
      readonly within: number;
    };
  };
};
