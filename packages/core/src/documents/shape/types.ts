/**
 * What a document looks like, written down once as plain data. The reader walks it to find what is
 * wrong, the writer for the order of the fields, and the JSON Schemas are made from it. A general
 * schema library would weigh more than all of this together and could not say what was meant.
 *
 * A number is just that: its limits stand in `BATCH_LIMITS` under the path that leads to it.
 */
export type Shape =
  | 'number'
  | 'string'
  | 'boolean'
  /** One of these words. */
  | readonly string[]
  | Group;

/** A shape that holds others. */
export type Group =
  | { readonly fields: Fields }
  | { readonly list: Shape; readonly most: number }
  /** Names of the cook's own choice, or of a given set, each with the same kind of thing. */
  | { readonly entries: Shape; readonly names?: readonly string[] }
  /** Exactly one of these. */
  | { readonly either: readonly Shape[] };

/** Fields in the order they are written in. `name?` may be left out. */
export type Fields = Readonly<Record<string, Shape>>;

/** The type of what has a shape. */
export type Shaped<S> = S extends keyof Plain
  ? Plain[S]
  : S extends readonly string[]
    ? S[number]
    : S extends { readonly fields: infer F }
      ? WithFields<F>
      : Shapes<S>;

type Plain = { readonly number: number; readonly string: string; readonly boolean: boolean };

type Shapes<S> = S extends { readonly list: infer Item }
  ? readonly Shaped<Item>[]
  : S extends { readonly either: readonly (infer Branch)[] }
    ? Shaped<Branch>
    : Entries<S>;

type Entries<S> = S extends {
  readonly entries: infer Held;
  readonly names: readonly (infer Name)[];
}
  ? { readonly [K in Name & string]?: Shaped<Held> | undefined }
  : S extends { readonly entries: infer Held }
    ? { readonly [name: string]: Shaped<Held> }
    : never;

type WithFields<F> = {
  readonly [K in keyof F as K extends `${string}?` ? never : K]: Shaped<F[K]>;
} & {
  readonly [K in keyof F as K extends `${infer Name}?` ? Name : never]?: Shaped<F[K]> | undefined;
};
