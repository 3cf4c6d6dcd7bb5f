import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { bundledBytes } from './bundle-size.js';
import { builtFile, ENTRIES, type Entry } from './entries.js';
import {
  CEILINGS,
  CLASSES,
  CONSTANT_BUDGET_BYTES,
  FLOOR_LIMIT_BYTES,
  ROOM,
  WHOLE_BUDGET_BYTES,
} from './size-limits.js';

type Measured = {
  readonly name: string;
  readonly class: string;
  readonly bytes: number;
  /** What was wanted. */
  readonly budgetBytes: number;
  /** What fails: the budget, or the ceiling where the budget is missed and the reason is written down. */
  readonly limitBytes: number;
};

function limited(name: string, title: string, bytes: number, budgetBytes: number): Measured {
  const ceiling = CEILINGS[name];
  const limitBytes = ceiling === undefined ? budgetBytes : ceiling.measuredBytes * ROOM;
  return { name, class: title, bytes, budgetBytes, limitBytes: Math.round(limitBytes) };
}

async function measureEach(entry: Entry): Promise<readonly Measured[]> {
  const exported: Record<string, unknown> = await import(
    pathToFileURL(builtFile(`${entry}.js`)).href
  );
  const measured: Measured[] = [];
  for (const name of Object.keys(exported).sort()) {
    const [title, budget] =
      typeof exported[name] === 'function'
        ? (Object.entries(CLASSES).find(
            ([, one]) => one.entry === entry && one.names.includes(name),
          ) ?? ['unlisted', { budgetBytes: 0 }])
        : ['constant', { budgetBytes: CONSTANT_BUDGET_BYTES[entry] }];
    measured.push(limited(name, title, await bundledBytes(entry, [name]), budget.budgetBytes));
  }
  return measured;
}

/** Largest first: bytes, budget, and where it is missed by how much, up to which ceiling and why. */
const table = (rows: readonly Measured[]): string =>
  [...rows]
    .sort((a, b) => b.bytes - a.bytes)
    .map((row) => {
      const figures = `${String(row.bytes).padStart(7)} B of ${String(row.budgetBytes).padStart(6)}`;
      const over = row.bytes - row.budgetBytes;
      const missed = `  OVER BY ${over}, ceiling ${row.limitBytes}: ${CEILINGS[row.name]?.why ?? 'no reason given'}`;
      return `${figures}  ${row.name} (${row.class})${over > 0 ? missed : ''}`;
    })
    .join('\n');

describe.each(ENTRIES)('one import of %s', async (entry) => {
  const rows = await measureEach(entry);
  const whole = limited(
    `${entry}/*`,
    'whole',
    await bundledBytes(entry, '*'),
    WHOLE_BUDGET_BYTES[entry],
  );

  it('has a class for every function, and a function for every name', () => {
    console.log(table([whole, ...rows]));
    expect(rows.filter((row) => row.class === 'unlisted').map((row) => row.name)).toEqual([]);
    const exported = rows.map((row) => row.name);
    const listed = Object.values(CLASSES).filter((one) => one.entry === entry);
    const gone = listed.flatMap((one) => one.names).filter((name) => !exported.includes(name));
    expect(gone).toEqual([]);
  });

  it('costs no more than its class allows, or than its ceiling where it is over', () => {
    const tooLarge = rows.filter((row) => row.class !== 'unlisted' && row.bytes > row.limitBytes);
    expect(tooLarge).toEqual([]);
  });

  it('leaves the whole within its limit', () => {
    expect(whole.bytes).toBeLessThanOrEqual(whole.limitBytes);
  });

  it('has a ceiling only where a budget is missed, and close over what is measured', () => {
    const raised = [whole, ...rows].filter((row) => CEILINGS[row.name] !== undefined);
    expect(raised.filter((row) => row.bytes <= row.budgetBytes)).toEqual([]);
    // What has become smaller stays so: its ceiling comes down with it.
    expect(raised.filter((row) => row.limitBytes > row.bytes * ROOM * ROOM)).toEqual([]);
  });
});

it('makes nobody pay for what others use', async () => {
  const rows = await measureEach('index');
  expect(Math.min(...rows.map((row) => row.bytes))).toBeLessThanOrEqual(FLOOR_LIMIT_BYTES);
});
