/** What a source is and what we did with it. */
export type Source = {
  /** Who wrote it; empty where the source is not a publication. */
  readonly authors: string;
  /** Year of publication, or `n.d.`. */
  readonly year: string;
  readonly title: string;
  /** Journal, book, series or publisher with volume and page. */
  readonly container?: string;
  /** A lasting public address: a DOI, a publisher's, a government's or a university's page. */
  readonly address?: string;
  /** What kind of source it is. */
  readonly kind: 'publication' | 'practice' | 'derivation' | 'assumption';
  /** What we did: read it, saw it quoted, recalled it, computed it. */
  readonly did: string;
};
