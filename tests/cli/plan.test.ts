import { describe, expect, it } from 'vitest';
import { planBatch } from 'vitrose';
import { DOCUMENT_CAPS, readBatch } from 'vitrose/documents';
import { describePlan, explainProblem } from 'vitrose/words';
import { DROPS, ran } from './memory-io.js';

const planned = () => {
  const reading = readBatch(DROPS);
  const answer = reading.kind === 'batch' ? planBatch(reading.batch) : reading;
  if (answer.kind !== 'plan') throw new Error(JSON.stringify(answer));
  return answer.plan;
};
const files = { 'drops.json': DROPS };

describe('a batch that can be planned', () => {
  it.each([
    [[], {}],
    [['--units', 'us'], { units: 'us' }],
    [['--units', 'metric', '--region', 'us'], { units: 'metric', region: 'us' }],
    [['--region=world', '--units=us'], { units: 'us', region: 'world' }],
  ] as const)('is described by the words of the library, with %j', async (argv, display) => {
    const { code, out, err } = await ran([...argv, 'drops.json'], files);
    expect(out).toBe(describePlan(planned(), display).text);
    expect(out.endsWith('\n')).toBe(true);
    expect(err).toBe('');
    expect(code).toBe(0);
  });

  it('is the plan document with --json', async () => {
    const { code, out, err } = await ran(['--json', 'drops.json'], files);
    expect(JSON.parse(out)).toEqual(JSON.parse(JSON.stringify(planned())));
    expect([code, err, out.endsWith('}\n')]).toEqual([0, '', true]);
  });

  it('is fine with --check', async () => {
    expect(await ran(['--check', 'drops.json'], files)).toEqual({
      code: 0,
      out: 'fine\n',
      err: '',
    });
  });

  it('has no problems with --check --json', async () => {
    const { code, out } = await ran(['--check', '--json', 'drops.json'], files);
    expect([code, JSON.parse(out)]).toEqual([0, { problems: [] }]);
  });

  it('may come from standard input', async () => {
    const { code, out } = await ran(['-'], { '-': DROPS });
    expect(out).toBe(describePlan(planned()).text);
    expect(code).toBe(0);
  });

  it('may begin with the mark some editors write', async () => {
    expect((await ran(['--check', '-'], { '-': `\uFEFF${DROPS}` })).out).toBe('fine\n');
  });
});

const twoMistakes = DROPS.replace('sucrose', 'sugr').replace('"cook"', '"cok"');
const tooThin = DROPS.replace('149', '101');

describe.each([
  ['a document with mistakes', twoMistakes],
  ['a batch that cannot be cooked so', tooThin],
  ['no JSON', `${DROPS},`],
  ['nothing at all', ''],
])('%s', (_title, text) => {
  const reading = readBatch(text);
  const answer = reading.kind === 'batch' ? planBatch(reading.batch) : reading;
  const problems = answer.kind === 'plan' ? [] : answer.problems;

  it.each([[[]], [['--check']]])('is told everything there is to change, with %j', async (argv) => {
    const { code, out, err } = await ran([...argv, 'x.json'], { 'x.json': text });
    expect(problems.length).toBeGreaterThan(0);
    for (const problem of problems) expect(err).toContain(explainProblem(problem).text);
    expect(err.trim().split('\n')).toHaveLength(problems.length);
    expect([code, out]).toEqual([1, '']);
  });

  it.each([[['--json']], [['--json', '--check']]])('is told to programs, with %j', async (argv) => {
    const { code, out } = await ran([...argv, 'x.json'], { 'x.json': text });
    expect(JSON.parse(out)).toEqual({ problems: JSON.parse(JSON.stringify(problems)) });
    expect(code).toBe(1);
  });
});

describe('what cannot be read', () => {
  const failing = (code: string) => Object.assign(new Error(code), { code });

  it.each([
    ['ENOENT', 'There is no file ‘x.json’.'],
    ['EISDIR', '‘x.json’ is a folder.'],
    ['EACCES', 'You may not read ‘x.json’.'],
    ['EIO', '‘x.json’ could not be read (EIO).'],
  ])('is told in words: %s', async (code, sentence) => {
    const ended = await ran(['x.json', '--json'], { 'x.json': failing(code) });
    expect(ended.err).toContain(sentence);
    expect([ended.code, ended.out]).toEqual([2, '']);
  });

  it('is text in another encoding', async () => {
    const { code, err } = await ran(['x.json'], {
      'x.json': new Uint8Array([0xff, 0xfe, 0x7b, 0]),
    });
    expect(err).toBe('‘x.json’ is not UTF-8 text. Save it as UTF-8.\n');
    expect(code).toBe(2);
  });
});

describe('size', () => {
  const filled = (bytes: number) => DROPS.padEnd(bytes, ' ');

  it('may reach the cap of the library', async () => {
    const { code } = await ran(['--check', '-'], { '-': filled(DOCUMENT_CAPS.bytes) });
    expect(code).toBe(0);
  });

  it('may not pass it, and says so', async () => {
    const { code, err } = await ran(['--check', '-'], { '-': filled(DOCUMENT_CAPS.bytes + 1) });
    const [problem] = [{ code: 'too-large', path: '', limits: [0, DOCUMENT_CAPS.bytes] }] as const;
    expect(err).toBe(`${explainProblem(problem).text}\n`);
    expect(code).toBe(1);
  });
});

it('shows a name from a document without letting it steer the terminal', async () => {
  const hostile = DROPS.replace('Pier', '\\u001b[2J\\u0007Pier');
  const { out } = await ran(['-'], { '-': hostile });
  expect(out.split('\n')[0]).toBe('�[2J�Pier drops');
  expect(JSON.parse((await ran(['-', '--json'], { '-': hostile })).out).name).toContain('\u001b');
});
