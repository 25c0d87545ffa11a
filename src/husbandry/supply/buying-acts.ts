/** Acts that bring in what is not yet here: a tub from a local shop, a new cup of flies. */
import type { DemandGroup } from '../appetite/index.ts';
import type { Bin, ExpectedDelivery } from '../larder/index.ts';
import type { PreySpecies, SizeClass } from '../prey/index.ts';
import type { Room, Snapshot } from '../snapshot.ts';
import { plural } from '../words.ts';
import { type Asking, type Candidate, speciesTaken } from './candidate.ts';
import type { CoverOptions } from './cover.ts';
import { nearestClass } from './trade-class.ts';

/** For each needy group a tub from a local shop, tomorrow: the class nearest to its ideal of each form it takes, if a shop written down sells it. */
export function shopping({ snapshot, needy, options }: Asking): Candidate[] {
  const heads = snapshot.facts.policy.shopPackHeads.value;
  const bought = new Map<string, Candidate>();
  for (const group of needy) {
    for (const [code, window] of group.windows) {
      const species = snapshot.facts.species.get(code) as PreySpecies;
      const size = nearestClass(species, window);
      const key = `${code} ${size?.name}`;
      if (size && !species.cup && !bought.has(key) && isSold(snapshot, species, size))
        bought.set(key, purchase(snapshot, { group, species, size, heads, options }));
    }
  }
  return [...bought.values()];
}

/** By a shop the keeper has written down; where none is, any may have it. */
function isSold({ market }: Snapshot, { code }: PreySpecies, { fromMm, toMm }: SizeClass): boolean {
  const shops = market?.suppliers.filter(({ kind }) => kind === 'shop') ?? [];
  const offers = market?.offers.filter(({ supplier }) => shops.some((shop) => shop.code === supplier)) ?? [];
  return (
    offers.length === 0 ||
    offers.some((offer) => offer.species === code && offer.fromMm < toMm && fromMm < offer.toMm)
  );
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

export function startingCups({ snapshot, needy, options }: Asking): Candidate[] {
  const eaten = speciesTaken(needy);
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
