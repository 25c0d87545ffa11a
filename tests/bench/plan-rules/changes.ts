/** Changes the search with foresight tries on a plan. */
import { uniform } from '../plan-worlds/dice.ts';
import type { Rest } from '../plan-worlds/log.ts';
import { OFFERS, type Offer } from '../plan-worlds/sellers.ts';
import { type Packs, placeOf } from './packs.ts';

export interface Changed {
  readonly packs: Packs;
  /** First week that differs; -1 where nothing does. */
  readonly week: number;
}

interface Draft {
  readonly weeks: number;
  readonly packs: Uint16Array;
  readonly rests: (readonly Rest[])[];
  readonly colonies: number;
  readonly draw: (n: number) => number;
}

type Change = (draft: Draft) => number;

/** One change drawn by the key, in a room with so many colonies. */
export function changed(from: Packs, key: number, colonies: number): Changed {
  const packs = from.packs.slice();
  const rests = [...from.rests];
  const draw = (n: number) => uniform(key, n);
  const among = colonies > 0 ? [...CHANGES, resting, resting] : CHANGES;
  const change = among[Math.floor(draw(0) * among.length)] as Change;
  return {
    packs: { ...from, packs, rests },
    week: change({ weeks: from.weeks, packs, rests, colonies, draw }),
  };
}

const WEEK = 7;
const LONGEST_REST = 6;

/** A colony is left alone for some weeks, or fed from in weeks in which it was not. */
const resting: Change = ({ weeks, rests, colonies, draw }) => {
  const tub = `colony ${1 + Math.floor(draw(1) * colonies)}`;
  const from = Math.floor(draw(2) * weeks);
  const to = Math.min(weeks, from + 1 + Math.floor(draw(3) * LONGEST_REST));
  const ends = draw(4) < 0.5;
  for (let week = from; week < to; week += 1) {
    const others = (rests[week] ?? []).filter((rest) => rest.tub !== tub);
    rests[week] = ends ? others : [...others, { tub, until: (week + 1) * WEEK }];
  }
  return from;
};

/** A place of the plan where something is ordered. */
function anyOrder({ packs, draw }: Draft): { week: number; offer: number; at: number } | null {
  const places = Array.from(packs.keys()).filter((at) => (packs[at] as number) > 0);
  const at = places[Math.floor(draw(1) * places.length)];
  return at === undefined ? null : { at, week: Math.floor(at / OFFERS.length), offer: at % OFFERS.length };
}

/** Some packs fewer: a tenth of them or one. */
const fewer: Change = (draft) => {
  const order = anyOrder(draft);
  if (!order) return -1;
  const { packs } = draft;
  packs[order.at] = Math.max(0, (packs[order.at] as number) - part(draft, packs[order.at] as number));
  return order.week;
};

const more: Change = (draft) => {
  const order = anyOrder(draft);
  if (!order) return -1;
  const { packs } = draft;
  packs[order.at] = (packs[order.at] as number) + part(draft, packs[order.at] as number);
  return order.week;
};

const part = ({ draw }: Draft, packs: number): number =>
  draw(2) < 0.5 ? 1 : Math.max(1, Math.round(packs * (draw(3) < 0.5 ? 0.15 : 0.4)));

const dropped: Change = (draft) => {
  const order = anyOrder(draft);
  if (!order) return -1;
  draft.packs[order.at] = 0;
  return order.week;
};

/** An order, or some of it, goes into a week nearby. */
const shifted: Change = (draft) => {
  const order = anyOrder(draft);
  if (!order) return -1;
  const { packs, draw, weeks } = draft;
  const to = order.week + nearby(draw);
  if (to < 0 || to >= weeks) return -1;
  const n = draw(4) < 0.5 ? (packs[order.at] as number) : part(draft, packs[order.at] as number);
  move(packs, { from: order.at, to: placeOf(to, order.offer), n: Math.min(n, packs[order.at] as number) });
  return Math.min(order.week, to);
};

function move(packs: Uint16Array, { from, to, n }: { from: number; to: number; n: number }): void {
  packs[from] = (packs[from] as number) - n;
  packs[to] = (packs[to] as number) + n;
}

const nearby = (draw: Draft['draw']): number => [-2, -1, -1, 1, 1, 2][Math.floor(draw(5) * 6)] as number;

/** All that a seller sends in a week goes into a week nearby: one parcel fewer, or another rhythm. */
const together: Change = (draft) => {
  const order = anyOrder(draft);
  if (!order) return -1;
  const { packs, draw, weeks } = draft;
  const to = order.week + nearby(draw);
  if (to < 0 || to >= weeks) return -1;
  const { seller } = OFFERS[order.offer] as Offer;
  OFFERS.forEach((each, offer) => {
    const from = placeOf(order.week, offer);
    if (each.seller === seller) move(packs, { from, to: placeOf(to, offer), n: packs[from] as number });
  });
  return Math.min(order.week, to);
};

/** The same heads, or as much prey, by another offer. */
const otherwise: Change = (draft) => {
  const order = anyOrder(draft);
  if (!order) return -1;
  const { packs, draw } = draft;
  const offer = Math.floor(draw(6) * OFFERS.length);
  const [old, other] = [OFFERS[order.offer] as Offer, OFFERS[offer] as Offer];
  const n = Math.max(1, Math.round(((packs[order.at] as number) * old.packHeads) / other.packHeads));
  packs[order.at] = 0;
  const at = placeOf(order.week, offer);
  packs[at] = (packs[at] as number) + n;
  return order.week;
};

/** A pack of anything, in a week in which its seller sends or in any. */
const added: Change = (draft) => {
  const { packs, draw, weeks } = draft;
  const order = anyOrder(draft);
  const week = order && draw(7) < 0.7 ? order.week : Math.floor(draw(8) * weeks);
  const at = placeOf(week, Math.floor(draw(9) * OFFERS.length));
  packs[at] = (packs[at] as number) + 1;
  return week;
};

/** Everything a seller sends in a week is left out. */
const cancelled: Change = (draft) => {
  const order = anyOrder(draft);
  if (!order) return -1;
  const { seller } = OFFERS[order.offer] as Offer;
  OFFERS.forEach((each, offer) => {
    if (each.seller === seller) draft.packs[placeOf(order.week, offer)] = 0;
  });
  return order.week;
};

const CHANGES: readonly Change[] = [
  fewer,
  fewer,
  fewer,
  more,
  dropped,
  shifted,
  shifted,
  together,
  together,
  otherwise,
  added,
  cancelled,
];
