/** Which demand groups an answer speaks of, and what it says of each whatever the question was. */
import type { DemandGroup, Roster } from '../appetite/index.ts';
import type { LengthWindow } from '../prey/index.ts';
import type { GroupAnswer } from './answer.ts';
import type { Menu } from './menu.ts';
import type { Tally } from './tally.ts';

export type GroupSaid = Pick<
  GroupAnswer,
  'key' | 'name' | 'urgency' | 'window' | 'species' | 'animals' | 'heads'
>;

/** Groups that anybody is in today or joins within the horizon, in the order in which they are served. */
export const groupsShown = ({ order, groups }: Menu, { due }: Tally): number[] =>
  Array.from(order).filter((g) => (due[g] as number) > 0 || (groups[g] as DemandGroup).animals.length > 0);

export const groupSaid = (roster: Roster, group: DemandGroup): GroupSaid => ({
  key: group.key,
  name: group.name,
  urgency: group.rule.urgency,
  window: shownWindow(group),
  species: [...group.windows.keys()],
  animals: group.animals,
  heads: group.animals.reduce((sum, code) => sum + (roster.heads[roster.codes.indexOf(code)] as number), 0),
});

/** The window of the species the group may eat longest: what is printed beside its name. */
function shownWindow(group: DemandGroup): GroupAnswer['window'] {
  const windows = [...group.windows.values()].sort((a, b) => b.maxMm - a.maxMm);
  const { minMm, idealMm, liveMaxMm, maxMm } = (windows[0] ?? {
    minMm: 0,
    idealMm: 0,
    liveMaxMm: 0,
    maxMm: 0,
  }) as LengthWindow;
  return { minMm, idealMm, killFirstAboveMm: liveMaxMm < maxMm ? liveMaxMm : null, maxMm };
}
