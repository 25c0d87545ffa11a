/** What a group can take tonight in place of what it lacks. */
import type { ShortGroup } from '../../src/husbandry/supply/index.ts';
import { listed, roundly } from '../format.ts';
import { type Names, nameOf } from '../names.ts';

const MOST_NAMED = 4;

export const insteadWords = ({ instead }: Pick<ShortGroup, 'instead'>, names: Names): string =>
  instead.length === 0
    ? 'Nothing else here fits them.'
    : `They can take ${listed(
        instead
          .slice(0, MOST_NAMED)
          .map(({ bin, heads }) => `about ${roundly(heads)} from ${nameOf(names.bins, bin)}`),
      )}.`;
