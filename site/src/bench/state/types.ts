import type { BatchDocument } from 'vitrose';
import type { Manner } from './read/types.js';

/** Whose kitchen the batch on the table is computed in. */
export type WhoseKitchen = 'mine' | 'theirs' | 'nobodys';

/** What undo takes back and redo brings again. */
export type Table = {
  readonly batch: BatchDocument;
  /** A name for each line of the formula that stays with it when others come and go. */
  readonly lineKeys: readonly string[];
  readonly whose: WhoseKitchen;
};

/** What stands in a field and could not be understood. */
export type Unread = { readonly text: string; readonly reason: string };

/** A batch that came from a link or a file, until the cook has seen the note about it. */
export type Arrival = {
  readonly from: 'link' | 'file';
  readonly name: string;
  /** It carries a kitchen of its own that was laid aside. */
  readonly theirs?: BatchDocument | undefined;
};

/** Everything the bench shows, in one immutable object. */
export type BenchState = {
  readonly past: readonly Table[];
  readonly now: Table;
  readonly future: readonly Table[];
  /** The field of the last change: typing on in it is one step for undo. */
  readonly lastField?: string | undefined;
  /** Goes up when the table changes under the fields, which then show what is on it. */
  readonly round: number;
  readonly manner: Manner;
  readonly unread: Readonly<Record<string, Unread>>;
  readonly arrival?: Arrival | undefined;
  /** What went wrong with a link or a file, in words. */
  readonly trouble?: readonly string[] | undefined;
};
