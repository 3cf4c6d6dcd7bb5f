/** What can stand behind the name of the program, as `parseArgs` of Node takes it. */
export const FLAGS = {
  units: { type: 'string' },
  region: { type: 'string' },
  json: { type: 'boolean' },
  check: { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
  version: { type: 'boolean', short: 'v' },
} as const;

/** A flag that is known. */
export type Flag = keyof typeof FLAGS;

/** The flags that take a value, and the values they take. */
export const CHOICES = { units: ['metric', 'us'], region: ['world', 'us'] } as const;

/** Whether a name is one of ours, and not one that every object carries. */
export function isFlag(name: string): name is Flag {
  return Object.hasOwn(FLAGS, name);
}

/** The page behind `--help`. */
export const HELP = `Usage: vitrose-plan FILE
       vitrose-plan -        reads standard input

Reads a batch of boiled sweets (vitrose.batch/1, a JSON document) and prints
its plan: where to stop, what the pan weighs, what it makes, how it keeps.

  --units metric|us   °C first and grams, or °F first and ounces beside grams
  --region world|us   boiled sweets and glucose syrup, or hard candy and corn
                      syrup; follows the units when it is not given
  --json              the plan as JSON, or {"problems": [...]} without one
  --check             no plan: 'fine', or what stands in its way
  -h, --help          this page
  -v, --version       the version

Exit code: 0 with a plan, 1 when the batch has to be changed first, 2 when the
command was not understood or the file could not be read.
`;
