/** What a keeper writes down of a meal: heads of each form, and their lengths. */
import { type Animals, REMEMBERED } from './animal-places.ts';
import { FORMS, type Form } from './kinds.ts';
import type { Helping } from './log.ts';
import { BAND_MM, BANDS, BREEDS } from './prey.ts';

interface Meal {
  readonly day: number;
  /** Form and band of each head. */
  readonly chains: Int32Array;
  readonly heads: number;
}

/** One helping a form; the last few of each animal are remembered. */
export function noteMeal(animals: Animals, i: number, { day, chains, heads: given }: Meal): void {
  for (let form = 0; form < FORMS.length; form += 1) {
    let [heads, least, most] = [0, Number.POSITIVE_INFINITY, 0];
    for (let n = 0; n < given; n += 1) {
      const chain = chains[n] as number;
      if (Math.floor(chain / BANDS) % FORMS.length !== form) continue;
      const mm = BAND_MM[chain % BANDS] as number;
      heads += 1;
      least = Math.min(least, mm);
      most = Math.max(most, mm);
    }
    if (heads === 0) continue;
    const at = i * REMEMBERED + ((animals.gave[i] as number) % REMEMBERED);
    animals.gaveOn[at] = day;
    animals.gaveForm[at] = form;
    animals.gaveHeads[at] = heads;
    animals.gaveFromMm[at] = least;
    animals.gaveToMm[at] = most;
    animals.gave[i] = (animals.gave[i] as number) + 1;
  }
}

export function helpingsOf(animals: Animals, i: number): Helping[] {
  const remembered = Math.min(animals.gave[i] as number, REMEMBERED);
  return Array.from({ length: remembered }, (_, n) => {
    const at = i * REMEMBERED + n;
    return {
      day: animals.gaveOn[at] as number,
      species: BREEDS[FORMS[animals.gaveForm[at] as number] as Form].species,
      heads: animals.gaveHeads[at] as number,
      fromMm: animals.gaveFromMm[at] as number,
      toMm: animals.gaveToMm[at] as number,
    };
  });
}
