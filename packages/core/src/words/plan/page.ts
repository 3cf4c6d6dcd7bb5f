import { wrap } from '../text/wrap.js';
import type { AnswerLine, Section } from './types.js';

const LABEL_COLUMNS = 12;
const INDENT = '  ';

/** The plan as a plain page: name, five lines, then the sections. */
export function pageOf(
  name: string,
  answer: readonly AnswerLine[],
  sections: readonly Section[],
): string {
  const lines = [
    ...wrap(name),
    '',
    ...answer.flatMap(({ label, text }) => wrap(label.padEnd(LABEL_COLUMNS) + text, LABEL_COLUMNS)),
    ...sections.flatMap(({ title, lines: body }) => [
      '',
      title,
      ...body.flatMap((line) => wrap(INDENT + line, INDENT.length + hangingOf(line))),
    ]),
  ];
  return `${lines.join('\n')}\n`;
}

/** Under the words of a numbered step, a caution or a table row, not under its number. */
function hangingOf(line: string): number {
  return /^ *(?:\d+\. |! |\d[\d .,]* g(?: \([^)]*\))? {2,})/.exec(line)?.[0].length ?? 2;
}
