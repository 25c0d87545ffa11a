/** Acts that cost nothing but care: cutting prey, letting adults wait, moving a bin, harvesting a colony. */
import type { DemandGroup } from '../appetite/index.ts';
import { type Bin, rests } from '../larder/index.ts';
import { binClimate } from '../rooms.ts';
import type { Snapshot } from '../snapshot.ts';
import { type Asking, type Candidate, speciesTaken } from './candidate.ts';
import type { Judged } from './cover.ts';

export function cutting({ snapshot, needy, options }: Asking): Candidate[] {
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

export function stretching({ snapshot, options }: Asking, { menu }: Judged): Candidate[] {
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
export function moving({ snapshot, needy, options }: Asking): Candidate[] {
  const by = snapshot.facts.policy.moveByC.value;
  const eaten = speciesTaken(needy);
  return snapshot.bins
    .filter(({ role, species }) => role === 'holding' && eaten.has(species))
    .flatMap((bin) =>
      [-by, by].map((shift): Candidate => {
        const moved = movedBy(snapshot, bin, shift);
        const bins = snapshot.bins.map((each) => (each === bin ? moved : each));
        return {
          kind: shift < 0 ? 'move to a cooler place' : 'move to a warmer place',
          sentence: `Move ${bin.name} to a place about ${by} °C ${shift < 0 ? 'cooler' : 'warmer'}.`,
          bin: bin.code,
          species: bin.species,
          animals: [],
          snapshot: { ...snapshot, bins },
          options,
        };
      }),
    );
}

/** The bin put in a place like its own, warmer or cooler from today on; its past stays as it was. */
function movedBy(snapshot: Snapshot, bin: Bin, shift: number): Bin {
  const { today } = snapshot;
  const { minC, maxC } = binClimate(snapshot, bin).on(today);
  const before = { room: bin.room, ownC: bin.ownC ?? null };
  const ownC = { dayC: maxC + shift, nightC: minC + shift };
  const put = { kind: 'placed', day: today, before, after: { room: bin.room, ownC } } as const;
  return { ...bin, ownC, events: [...bin.events, put] };
}

export function harvesting({ snapshot, options }: Asking): Candidate[] {
  return snapshot.bins
    .filter((bin) => rests(bin, snapshot.today))
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
            each === bin ? { ...bin, restsUntil: null, keepAdults: true } : each,
          ),
        },
        options,
      }),
    );
}
