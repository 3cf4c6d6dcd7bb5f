import { type PlanDocument, type Problem, planBatch } from 'vitrose';
import { DOCUMENT_CAPS, readBatch } from 'vitrose/documents';
import { type DisplayOptions, describePlan, explainProblem } from 'vitrose/words';
import manifest from '../package.json' with { type: 'json' };
import { readArguments, type Wish } from './arguments.js';
import { EXIT, type ExitCode } from './exit-codes.js';
import { HELP } from './flags.js';
import { readText } from './read-text.js';

/** Everything `run` does to the world. */
export type Io = {
  /** The bytes of a file, or of standard input for `-`. */
  readonly open: (file: string) => AsyncIterable<Uint8Array>;
  readonly print: (text: string) => void;
  readonly complain: (text: string) => void;
};

/** Reads a batch, prints its plan, says how it went. */
export async function run(argv: readonly string[], io: Io): Promise<ExitCode> {
  const wish = readArguments(argv);
  switch (wish.kind) {
    case 'help':
      io.print(HELP);
      return EXIT.fine;
    case 'version':
      io.print(`${manifest.version}\n`);
      return EXIT.fine;
    case 'misused':
      io.complain(shown(`${wish.sentence}\nvitrose-plan --help lists what there is.\n`));
      return EXIT.misused;
    case 'plan':
      return plan(wish, io);
  }
}

async function plan(wish: Wish & { readonly kind: 'plan' }, io: Io): Promise<ExitCode> {
  const name = wish.file === '-' ? 'standard input' : wish.file;
  const read = await readText(name, io.open(wish.file), DOCUMENT_CAPS.bytes);
  if (read.kind === 'unreadable') {
    io.complain(shown(`${read.sentence}\n`));
    return EXIT.misused;
  }
  const answer = read.kind === 'too-large' ? TOO_LARGE : answerTo(read.text);
  if (answer.kind === 'plan') {
    io.print(planText(answer.plan, wish));
    return EXIT.fine;
  }
  if (wish.json) io.print(json({ problems: answer.problems }));
  io.complain(shown(problemText(answer.problems, wish.display)));
  return EXIT.refused;
}

type Answer =
  | { readonly kind: 'plan'; readonly plan: PlanDocument }
  | { readonly kind: 'problems' | 'refused'; readonly problems: readonly Problem[] };

const TOO_LARGE: Answer = {
  kind: 'problems',
  problems: [{ code: 'too-large', path: '', limits: [0, DOCUMENT_CAPS.bytes] }],
};

function answerTo(text: string): Answer {
  const reading = readBatch(text);
  return reading.kind === 'batch' ? planBatch(reading.batch) : reading;
}

function planText(plan: PlanDocument, { json: asJson, check, display }: Wish & { kind: 'plan' }) {
  if (asJson) return json(check ? { problems: [] } : plan);
  return check ? 'fine\n' : shown(describePlan(plan, display).text);
}

function problemText(problems: readonly Problem[], display: DisplayOptions): string {
  return problems
    .map((problem) => explainProblem(problem, display))
    .map(({ text, remedies }) => [text, ...remedies.map(({ label }) => `[${label}]`)].join(' '))
    .map((line) => `${line}\n`)
    .join('');
}

function json(value: object): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}

/** A name from a stranger's document must not steer the terminal. */
function shown(text: string): string {
  return text.replace(/(?!\n)\p{Cc}/gu, '�');
}
