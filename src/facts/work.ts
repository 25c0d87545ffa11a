/** A work that was read, as the tables of sources name it. */

export interface Work {
  readonly kind: 'work';
  /** As far as the copy read shows it. */
  readonly author: string;
  readonly year: number | 'year not shown';
  readonly title: string;
  readonly where?: string;
  readonly doi?: string;
  readonly url?: string;
  /** How much of it was read: the data themselves, the abstract, or a page or excerpt. */
  readonly read: 'data' | 'abstract' | 'page';
}

export const work = (entry: Omit<Work, 'kind'>): Work => ({ kind: 'work', ...entry });

/** In place of a year that the copy read does not show. */
export const NOT_SHOWN = 'year not shown';
