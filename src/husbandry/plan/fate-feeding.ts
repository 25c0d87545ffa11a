/** One group fed in one period of one fate, as it is in the mean (lived.ts): best first, caps priced, the rest late or missed. */
import type { Cents } from '../orders/index.ts';
import type { Room } from './fate-room.ts';
import type { EaterLaid } from './living.ts';
import type { PlanEater } from './problem.ts';

export interface Feeding {
  readonly fate: number;
  readonly t: number;
  /** Whether anything is set aside. */
  readonly hasAside: boolean;
}

/** Feeds one eater; what waits and what is missed is priced. */
export function feed(room: Room, e: number, { fate, t, hasAside }: Feeding): Cents {
  const { fates, living, late, waits, noted } = room;
  const { lateCents, missedCents } = living.problem.eaters[e] as PlanEater;
  const at = (fate * fates.periods + t) * fates.eaters + e;
  const asks = fates.wanted[at] as number;
  const owed = asks + (late[e] as number);
  if (owed <= 0) return 0;
  room.wants[0] = owed;
  let given = isCapped(room, e) ? capped(room, e, asks) : plain(room, e, room.there);
  if (hasAside) given += plain(room, e, room.aside);
  const wants = room.wants[0] as number;
  const waiting = Math.min(wants, waits[at] as number);
  late[e] = waiting;
  if (noted) {
    const to = t * fates.eaters + e;
    noted.late[to] = (noted.late[to] as number) + waiting;
    noted.missedIn[at] = wants - waiting;
  }
  return given + waiting * lateCents + (wants - waiting) * missedCents;
}

/** Whether there is anything of which it may have no more than a share. */
function isCapped({ living, there }: Room, e: number): boolean {
  const { capped: nodes } = living.eaters[e] as EaterLaid;
  for (let k = 0; k < nodes.length; k++) if ((there[nodes[k] as number] as number) > 0) return true;
  return false;
}

/** Gives an eater without caps what it goes without, from its best node on, out of heads by node; the rest is left in `wants`. */
function plain({ living, wants: left }: Room, e: number, from: Float64Array): Cents {
  const { node, items, cents } = living.eaters[e] as EaterLaid;
  let wants = left[0] as number;
  let cost = 0;
  for (let k = 0; k < node.length; k++) {
    const n = node[k] as number;
    const heads = from[n] as number;
    if (heads <= 0) continue;
    const worth = items[k] as number;
    const taken = Math.min(heads, wants / worth);
    from[n] = heads - taken;
    cost += taken * (cents[k] as number);
    if (taken < heads) {
      wants = 0;
      break;
    }
    wants -= taken * worth;
  }
  left[0] = Math.max(0, wants);
  return cost;
}

/** The same where shares of some prey are capped: within the caps first, then beyond them, which is priced. */
function capped({ living, there, late, wants: left }: Room, e: number, asks: number): Cents {
  const { caps } = living.problem.eaters[e] as PlanEater;
  const { node, items, cents, cap, capRoom } = living.eaters[e] as EaterLaid;
  let wants = asks + (late[e] as number);
  let cost = 0;
  for (let c = 0; c < capRoom.length; c++) capRoom[c] = (caps[c]?.share ?? 1) * asks;
  for (let round = 0; round < 2 && wants > 0; round++) {
    for (let k = 0; k < node.length && wants > 0; k++) {
      const heads = there[node[k] as number] as number;
      const of = cap[k] as number;
      const most = round === 0 && of >= 0 ? Math.min(wants, capRoom[of] as number) : wants;
      if (heads <= 0 || most <= 0) continue;
      const taken = Math.min(heads, most / (items[k] as number));
      there[node[k] as number] = heads - taken;
      wants -= taken * (items[k] as number);
      cost += taken * (cents[k] as number);
      if (of >= 0) capRoom[of] = (capRoom[of] as number) - taken * (items[k] as number);
    }
  }
  for (let c = 0; c < capRoom.length; c++)
    cost += Math.max(0, -(capRoom[c] as number)) * (caps[c]?.cents ?? 0);
  left[0] = Math.max(0, wants);
  return cost;
}
