import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type AdviceCode, planBatch, type Severity } from 'vitrose';
import { readBatch } from 'vitrose/documents';

const here = new URL('.', import.meta.url);
const ORDER: readonly Severity[] = ['note', 'may-disappoint', 'will-fail', 'danger'];

type Raised = { readonly code: AdviceCode; readonly severity: Severity };
const expected: Readonly<Record<string, Raised>> = JSON.parse(
  readFileSync(new URL('bad-expected.json', here), 'utf8'),
);

function namesIn(folder: 'good' | 'bad'): readonly string[] {
  return readdirSync(new URL(`${folder}/`, here)).map((file) => file.replace(/\.json$/, ''));
}

function planOf(folder: 'good' | 'bad', name: string) {
  const read = readBatch(readFileSync(new URL(`${folder}/${name}.json`, here), 'utf8'));
  if (read.kind === 'problems') throw new Error(JSON.stringify(read.problems));
  const result = planBatch(read.batch);
  if (result.kind === 'refused') throw new Error(JSON.stringify(result.problems));
  return result.plan;
}

describe('batches known to be good pass quietly', () => {
  it.each(namesIn('good'))('%s raises nothing above a note', (name) => {
    const loud = planOf('good', name).advice.filter(({ severity }) => severity !== 'note');
    expect(loud.map(({ code, severity, numbers }) => ({ code, severity, numbers }))).toEqual([]);
  });
});

describe('batches known to be bad are told so', () => {
  it('names what each of them must raise', () => {
    expect(Object.keys(expected).sort()).toEqual([...namesIn('bad')].sort());
  });

  it.each(Object.entries(expected))('%s is told what is wrong', (name, { code, severity }) => {
    const { advice } = planOf('bad', name);
    const raised = advice.find((one) => one.code === code);
    expect(advice.map((one) => one.code)).toContain(code);
    expect(ORDER.indexOf(raised?.severity ?? 'note')).toBeGreaterThanOrEqual(
      ORDER.indexOf(severity),
    );
  });
});
