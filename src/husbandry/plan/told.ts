/** Who eats what: prey cut into bands, those who eat it into groups; as many of either as is asked for. */
import type { Snapshot } from '../snapshot.ts';
import { classesOf, type EatingClass } from './classes.ts';
import type { Eating } from './eaters.ts';
import { faresOf, type PreparedFare } from './fares.ts';
import { type Cut, edgesOf, type Nodes, nodesOf } from './nodes.ts';
import type { Place } from './place-of.ts';
import type { Breeders, PlanEater } from './problem.ts';

export interface Told {
  readonly nodes: readonly Nodes[];
  readonly eating: readonly EatingClass[];
  /** Fare of everybody by itself. */
  readonly fares: readonly (readonly PreparedFare[])[];
}

/** The same told more finely than the programme could bear: what plans are lived through with. */
export interface Fine extends Told {
  /** One place for all that are eaten from alike, however they grow; and which of them each place is in. */
  readonly places: readonly number[];
  readonly placeOf: readonly number[];
  readonly eaters: readonly PlanEater[];
  readonly breeders: readonly (Breeders | null)[];
}

export interface Cutting {
  readonly places: readonly Place[];
  readonly everybody: readonly Eating[];
}

/** The first of all places that are eaten from alike: one for each species and way of keeping it, colonies each by itself. */
export function alikePlaces(places: readonly Place[]): { alike: number[]; placeOf: number[] } {
  const names = places.map(({ species, role, key, restsUntil }) =>
    role === 'colony' || restsUntil !== null ? key : `${species} ${role}`,
  );
  const known = [...new Set(names)];
  return {
    alike: known.map((name) => names.indexOf(name)),
    placeOf: names.map((name) => known.indexOf(name)),
  };
}

/** Prey cut into so many bands a species, and those who eat it into so many groups. */
export function toldBy(
  snapshot: Snapshot,
  { places, everybody }: Cutting,
  { bands, classes }: { bands: number; classes: number },
): Told {
  const nodes = nodesBySpecies(snapshot, { places, everybody }, bands);
  const served = places.map((place, p) => ({ place, nodes: nodes[p] as Nodes }));
  const fares = everybody.map((each) => faresOf(each, served, snapshot.facts));
  return { nodes, fares, eating: classesOf(everybody, fares, classes) };
}

/** Bands of each place's species, cut where windows of the groups begin and end; one set a species. */
function nodesBySpecies(snapshot: Snapshot, { places, everybody }: Cutting, most: number): Nodes[] {
  const { planBandRatio } = snapshot.facts.policy;
  const bySpecies = new Map<string, Nodes>();
  return places.map(({ species, chain }) => {
    const known = bySpecies.get(species);
    if (known) return known;
    const cuts = everybody.flatMap(({ group, wanted }): Cut[] => {
      const window = group.windows.get(species);
      const weight = wanted.reduce((a, b) => a + b, 0);
      if (!window) return [];
      return [...new Set([window.minMm, window.liveMaxMm, window.maxMm])].map((mm) => ({ mm, weight }));
    });
    const edges = edgesOf(chain, cuts, { most, ratio: planBandRatio.value });
    const made = nodesOf(chain, edges);
    bySpecies.set(species, made);
    return made;
  });
}
