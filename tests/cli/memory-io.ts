import { type Io, run } from '../../packages/cli/src/main.js';

/** How a run ended, and everything it said. */
export type Ran = { readonly code: number; readonly out: string; readonly err: string };

/** Runs the command line on files that are only names here. */
export async function ran(
  argv: readonly string[],
  files: Readonly<Record<string, string | Uint8Array | Error>> = {},
): Promise<Ran> {
  let out = '';
  let err = '';
  const io: Io = {
    async *open(file) {
      const held = files[file];
      if (held === undefined) throw Object.assign(new Error('no such file'), { code: 'ENOENT' });
      if (held instanceof Error) throw held;
      yield typeof held === 'string' ? new TextEncoder().encode(held) : held;
    },
    print: (text) => {
      out += text;
    },
    complain: (text) => {
      err += text;
    },
  };
  const code = await run(argv, io);
  return { code, out, err };
}

/** A batch that has a plan. */
export const DROPS = JSON.stringify({
  format: 'vitrose.batch/1',
  name: 'Pier drops',
  formula: [
    { ingredient: 'sucrose', massG: 300 },
    { ingredient: 'glucose-syrup', massG: 250 },
    { ingredient: 'water', massG: 100 },
  ],
  cook: { toSeaLevelC: 149 },
});
