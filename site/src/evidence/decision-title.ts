import { getEntry } from 'astro:content';

/** The title of a decision record, so that a link says what it leads to. */
export async function decisionTitle(slug: string): Promise<string> {
  const entry = await getEntry('docs', `evidence/decisions/${slug}`);
  if (entry === undefined) throw new Error(`There is no decision record ${slug}.`);
  return entry.data.title;
}
