import type { Page } from 'playwright-core';

/** What is wrong with a page as it stands, each as one line. */
export type Findings = readonly string[];

/** Ids, labels, overflow and, by axe, everything it knows. Runs in the page. */
export async function lookOver(page: Page, axe: string): Promise<Findings> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe);
  return page.evaluate(async () => {
    const found: string[] = [];
    const ids = [...document.querySelectorAll('[id]')].map(({ id }) => id);
    const twice = ids.filter((id, at) => ids.indexOf(id) !== at);
    if (twice.length > 0) found.push(`ids that stand twice: ${[...new Set(twice)].join(', ')}`);

    for (const control of document.querySelectorAll<HTMLInputElement>('input, select, textarea')) {
      if (control.type === 'hidden' || control.closest('[hidden], dialog:not([open])') !== null)
        continue;
      const named =
        (control.labels?.length ?? 0) +
        (control.hasAttribute('aria-label') ? 1 : 0) +
        (control.hasAttribute('aria-labelledby') ? 1 : 0);
      if (named !== 1) found.push(`#${control.id || control.name} has ${named} labels`);
    }

    const sideways = document.documentElement.scrollWidth - document.documentElement.clientWidth;
    if (sideways > 0) found.push(`scrolls ${sideways} px sideways`);

    type Result = { readonly id: string; readonly nodes: readonly { readonly target: unknown }[] };
    type Axe = {
      run: (
        context: Document,
        options: object,
      ) => Promise<{ violations: readonly Result[]; incomplete: readonly Result[] }>;
    };
    const { violations, incomplete } = await (window as unknown as { axe: Axe }).axe.run(document, {
      resultTypes: ['violations', 'incomplete'],
    });
    const said = ({ id, nodes }: Result): string =>
      `axe: ${id} at ${nodes
        .slice(0, 3)
        .map(({ target }) => String(target))
        .join(' and ')}`;
    const unsure = ['duplicate-id-aria', 'form-field-multiple-labels'];
    found.push(
      ...violations.map(said),
      ...incomplete.filter(({ id }) => unsure.includes(id)).map(said),
    );
    return found;
  });
}
