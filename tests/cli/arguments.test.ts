import { describe, expect, it } from 'vitest';
import manifest from '../../packages/cli/package.json' with { type: 'json' };
import { DROPS, ran } from './memory-io.js';

describe('what is not understood is said with what would be', () => {
  it.each([
    [['--jsno', 'a.json'], 'There is no --jsno. Did you mean --json?'],
    [['--unit=us', 'a.json'], 'There is no --unit. Did you mean --units?'],
    [['--reg', 'us', 'a.json'], 'There is no --reg. Did you mean --region?'],
    [['--us', 'a.json'], 'There is no --us. Did you mean --units us?'],
    [['--metric', 'a.json'], 'There is no --metric. Did you mean --units metric?'],
    [['--frobnicate', 'a.json'], 'There is no --frobnicate.'],
    [['-x', 'a.json'], 'There is no -x.'],
    [['--toString', 'a.json'], 'There is no --toString.'],
    [
      ['--units', 'metrik', 'a.json'],
      '--units takes metric or us; ‘metrik’ was given. Did you mean metric?',
    ],
    [['--units=imperial', 'a.json'], '--units takes metric or us; ‘imperial’ was given.'],
    [['a.json', '--units'], '--units takes metric or us.'],
    [['--region', 'uk', 'a.json'], '--region takes world or us; ‘uk’ was given.'],
    [['--json=yes', 'a.json'], '--json takes no value.'],
    [[], 'Name a batch file, or - to read one from standard input.'],
    [['--json'], 'Name a batch file, or - to read one from standard input.'],
    [['a.json', 'b.json'], 'One batch at a time: ‘a.json’ and ‘b.json’ were named.'],
  ])('%j', async (argv, sentence) => {
    const { code, out, err } = await ran(argv, { 'a.json': DROPS });
    expect(err).toBe(`${sentence}\nvitrose-plan --help lists what there is.\n`);
    expect(out).toBe('');
    expect(code).toBe(2);
  });
});

describe('help', () => {
  it.each(['--help', '-h'])('comes with %s, whatever else stands there', async (flag) => {
    const { code, out, err } = await ran(['no-such-file', flag]);
    expect(out).toContain('Usage: vitrose-plan FILE');
    expect(err).toBe('');
    expect(code).toBe(0);
  });

  it('fits a terminal', async () => {
    const { out } = await ran(['--help']);
    expect(out.split('\n').filter((line) => line.length > 78)).toEqual([]);
  });
});

it.each(['--version', '-v'])('says its version with %s', async (flag) => {
  expect(await ran([flag])).toEqual({ code: 0, out: `${manifest.version}\n`, err: '' });
});

it('reads what stands behind -- as a file, even if it looks like a flag', async () => {
  const { code, out } = await ran(['--check', '--', '--json'], { '--json': DROPS });
  expect([code, out]).toEqual([0, 'fine\n']);
});
