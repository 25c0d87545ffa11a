/** Every chance to buy within a plan: which parcel, what is in a pack by the time it is eaten, how many could be of use. */
import { civilDate, type DayNumber, weeksAfter } from '../calendar.ts';
import { type Sender, spreadLot } from '../larder/index.ts';
import {
  asSender,
  type Dispatch,
  dispatchesOf,
  headMassBetween,
  type Market,
  type Offer,
  recordOf,
  type Supplier,
} from '../orders/index.ts';
import type { Policy } from '../policy.ts';
import { GRAMS_PER_KG, MG_PER_GRAM, MINUTES_PER_HOUR } from '../units.ts';
import type { Period, Wish } from './answer.ts';
import type { Nodes } from './nodes.ts';
import { periodFrom } from './periods.ts';
import { buyingPlace, type Place } from './place-of.ts';
import type { PlanEater, PlanPack, PlanParcel, PlanPlace } from './problem.ts';
import { arriving, passingOf } from './standing.ts';
import { mostUseful } from './useful-packs.ts';

/** What a parcel of the problem stands for. */
export interface ParcelOf extends Dispatch {
  readonly supplier: Supplier;
  /** How it has delivered so far. */
  readonly sender: Sender;
  readonly offers: readonly Offer[];
}

export interface Buying {
  readonly today: DayNumber;
  readonly market: Market;
  readonly policy: Policy;
  readonly periods: readonly Period[];
  readonly places: readonly Place[];
  readonly nodes: readonly Nodes[];
  readonly planPlaces: readonly PlanPlace[];
  readonly eaters: readonly PlanEater[];
  readonly wishes: readonly Wish[];
}

export interface Bought {
  readonly parcels: readonly PlanParcel[];
  readonly of: readonly ParcelOf[];
}

const packKey = (offer: Offer, sent: DayNumber): string => `order:${offer.code}@${civilDate(sent)}`;
const parcelKey = (supplier: Supplier, sent: DayNumber): string => `${supplier.code}@${civilDate(sent)}`;

/** All parcels that can be ordered from today on and come within the periods. */
export function parcelsOf(buying: Buying): Bought {
  const { market } = buying;
  const all = market.suppliers.flatMap((supplier) => {
    const offers = market.offers.filter((offer) => offer.supplier === supplier.code);
    if (offers.length === 0) return [];
    const sender = senderFor(supplier, buying);
    return chancesOf(supplier, buying).map(
      (dispatch): ParcelOf => ({ ...dispatch, supplier, sender, offers }),
    );
  });
  const made = all.map((of) => ({ of, parcel: parcelFrom(of, buying) }));
  const useful = made.filter(({ parcel }) => parcel.packs.length > 0);
  return { parcels: useful.map(({ parcel }) => parcel), of: useful.map(({ of }) => of) };
}

/** A shop's prey is bought as it stands there, and never late. */
function senderFor(supplier: Supplier, { market, policy }: Buying): Sender {
  const sender = asSender(supplier, recordOf(supplier, market.arrivals, policy));
  return supplier.kind === 'shop' ? { ...sender, lateChance: 0 } : sender;
}

/** In the near periods every dispatch; later the first one a period, and those a wish names. */
function chancesOf(supplier: Supplier, { today, market, periods, wishes }: Buying): Dispatch[] {
  const last = periods[periods.length - 1] as Period;
  const all = dispatchesOf(supplier, { from: today, to: last.from + last.days }, market.weather);
  const seen = new Map<number, number>();
  return all.filter((dispatch) => {
    const period = periodFrom(periods, dispatch.comes);
    if (period < 0) return false;
    const named = wishes.some(({ key }) => key.endsWith(`@${civilDate(dispatch.sent)}`));
    const before = seen.get(period) ?? 0;
    seen.set(period, before + 1);
    return named || before === 0 || (period <= 1 && supplier.kind === 'parcel');
  });
}

function parcelFrom({ supplier, sender, offers, ...dispatch }: ParcelOf, buying: Buying): PlanParcel {
  const { market, policy, periods } = buying;
  const minutes = supplier.kind === 'shop' ? policy.planShopMinutes.value : policy.planParcelMinutes.value;
  const packs = offers.flatMap((offer) => packFrom(offer, { supplier, sender, dispatch, buying }));
  return {
    key: parcelKey(supplier, dispatch.sent),
    period: periodFrom(periods, dispatch.comes),
    paid: Math.max(0, weeksAfter(buying.today, dispatch.orderBy)),
    postageCents: supplier.postage.flatCents,
    labourCents: (minutes / MINUTES_PER_HOUR) * market.purse.hourCents,
    minimumCents: supplier.minimumCents,
    freeFromCents: supplier.postage.freeFromCents,
    packs,
  };
}

interface Packing {
  readonly supplier: Supplier;
  readonly sender: Sender;
  readonly dispatch: Dispatch;
  readonly buying: Buying;
}

/** A pack of an offer in a parcel; none where no place can take it or nobody could eat of it. */
function packFrom(offer: Offer, { supplier, sender, dispatch, buying }: Packing): PlanPack[] {
  const { policy, periods, places, nodes, wishes } = buying;
  const place = buyingPlace(places, offer.species, policy.speedLogSd.value);
  if (place < 0) return [];
  const into = places[place] as Place;
  const alive = offer.packHeads * (1 + sender.overCountShare) * (1 - sender.lossShare);
  const heads = spreadLot(into.chain, { heads: alive, fromMm: offer.fromMm, toMm: offer.toMm });
  const passing = passingOf(into, nodes[place] as Nodes, policy);
  const came = arriving(passing, { heads, day: dispatch.comes, periods });
  if (!came) return [];
  const key = packKey(offer, dispatch.sent);
  const wish = wishes.find((each) => each.key === key);
  const useful = mostUseful({ ...came, place }, buying);
  const there = offer.mostPacks ?? Number.POSITIVE_INFINITY;
  const asked = wish?.wish === 'pin' ? Math.min(there, wish.amount ?? 1) : 0;
  const isFixed = wish?.wish === 'pin' && wish.amount !== null;
  const most = wish?.wish === 'forbid' ? 0 : isFixed ? asked : Math.min(there, Math.max(useful, asked));
  if (most < 1) return [];
  return [
    {
      key,
      place,
      breaks: offer.prices.map(({ fromPacks, packCents: cents }) => ({ fromPacks, cents })),
      least: asked,
      most,
      lineCents: 0,
      weightCents: weightCents(offer, into, supplier),
      brings: came.heads,
    },
  ];
}

/** Postage of a pack by its live weight, as an order reckons it. */
function weightCents(offer: Offer, { chain }: Place, { postage }: Supplier): number {
  const { meanMg } = headMassBetween(offer, chain.species.massPerCubicMm.value);
  const grams = (offer.packHeads * meanMg) / MG_PER_GRAM;
  return (postage.perKgCents * grams) / GRAMS_PER_KG;
}
