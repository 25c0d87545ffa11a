/** What is left of an evening's round: who eats and who waits, without those of whom something is written already. */
import type { Evening } from '../../husbandry/appetite/index.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import { eveningOf } from '../../husbandry/supply/index.ts';
import { roundDone, type Store } from '../../store/index.ts';

export async function roundLeft(store: Store, snapshot: Snapshot): Promise<Evening> {
  const done = new Set(await store.ask(roundDone(snapshot.today)));
  const evening = eveningOf(snapshot);
  const left = <T extends { readonly animal: string }>(rows: readonly T[]) =>
    rows.filter(({ animal }) => !done.has(animal));
  return { ...evening, servings: left(evening.servings), withheld: left(evening.withheld) };
}
