import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type PlanKey, planKeys } from './plan-types.js';

const page = readFileSync(
  new URL('../../site/src/content/docs/evidence/decisions/0001-plan-keys.md', import.meta.url),
  'utf8',
);

/** A section of the page, its heading and the rows of its tables. */
type Section = {
  readonly groups: readonly string[];
  readonly text: string;
  readonly rows: readonly string[];
};

const quoted = (text: string): readonly string[] =>
  [...text.matchAll(/`([^`]+)`/g)].map(([, inside = '']) => inside);

const sections: readonly Section[] = page
  .split(/^### /m)
  .slice(1)
  .map((section) => {
    const [text = ''] = section.split(/^## /m);
    const [heading = ''] = text.split('\n', 1);
    const rows = text
      .split('\n')
      .filter((row) => row.startsWith('| `'))
      .flatMap((row) => quoted(row.split('|')[1] ?? ''));
    return { groups: quoted(heading), text, rows };
  });

const whole = sections.find(({ text }) => text.startsWith('The whole'));
const lists = sections.find(({ text }) => text.startsWith('The lists'));

/** The section that tells of a group. */
function sectionOf(group: string): Section | undefined {
  return (
    sections.find(({ groups }) => groups.includes(group)) ??
    [lists, whole].find((section) => section?.rows.includes(group))
  );
}

/** The keys a section's tables name, from their group on. */
function namedKeys({ groups, rows }: Section): readonly (readonly [string, string])[] {
  const [only = ''] = groups;
  return rows.map((row) => {
    const [first = '', second] = row.split('.');
    return groups.length === 1 ? [only, row] : [first, second ?? ''];
  });
}

/** Two places print the same label: its keys are told once. */
function asTold([group, ...below]: PlanKey): PlanKey {
  return group === 'label' && below.length > 0 ? [group, ...below.slice(1)] : [group, ...below];
}

const keys = planKeys()
  .filter((key) => key[0] !== 'label' || key.length !== 2)
  .map(asTold);
const wordsOf = (text: string): ReadonlySet<string> =>
  new Set(quoted(text).flatMap((inside) => inside.split(/[^A-Za-z0-9-]+/)));

describe('decision 0001', () => {
  it('reads the types it is held against', () => {
    expect(keys.length).toBeGreaterThan(150);
    expect(keys).toContainEqual(['cooking', 'moments', 'atMin']);
    expect(keys).toContainEqual(['label', 'claims', 'because']);
  });

  it('names every group of a plan', () => {
    const groups = keys.filter((key) => key.length === 1).map(([group]) => group);
    expect(groups.filter((group) => !whole?.rows.includes(group))).toEqual([]);
    expect(groups.filter((group) => sectionOf(group) === undefined)).toEqual([]);
  });

  it('names every key of a plan in the section of its group', () => {
    const missing = keys.filter(([group, ...below]) => {
      const told = wordsOf(sectionOf(group)?.text ?? '');
      return !below.every((name) => told.has(name));
    });
    expect(missing.map((key) => key.join('.'))).toEqual([]);
  });

  it('names no key a plan does not have', () => {
    const known = new Set(keys.map((key) => key.slice(0, 2).join('.')));
    const groups = new Set(keys.map(([group]) => group));
    const strange = sections
      .filter(({ groups: of }) => of.length > 0)
      .flatMap(namedKeys)
      .map((key) => key.join('.'))
      .filter((key) => !known.has(key));
    expect(strange).toEqual([]);
    expect(
      [...(whole?.rows ?? []), ...(lists?.rows ?? [])].filter((row) => !groups.has(row)),
    ).toEqual([]);
  });

  it('names every step and every moment the types know', () => {
    const types = ['steps', 'cooking'].map((file) =>
      readFileSync(
        new URL(`../../packages/core/src/job/plan/types/${file}.ts`, import.meta.url),
        'utf8',
      ),
    );
    for (const type of ['StepId', 'MomentId']) {
      const declared = types
        .map((text) => new RegExp(`export type ${type} =([^;]+);`).exec(text)?.[1] ?? '')
        .join('');
      const ids = [...declared.matchAll(/'([^']+)'/g)].map(([, id = '']) => id);
      expect(ids.length).toBeGreaterThan(5);
      expect(ids.filter((id) => !page.includes(`\`${id}\``))).toEqual([]);
    }
  });
});
