/** The acts a keeper could take, each as a changed snapshot or run; and the one that helps most. */
import type { DemandGroup } from '../appetite/groups.ts';
import { type DayNumber, weekday } from '../calendar.ts';
import type { Bin, ExpectedDelivery } from '../larder/bin.ts';
import type { PreySpecies, SizeClass } from '../prey/species.ts';
import type { Room, Snapshot } from '../snapshot.ts';
import { plural } from '../words.ts';
import type { Act, ActKind } from './answer.ts';
import { type CoverOptions, type Judged, judge, type Kept } from './cover.ts';
import { nothingLaid } from './stock.ts';
import { nothingMissed, shortfallOf } from './summary.ts';
import { dayName } from './wording.ts';

/** An act that could be taken: what the keeper would say, and the room as it would then be. */
export interface Candidate {
  readonly kind: ActKind;
  readonly sentence: string;
  readonly bin: string | null;
  readonly species: string | null;
  readonly animals: readonly string[];
  readonly snapshot: Snapshot;
  readonly options: CoverOptions;
}

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

interface Asking {
  readonly snapshot: Snapshot;
  readonly needy: readonly DemandGroup[];
  readonly options: CoverOptions;
}

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

function cutting({ snapshot, needy, options }: Asking): Candidate[] {
  const groups = needy.filter(({ rule }) => rule.portions.value > 1);
  if (groups.length === 0) return [];
  const animals = groups.flatMap((group) => group.animals);
  const sentence = `Kill and cut larger prey into portions for the ${named(groups)}.`;
  return [
    {
      kind: 'cut prey',
      sentence,
      bin: null,
      species: null,
      animals,
      snapshot,
      options: { ...options, cut: new Set(groups.map(({ key }) => key)) },
    },
  ];
}

const named = (groups: readonly DemandGroup[]): string =>
  [...new Set(groups.map(({ name }) => name))].join(' and the ');

function stretching({ snapshot, options }: Asking, { menu }: Judged): Candidate[] {
  const robust = menu.groups.filter((group) => group.rule.urgency === 'robust' && group.animals.length > 0);
  if (robust.length === 0) return [];
  const sentence = `Let the ${named(robust)} wait to the end of their interval.`;
  return [
    {
      kind: 'stretch adults',
      sentence,
      bin: null,
      species: null,
      animals: robust.flatMap(({ animals }) => animals),
      snapshot,
      options: { ...options, stretchRobust: true },
    },
  ];
}

/** Each holding bin of prey that a needy group takes, moved to a place some degrees cooler or warmer. */
function moving({ snapshot, needy, options }: Asking): Candidate[] {
  const by = snapshot.facts.policy.moveByC.value;
  const eaten = new Set(needy.flatMap(({ windows }) => [...windows.keys()]));
  return snapshot.bins
    .filter(({ role, species }) => role === 'holding' && eaten.has(species))
    .flatMap((bin) =>
      [-by, by].map((shift): Candidate => {
        const room = shiftedRoom(snapshot, bin, shift);
        const bins = snapshot.bins.map((each) => (each === bin ? { ...bin, nextRoom: room.code } : each));
        return {
          kind: shift < 0 ? 'move to a cooler place' : 'move to a warmer place',
          sentence: `Move ${bin.name} to a place about ${by} °C ${shift < 0 ? 'cooler' : 'warmer'}.`,
          bin: bin.code,
          species: bin.species,
          animals: [],
          snapshot: { ...snapshot, bins, rooms: [...snapshot.rooms, room] },
          options,
        };
      }),
    );
}

/** A place like the bin's room, warmer or cooler from today on; the past of the bin stays as it was. */
function shiftedRoom(snapshot: Snapshot, bin: Bin, shift: number): Room {
  const room = snapshot.rooms.find(({ code }) => code === bin.room) as Room;
  return {
    code: `${room.code}${shift}`,
    name: room.name,
    dayTempC: room.dayTempC + shift,
    nightTempC: room.nightTempC + shift,
  };
}

function harvesting({ snapshot, options }: Asking): Candidate[] {
  return snapshot.bins
    .filter(({ reserved }) => reserved)
    .map(
      (bin): Candidate => ({
        kind: 'harvest a colony',
        sentence: `Harvest ${bin.name}: take young for feeding, leave the breeders.`,
        bin: bin.code,
        species: bin.species,
        animals: [],
        snapshot: {
          ...snapshot,
          bins: snapshot.bins.map((each) =>
            each === bin ? { ...bin, reserved: false, keepAdults: true } : each,
          ),
        },
        options,
      }),
    );
}

/** First day from tomorrow on, the lead time past, on which a delivery can come. */
function firstDeliveryDay(snapshot: Snapshot, leadTimeDays: number): DayNumber | null {
  const first = snapshot.today + Math.max(1, leadTimeDays);
  const week = snapshot.deliveryWeekdays.length;
  for (let day = first; day < first + week; day++) if (snapshot.deliveryWeekdays[weekday(day)]) return day;
  return null;
}

function bringingForward({ snapshot, options }: Asking): Candidate[] {
  const soonest = firstDeliveryDay(snapshot, 1);
  if (soonest === null) return [];
  return snapshot.deliveries
    .filter(({ day }) => day > soonest)
    .map((delivery) =>
      deliveryAct(snapshot, { delivery, options, kind: 'bring delivery forward', change: { day: soonest } }),
    );
}

function enlarging({ snapshot, options }: Asking): Candidate[] {
  return snapshot.deliveries.map((delivery) =>
    deliveryAct(snapshot, {
      delivery,
      options,
      kind: 'enlarge delivery',
      change: { lot: { ...delivery.lot, heads: delivery.lot.heads * 2 } },
    }),
  );
}

interface DeliveryAct {
  readonly delivery: ExpectedDelivery;
  readonly options: CoverOptions;
  readonly kind: 'bring delivery forward' | 'enlarge delivery';
  readonly change: Partial<ExpectedDelivery>;
}

function deliveryAct(snapshot: Snapshot, { delivery, options, kind, change }: DeliveryAct): Candidate {
  const prey = snapshot.facts.species.get(delivery.species)?.commonName ?? delivery.species;
  const sooner = `Ask for the ${prey} delivery to come ${dayName(change.day ?? delivery.day, snapshot.today)} instead.`;
  const larger = `Double the ${prey} delivery to ${delivery.lot.heads * 2}.`;
  return {
    kind,
    sentence: kind === 'bring delivery forward' ? sooner : larger,
    bin: delivery.bin,
    species: delivery.species,
    animals: [],
    snapshot: {
      ...snapshot,
      deliveries: snapshot.deliveries.map((each) => (each === delivery ? { ...delivery, ...change } : each)),
    },
    options,
  };
}

/** For each needy group a tub from a local shop, tomorrow: the class nearest to its ideal of each form it takes. */
function shopping({ snapshot, needy, options }: Asking): Candidate[] {
  const heads = snapshot.facts.policy.shopPackHeads.value;
  const bought = new Map<string, Candidate>();
  for (const group of needy) {
    for (const [code, window] of group.windows) {
      const species = snapshot.facts.species.get(code) as PreySpecies;
      const size = nearestClass(species, window);
      const key = `${code} ${size?.name}`;
      if (size && !species.cup && !bought.has(key))
        bought.set(key, purchase(snapshot, { group, species, size, heads, options }));
    }
  }
  return [...bought.values()];
}

/** The trade class whose middle lies within the window, nearest to the ideal; undefined when none does. */
function nearestClass(
  species: PreySpecies,
  window: { minMm: number; idealMm: number; maxMm: number },
): SizeClass | undefined {
  const middle = (size: SizeClass) => (size.fromMm + size.toMm) / 2;
  const fits = species.sizeClasses.value.filter(
    (size) => window.minMm <= middle(size) && middle(size) <= window.maxMm,
  );
  const off = (size: SizeClass) => Math.abs(Math.log(middle(size) / window.idealMm));
  return fits.sort((a, b) => off(a) - off(b))[0];
}

interface Purchase {
  readonly group: DemandGroup;
  readonly species: PreySpecies;
  readonly size: SizeClass;
  readonly heads: number;
  readonly options: CoverOptions;
}

function purchase(snapshot: Snapshot, { group, species, size, heads, options }: Purchase): Candidate {
  const tub: Bin = {
    code: '~shop',
    name: 'tub from the shop',
    species: species.code,
    role: 'holding',
    room: (snapshot.rooms[0] as Room).code,
    capacity: null,
    keepAdults: false,
    events: [],
  };
  const delivery: ExpectedDelivery = {
    code: '~shop',
    species: species.code,
    bin: tub.code,
    lot: { heads, fromMm: size.fromMm, toMm: size.toMm },
    day: snapshot.today + 1,
  };
  return {
    kind: 'buy at a shop',
    sentence: `Buy ${heads} ${plural(species.commonName)} (${size.name}) at a shop by tomorrow for the ${group.name}.`,
    bin: null,
    species: species.code,
    animals: group.animals,
    snapshot: { ...snapshot, bins: [...snapshot.bins, tub], deliveries: [...snapshot.deliveries, delivery] },
    options,
  };
}

function startingCups({ snapshot, needy, options }: Asking): Candidate[] {
  const eaten = new Set(needy.flatMap(({ windows }) => [...windows.keys()]));
  return [...snapshot.facts.species.values()]
    .filter(({ code, cup }) => cup !== null && eaten.has(code))
    .map((species): Candidate => {
      const cup: Bin = {
        code: '~cup',
        name: 'new cup',
        species: species.code,
        role: 'cup',
        room: (snapshot.rooms[0] as Room).code,
        capacity: null,
        keepAdults: false,
        events: [{ kind: 'cup looked', look: 'started', day: snapshot.today }],
      };
      return {
        kind: 'start a cup',
        sentence: `Start a cup of ${plural(species.commonName)} today.`,
        bin: null,
        species: species.code,
        animals: [],
        snapshot: { ...snapshot, bins: [...snapshot.bins, cup] },
        options,
      };
    });
}

/**
 * The act with the greatest fall in danger, then in missed, then in late meals, on the same random numbers; null when
 * none helps. All are tried in a part of the replicates; the leaders are judged in full.
 */
export function bestAct(snapshot: Snapshot, judged: Judged, options: CoverOptions): Act | null {
  const { actReplicates, actGroups } = snapshot.facts.policy;
  const kept: Kept = { roster: judged.roster, laid: nothingLaid() };
  const tries = candidatesOf(snapshot, judged, { ...options, kept });
  const some = Math.min(actReplicates.value, judged.tally.replicates);
  const ranked = tries
    .map((candidate) => ({ candidate, after: judgedAs(candidate, some) }))
    .sort((a, b) => better(a.after, b.after));
  const before = stateOf(judged);
  const leaders = ranked
    .slice(0, actGroups.value)
    .map(({ candidate }) => ({ candidate, after: judgedAs(candidate, judged.tally.replicates) }));
  const best = leaders.sort((a, b) => better(a.after, b.after))[0];
  if (!best || better(best.after, before) >= 0) return null;
  const { kind, sentence, bin, species, animals } = best.candidate;
  return { kind, sentence, bin, species, animals, before, after: best.after };
}

type ActState = Act['before'];

const stateOf = (judged: Judged): ActState => ({
  ...shortfallOf(judged),
  nothingMissed: nothingMissed(judged).chance,
});

const judgedAs = ({ snapshot, options }: Candidate, replicates: number): ActState =>
  stateOf(judge(snapshot, { ...options, replicates }));

/** Negative when the first is better: fewer dangers, then fewer missed, then fewer late meals. */
export const better = (a: ActState, b: ActState): number =>
  a.dangers - b.dangers || a.missedMeals - b.missedMeals || a.lateMeals - b.lateMeals;
