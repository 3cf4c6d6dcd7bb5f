import { parseArgs } from 'node:util';
import type { DisplayOptions } from 'vitrose/words';
import { CHOICES, FLAGS, isFlag } from './flags.js';
import { nearest } from './nearest.js';

/** What the one at the keyboard wants. */
export type Wish =
  | { readonly kind: 'help' | 'version' }
  | { readonly kind: 'misused'; readonly sentence: string }
  | {
      readonly kind: 'plan';
      /** A path, or `-` for standard input. */
      readonly file: string;
      readonly json: boolean;
      readonly check: boolean;
      readonly display: DisplayOptions;
    };

/** Understands the arguments; what is not understood is said with the nearest that would be. */
export function readArguments(argv: readonly string[]): Wish {
  // Not strict: the sentences of `parseArgs` name neither the nearest flag nor the choices.
  const { values, positionals, tokens } = parseArgs({
    args: [...argv],
    options: FLAGS,
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  for (const token of tokens) {
    const sentence = token.kind === 'option' ? faultOf(token) : undefined;
    if (sentence !== undefined) return { kind: 'misused', sentence };
  }
  if (values.help === true) return { kind: 'help' };
  if (values.version === true) return { kind: 'version' };
  const [file, second] = positionals;
  if (file === undefined) {
    return misused('Name a batch file, or - to read one from standard input.');
  }
  if (second !== undefined) {
    return misused(`One batch at a time: ‘${file}’ and ‘${second}’ were named.`);
  }
  return {
    kind: 'plan',
    file,
    json: values.json === true,
    check: values.check === true,
    display: {
      units: chosen(CHOICES.units, values.units),
      region: chosen(CHOICES.region, values.region),
    },
  };
}

type OptionToken = {
  readonly name: string;
  readonly rawName: string;
  readonly value?: string | undefined;
};

/** What is wrong with one flag, or nothing. */
function faultOf({ name, rawName, value }: OptionToken): string | undefined {
  if (!isFlag(name)) return `There is no ${rawName}.${guess(name)}`;
  const choices = name === 'units' || name === 'region' ? CHOICES[name] : undefined;
  if (choices === undefined) return value === undefined ? undefined : `${rawName} takes no value.`;
  if (value === undefined) return `${rawName} takes ${choices.join(' or ')}.`;
  if (chosen(choices, value) !== undefined) return undefined;
  const meant = nearest(value, choices);
  const question = meant === undefined ? '' : ` Did you mean ${meant}?`;
  return `${rawName} takes ${choices.join(' or ')}; ‘${value}’ was given.${question}`;
}

/** The flag one may have meant; units are easily asked for as if they were flags. */
function guess(name: string): string {
  const units = chosen(CHOICES.units, name);
  const flag = units === undefined ? nearest(name, Object.keys(FLAGS)) : `units ${units}`;
  return flag === undefined ? '' : ` Did you mean --${flag}?`;
}

function chosen<T extends string>(choices: readonly T[], value: unknown): T | undefined {
  return choices.find((choice) => choice === value);
}

function misused(sentence: string): Wish {
  return { kind: 'misused', sentence };
}
