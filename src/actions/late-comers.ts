/** Those who came to live here after an evening: the button that records its rest leaves them out. */
import type { DayNumber } from '../husbandry/calendar.ts';
import { rowsNamed } from '../store/index.ts';
import { beforeItCame } from './lifetime.ts';
import type { Scene } from './perform.ts';

interface Marked {
  readonly animal: string;
  /** From the button, not from a mark by hand. */
  readonly bulk: boolean;
}

export async function withoutLateComers<R extends Marked>(
  { tx }: Scene,
  day: DayNumber,
  rows: readonly R[],
): Promise<readonly R[]> {
  const names = rows.filter(({ bulk }) => bulk).map(({ animal }) => animal);
  const known = await tx.ask(rowsNamed('animal', names));
  const late = known.filter((row) => beforeItCame(row, { day, field: 'day' }) !== null);
  const codes = new Set(late.map(({ code }) => code));
  return rows.filter(({ animal, bulk }) => !bulk || !codes.has(animal));
}
