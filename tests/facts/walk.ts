/** Walks plain data and yields every sourced number in it with its path, for tests over whole tables. */
import type { Sourced } from '../../src/husbandry/sourced.ts';

const isSourced = (value: object): value is Sourced<unknown> =>
  'value' in value && 'unit' in value && 'source' in value && 'status' in value;

export function* sourcedIn(data: unknown, path = ''): Generator<readonly [string, Sourced<unknown>]> {
  if (data === null || typeof data !== 'object') return;
  if (isSourced(data)) {
    yield [path, data];
    return;
  }
  for (const [key, value] of Object.entries(data)) yield* sourcedIn(value, `${path}/${key}`);
}
