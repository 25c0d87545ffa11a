/** What was done to many animals at once, as the keeper would say it. */
import type { Facts } from '../husbandry/snapshot.ts';
import type { AnimalRow } from '../store/index.ts';
import { manyWords } from './chosen-animals.ts';
import type { Together } from './edit-animals.ts';

/** 'Moved 14 animals to “Shelf B” of R1'. */
export function editedWords(rows: readonly AnimalRow[], given: Together, { kinds }: Facts): string {
  const who = manyWords(rows);
  const { leftReason, kind, stageOverride } = given;
  if (leftReason !== undefined) return LEFT[leftReason](who);
  if (kind !== undefined) return `Changed the kind of ${who} to ${kinds.get(kind)?.name ?? kind}`;
  if (stageOverride === null) return `Let ${who} go by size again`;
  if (stageOverride !== undefined) return `Treat ${who} as ${stageOverride}`;
  return `Moved ${who} to ${placeWords(given, rows[0]!)}`;
}

const LEFT = {
  died: (who: string) => `${who} died`,
  sold: (who: string) => `Sold ${who}`,
  'given away': (who: string) => `Gave away ${who}`,
  lost: (who: string) => `Lost ${who}`,
} as const;

/** A shelf stands in the keeper's own quotes: it may look like a code. */
function placeWords({ room, shelf }: Together, moved: Pick<AnimalRow, 'room'>): string {
  if (shelf === undefined || shelf === '') return moved.room;
  return room === undefined ? `“${shelf}”` : `“${shelf}” of ${moved.room}`;
}
