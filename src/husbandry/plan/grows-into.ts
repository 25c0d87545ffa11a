/** Which packs bought smaller and earlier will have grown into a pack by the time it comes. */
import { afterStep } from '../../maths/chain-step.ts';
import type { PlanPack, PlanParcel, PlanProblem } from './problem.ts';
import { undated } from './undated.ts';

/** A pack of a parcel. */
export interface PackAt {
  readonly parcel: number;
  readonly pack: number;
}

type Problem = Pick<PlanProblem, 'parcels' | 'places'>;

const known = new WeakMap<Problem['parcels'], Map<string, readonly PackAt[]>>();

/**
 * Of every other offer of its species the parcel whose heads will by then be most like it in size, the latest of those;
 * none that comes no earlier.
 */
export function growsInto(problem: Problem, { parcel, pack }: PackAt): readonly PackAt[] {
  const found = known.get(problem.parcels) ?? new Map<string, readonly PackAt[]>();
  known.set(problem.parcels, found);
  const key = `${parcel} ${pack}`;
  const before = found.get(key);
  if (before) return before;
  const made = bestByOffer(problem, { parcel, pack });
  found.set(key, made);
  return made;
}

function bestByOffer({ parcels, places }: Problem, { parcel, pack }: PackAt): PackAt[] {
  const { period, packs } = parcels[parcel] as PlanParcel;
  const wanted = packs[pack] as PlanPack;
  const passes = places[wanted.place]?.passes ?? [];
  const best = new Map<string, { readonly at: PackAt; readonly alike: number }>();
  parcels.forEach((earlier, i) => {
    if (earlier.period >= period) return;
    earlier.packs.forEach((other, j) => {
      const offer = undated(other.key);
      if (other.place !== wanted.place || offer === undated(wanted.key)) return;
      const grown = passes.slice(earlier.period, period).reduce(afterStep, other.brings);
      const alike = likeness(grown, wanted.brings);
      if (alike > 0 && alike >= (best.get(offer)?.alike ?? 0))
        best.set(offer, { at: { parcel: i, pack: j }, alike });
    });
  });
  return [...best.values()].map(({ at }) => at);
}

/** Cosine of the angle between two distributions over nodes: 1 of the same sizes, 0 where no size is shared. */
function likeness(a: Float64Array, b: Float64Array): number {
  let [both, own, other] = [0, 0, 0];
  for (let n = 0; n < a.length; n++) {
    both += (a[n] as number) * (b[n] as number);
    own += (a[n] as number) ** 2;
    other += (b[n] as number) ** 2;
  }
  return own > 0 && other > 0 ? both / Math.sqrt(own * other) : 0;
}
