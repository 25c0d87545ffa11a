/** Pins that contradict a supplier's least order or what may be spent: which they are, in words, and without which a plan can be. */
import { spokenDay } from '../supply/index.ts';
import { plural } from '../words.ts';
import type { Obstacle, Wish } from './answer.ts';
import type { LaidOut } from './lay-out.ts';
import { parcelCost } from './parcel-cost.ts';
import type { PlanParcel } from './problem.ts';

export interface WishTrouble {
  readonly obstacles: readonly Obstacle[];
  /** Wishes that can be kept together. */
  readonly kept: readonly Wish[];
}

/** All wishes where they can be kept; else without the pins that stand against each other or against a limit. */
export function wishTrouble(laid: LaidOut, wishes: readonly Wish[]): WishTrouble {
  const found = [...belowMinimum(laid), ...overBudget(laid)];
  const dropped = new Set(found.flatMap(({ pins }) => pins));
  return {
    obstacles: found.map(({ obstacle }) => obstacle),
    kept: wishes.filter(({ key, wish }) => wish === 'forbid' || !dropped.has(key)),
  };
}

interface Found {
  readonly obstacle: Obstacle;
  readonly pins: readonly string[];
}

const pinnedIn = ({ packs }: PlanParcel): string[] =>
  packs.filter(({ least }) => least > 0).map(({ key }) => key);

/** '3 packs of house crickets, small, sent on Monday 14 December', for each pin of a parcel. */
function pinsSaid({ problem, parcels, snapshot }: LaidOut, at: number): string[] {
  const parcel = problem.parcels[at] as PlanParcel;
  const of = parcels[at] as LaidOut['parcels'][number];
  return parcel.packs
    .filter(({ least }) => least > 0)
    .map(({ key, least }) => {
      const offer = of.offers.find(({ code }) => key.startsWith(`order:${code}@`));
      const prey = plural(snapshot.facts.species.get(offer?.species ?? '')?.commonName ?? 'prey');
      return `${least} ${least === 1 ? 'pack' : 'packs'} of ${prey}, ${offer?.size}, sent on ${spokenDay(of.sent)}`;
    });
}

/** Parcels whose pins are below the least order, and nothing else may be added. */
function belowMinimum(laid: LaidOut): Found[] {
  const { problem, parcels } = laid;
  return problem.parcels.flatMap((parcel, i): Found[] => {
    const pins = pinnedIn(parcel);
    const most = parcelCost(
      parcel,
      parcel.packs.map((pack) => Math.floor(pack.most)),
    ).goods;
    if (pins.length === 0 || most >= parcel.minimumCents) return [];
    const name = parcels[i]?.supplier.name ?? '';
    return [
      {
        pins,
        obstacle: {
          kind: 'forbidden',
          sentence: `You pinned ${pinsSaid(laid, i).join(' and ')}. That is below the least order of ${name}, and nothing else may go with it: the pin is left out.`,
          groups: [],
        },
      },
    ];
  });
}

/** Weeks in which pins cost more than may be spent. */
function overBudget(laid: LaidOut): Found[] {
  const { problem } = laid;
  return Array.from(problem.budget).flatMap((most, t): Found[] => {
    const paid = problem.parcels.filter((parcel) => parcel.paid === t && pinnedIn(parcel).length > 0);
    const cents = paid.reduce((sum, parcel) => {
      const { goods, postage } = parcelCost(
        parcel,
        parcel.packs.map(({ least }) => least),
      );
      return sum + Math.max(goods, parcel.minimumCents) + postage;
    }, 0);
    if (cents <= most) return [];
    const pins = paid.flatMap(pinnedIn);
    const said = paid.flatMap((parcel) => pinsSaid(laid, problem.parcels.indexOf(parcel)));
    return [
      {
        pins,
        obstacle: {
          kind: 'budget',
          sentence: `You pinned ${said.join(' and ')}. Together they cost more than may be spent in a week: the pins are left out.`,
          groups: [],
        },
      },
    ];
  });
}
