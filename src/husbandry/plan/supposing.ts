/** The room as it would be if something were so: for a plan beside the plan. */
import type { Animal } from '../animals/index.ts';
import type { Bin } from '../larder/index.ts';
import { noMarket } from '../orders/index.ts';
import type { PlannedChange, Snapshot } from '../snapshot.ts';
import { PERCENT } from '../units.ts';
import type { Wish } from './answer.ts';
import type { Supposed } from './question.ts';

/** All that is supposed at once, in order. */
export const supposing = (snapshot: Snapshot, all: readonly Supposed[]): Snapshot =>
  all.reduce(suppose, snapshot);

/** Lines that are not to be, as wishes. */
export const barredBy = (all: readonly Supposed[]): Wish[] =>
  all.flatMap((each): Wish[] =>
    each.what === 'without' ? [{ key: each.key, wish: 'forbid', amount: null }] : [],
  );

function suppose(snapshot: Snapshot, supposed: Supposed, at: number): Snapshot {
  const market = snapshot.market ?? noMarket;
  switch (supposed.what) {
    case 'warmer':
      return warmer(snapshot, supposed.degrees);
    case 'away': {
      const { from, to } = supposed;
      const { calendar } = snapshot;
      return { ...snapshot, calendar: { ...calendar, absences: [...calendar.absences, { from, to }] } };
    }
    case 'sac':
      return withChange(
        snapshot,
        changeOf(snapshot, { ...supposed, what: 'sac', count: supposed.young, at }),
      );
    case 'sell':
      return sold(snapshot, supposed);
    case 'supplier stops': {
      const isOther = (code: string) => code !== supposed.supplier;
      const suppliers = market.suppliers.filter(({ code }) => isOther(code));
      const offers = market.offers.filter(({ supplier }) => isOther(supplier));
      return { ...snapshot, market: { ...market, suppliers, offers } };
    }
    case 'bin dies':
      return {
        ...snapshot,
        bins: snapshot.bins.map((bin) => (bin.code === supposed.bin ? lost(bin, snapshot) : bin)),
      };
    case 'price':
      return dearer(snapshot, supposed);
    case 'without':
      return snapshot;
    case 'weather': {
      const { from, to, tempC } = supposed;
      return { ...snapshot, market: { ...market, weather: [...market.weather, { from, to, tempC }] } };
    }
  }
}

/** Rooms, with all that stands at their temperature; a bin with a heater or a cold store of its own keeps to it. */
function warmer(snapshot: Snapshot, degrees: number): Snapshot {
  const rooms = snapshot.rooms.map((room) => ({
    ...room,
    dayTempC: room.dayTempC + degrees,
    nightTempC: room.nightTempC + degrees,
  }));
  return { ...snapshot, rooms };
}

/** With all its eggs: what a crash leaves behind is nothing to build on. */
const lost = (bin: Bin, { today }: Snapshot): Bin => ({
  ...bin,
  events: [{ kind: 'counted', day: today, heads: 0, fromMm: null, toMm: null }],
});

function dearer(snapshot: Snapshot, { offer, percent }: Extract<Supposed, { what: 'price' }>): Snapshot {
  const market = snapshot.market ?? noMarket;
  const offers = market.offers.map((each) =>
    each.code === offer
      ? {
          ...each,
          prices: each.prices.map((price) => ({
            ...price,
            packCents: Math.max(0, Math.round(price.packCents * (1 + percent / PERCENT))),
          })),
        }
      : each,
  );
  return { ...snapshot, market: { ...market, offers } };
}

interface Coming {
  readonly what: PlannedChange['kind'];
  readonly kind: string;
  readonly count: number;
  readonly day: number;
  readonly at: number;
}

function changeOf(snapshot: Snapshot, { what, kind, count, day, at }: Coming): PlannedChange {
  const of = snapshot.facts.kinds.get(kind);
  return {
    code: `~supposed ${at}`,
    kind: what,
    animalKind: kind,
    from: day,
    to: day,
    chance: 1,
    count,
    gaugeMm: of?.firstFeedingGaugeMm.value[0] ?? 1,
    room: snapshot.rooms[0]?.code ?? '',
    animal: null,
  };
}

const withChange = (snapshot: Snapshot, change: PlannedChange): Snapshot => ({
  ...snapshot,
  changes: [...snapshot.changes, change],
});

/** Animals of a kind that are not to leave already. */
export function staying({ animals, changes }: Snapshot, kind: string): readonly Animal[] {
  const leaving = new Set(changes.flatMap((change) => (change.kind === 'sale' ? [change.animal] : [])));
  return animals.filter((animal) => animal.kind === kind && !leaving.has(animal.code));
}

/** So many heads of a kind leave on a day, single animals first, then out of groups; who is to leave already does not twice. */
function sold(snapshot: Snapshot, { kind, heads, day }: Extract<Supposed, { what: 'sell' }>): Snapshot {
  const own = staying(snapshot, kind).toSorted((a, b) => a.count - b.count);
  const going: Animal[] = [];
  const parts: Animal[] = [];
  const remaining = new Map<string, Animal>();
  let left = heads;
  for (const animal of own) {
    if (left <= 0) break;
    const count = Math.min(left, animal.count);
    left -= count;
    if (count === animal.count) {
      going.push(animal);
      continue;
    }
    // A group may be sold from more than once.
    parts.push({ ...animal, code: `${animal.code}~sold${snapshot.changes.length}`, count });
    remaining.set(animal.code, { ...animal, count: animal.count - count });
  }
  const animals = [...snapshot.animals.map((animal) => remaining.get(animal.code) ?? animal), ...parts];
  const changes = [...going, ...parts].map(
    (animal, i): PlannedChange => ({
      ...changeOf(snapshot, { what: 'sale', kind, count: animal.count, day, at: i }),
      code: `~sold ${animal.code}`,
      gaugeMm: animal.gaugeMm,
      room: animal.room,
      animal: animal.code,
    }),
  );
  return {
    ...snapshot,
    animals: remaining.size > 0 ? animals : snapshot.animals,
    changes: [...snapshot.changes, ...changes],
  };
}
