/** How many of the Book's numbers rest on what: published works, practice, memory, the keeper. */
import type { Sourced, Status } from '../husbandry/sourced.ts';

export type Standing = Readonly<Record<Status, number>>;

const isSourced = (value: object): value is Sourced<unknown> =>
  'value' in value && 'unit' in value && 'source' in value && 'status' in value;

/** Counts the sourced numbers anywhere in plain data. */
export function standingOf(data: unknown): Standing {
  const counts = { published: 0, 'common practice': 0, 'from memory': 0, yours: 0 };
  const walk = (value: unknown): void => {
    if (value === null || typeof value !== 'object') return;
    if (isSourced(value)) counts[value.status] += 1;
    else for (const each of Object.values(value)) walk(each);
  };
  walk(data);
  return counts;
}
