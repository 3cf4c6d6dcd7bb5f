/**
 * An address of the site, under whatever base it is served from.
 *
 * @param path - From the root, without a leading slash: `evidence/water/`.
 */
export function href(path: string): string {
  return `${import.meta.env.BASE_URL.replace(/\/$/, '')}/${path}`;
}
