import type { Problem } from 'vitrose';
import { readBatch } from 'vitrose/documents';

/** The smallest batch that is right. */
export const good = {
  format: 'vitrose.batch/1',
  formula: [
    { ingredient: 'sucrose', massG: 232 },
    { ingredient: 'water', massG: 116 },
  ],
  cook: { toSeaLevelC: 148 },
};

/** The good batch with some of its fields replaced. */
export const batch = (fields: object): object => ({ ...good, ...fields });

/** The good batch with another first line. */
export const lineOf = (line: unknown): object => batch({ formula: [line, good.formula[1]] });

/** What stands in the way of it; nothing where it is read. */
export const problemsOf = (input: unknown): readonly Problem[] => {
  const reading = readBatch(input);
  return reading.kind === 'problems' ? reading.problems : [];
};
