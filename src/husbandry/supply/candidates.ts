/** The acts a keeper could take, each as a changed snapshot or run. */
import type { DemandGroup } from '../appetite/index.ts';
import type { Snapshot } from '../snapshot.ts';
import { shopping, startingCups } from './buying-acts.ts';
import type { Asking, Candidate } from './candidate.ts';
import { cutting, harvesting, moving, stretching } from './care-acts.ts';
import type { CoverOptions, Judged } from './cover.ts';
import { bringingForward, enlarging } from './delivery-acts.ts';

/** Every feasible act, what costs nothing first. */
export function candidatesOf(snapshot: Snapshot, judged: Judged, options: CoverOptions): Candidate[] {
  const needy = needyGroups(judged, snapshot.facts.policy.actGroups.value);
  const fixed = { ...options, days: judged.days };
  const asked: Asking = { snapshot: inOrderOfCodes(snapshot), needy, options: fixed };
  return [
    ...cutting(asked),
    ...stretching(asked, judged),
    ...moving(asked),
    ...harvesting(asked),
    ...bringingForward(asked),
    ...enlarging(asked),
    ...shopping(asked),
    ...startingCups(asked),
  ];
}

const byCode = <T extends { readonly code: string }>(list: readonly T[]): T[] =>
  [...list].sort((a, b) => (a.code < b.code ? -1 : 1));

/** Acts that help alike are told apart by codes, never by the order of lists. */
const inOrderOfCodes = (snapshot: Snapshot): Snapshot => ({
  ...snapshot,
  bins: byCode(snapshot.bins),
  deliveries: byCode(snapshot.deliveries),
  rooms: byCode(snapshot.rooms),
});

/** Groups with most danger, then most missed, then most late meals; those without any of them are not needy. */
function needyGroups({ tally, menu }: Judged, most: number): DemandGroup[] {
  const need = (g: number) =>
    [tally.dangers[g] as number, tally.missed[g] as number, tally.late[g] as number] as const;
  return menu.groups
    .map((group, g) => ({ group, need: need(g) }))
    .filter(({ need: [dangers, missed, late] }) => dangers + missed + late > 0)
    .sort(
      (a, b) =>
        b.need[0] - a.need[0] ||
        b.need[1] - a.need[1] ||
        b.need[2] - a.need[2] ||
        (a.group.key < b.group.key ? -1 : 1),
    )
    .slice(0, most)
    .map(({ group }) => group);
}
