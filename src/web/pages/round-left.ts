/** What is left of an evening's round: who eats and who waits, without those of whom something is written already. */
import type { Evening } from '../../husbandry/appetite/index.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import { roundDone } from '../../store/index.ts';
import { eveningNow } from './evening-now.ts';
import type { House } from './house.ts';

export async function roundLeft(house: House, snapshot: Snapshot): Promise<Evening> {
  const done = new Set(await house.context.store.ask(roundDone(snapshot.today)));
  const evening = await eveningNow(house, snapshot);
  const left = <T extends { readonly animal: string }>(rows: readonly T[]) =>
    rows.filter(({ animal }) => !done.has(animal));
  return { ...evening, servings: left(evening.servings), withheld: left(evening.withheld) };
}
