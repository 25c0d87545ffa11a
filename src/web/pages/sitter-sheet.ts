/** The lines of a sitter's sheet: each evening in the order of the walk, with places and cautions. */
import type { AwaySheetProps } from '../../../views/pages/away-sheet.tsx';
import type { SheetRow } from '../../../views/pages/away-sheet-evening.tsx';
import type { PreyOffer } from '../../husbandry/appetite/index.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import type { AwayPlan, AwayRounds } from '../../husbandry/supply/index.ts';
import { cautionsFor, placeOf } from './meals.ts';

type Lines = Omit<AwaySheetProps, 'shell' | 'names' | 'unit' | 'back'>;

export function sheetOf(snapshot: Snapshot, plan: AwayPlan, rounds: AwayRounds | null): Lines {
  const { from, to } = plan.absence;
  const planned = plan.visits.map(({ day, animals }) => ({
    day,
    servings: animals.map((animal) => ({ animal, offer: null })),
  }));
  const evenings = (rounds?.visits ?? planned).map(({ day, servings }) => ({
    day,
    rows: rowsOf(snapshot, servings),
  }));
  return {
    from,
    to,
    evenings,
    leaveAlone: aloneOf(snapshot, plan),
    byHand: rounds === null,
    leftoversOutHours: snapshot.facts.policy.leftoversOutHours.value,
    cautions: [...new Set(evenings.flatMap(({ rows }) => rows.flatMap(({ cautions }) => cautions)))],
  };
}

interface Given {
  readonly animal: string;
  readonly offer: PreyOffer | null;
}

/** In the order of the walk, which is the snapshot's. */
function rowsOf(snapshot: Snapshot, servings: readonly Given[]): readonly SheetRow[] {
  const offers = new Map(servings.map(({ animal, offer }) => [animal, offer]));
  return snapshot.animals
    .filter(({ code }) => offers.has(code))
    .map((animal) => ({
      animal: animal.code,
      place: placeOf(animal, snapshot),
      offer: offers.get(animal.code) ?? null,
      cautions: cautionsFor(animal, snapshot),
    }));
}

function aloneOf(snapshot: Snapshot, { animals }: AwayPlan): Lines['leaveAlone'] {
  const reasons = new Map(animals.map(({ animal, reason }) => [animal, reason]));
  return snapshot.animals.flatMap((animal) => {
    const reason = reasons.get(animal.code) ?? null;
    return reason === null ? [] : [{ animal: animal.code, place: placeOf(animal, snapshot), reason }];
  });
}
