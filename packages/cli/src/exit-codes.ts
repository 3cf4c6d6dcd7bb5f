/** What the shell is told. */
export const EXIT = {
  /** There is a plan. */
  fine: 0,
  /** The document or the batch in it has to be changed first. */
  refused: 1,
  /** Wrong use of the command line, or a file that cannot be read. */
  misused: 2,
} as const;

/** One of the three. */
export type ExitCode = (typeof EXIT)[keyof typeof EXIT];
