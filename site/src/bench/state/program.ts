import type { BatchDocument } from 'vitrose';

/**
 * Six lines that plan this batch in a program of one's own.
 *
 * @param fileName - Of the batch document the page saves.
 */
export function programFor(fileName: string): string {
  return [
    "import { readFileSync } from 'node:fs';",
    "import { planBatch } from 'vitrose';",
    "import { readBatch } from 'vitrose/documents';",
    `const reading = readBatch(readFileSync('${fileName}', 'utf8'));`,
    "if (reading.kind === 'problems') throw new Error(JSON.stringify(reading.problems));",
    'console.log(planBatch(reading.batch));',
  ].join('\n');
}

/** A file name made of the name of the batch: letters and digits, the rest as hyphens. */
export function fileNameOf({ name }: BatchDocument): string {
  const plain = (name ?? '')
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);
  return `${plain === '' ? 'batch' : plain}.json`;
}
