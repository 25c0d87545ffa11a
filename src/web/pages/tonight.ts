/** Tonight's round: who eats what; marks and the rest become one act. */

import type { Context, Hono } from 'hono';
import type { Shell } from '../../../views/layout.tsx';
import { TonightPage, type TonightProps } from '../../../views/pages/tonight.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import type { Animal } from '../../husbandry/animals/index.ts';
import type { Evening } from '../../husbandry/appetite/index.ts';
import type { DayNumber } from '../../husbandry/calendar.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import { eveningOf, nextMealOf } from '../../husbandry/supply/index.ts';
import { offersOf, openEvening, roundDone, type Store } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import type { House } from './house.ts';
import { placeOf } from './meals.ts';
import { recordRound } from './round.ts';
import { page, visit } from './visit.ts';

export function tonightRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.tonight, (c) => showTonight(house, c));
  app.post(paths.tonight, (c) => recordRound(house, c, (refused) => showTonight(house, c, refused)));
}

async function showTonight(house: House, c: Context, refused: Refused | null = null): Promise<Response> {
  const day = house.context.clock().today;
  const here = await visit(house, c, { refused, day });
  const evening = await roundOf(house.context.store, here.snapshot);
  const props: TonightProps = {
    ...here,
    shell: evening.servings.length === 0 ? withWords(here.shell, refused) : here.shell,
    evening,
    cautions: cautionsOf(here.snapshot, evening),
    waiting: await waitingSince(house.context.store, day - 1),
    anybody: here.snapshot.animals.length > 0,
    nextDay: evening.servings.length > 0 ? null : nextDayOf(here.snapshot),
  };
  return page(c, TonightPage(props), refused === null ? OK : REFUSED);
}

const OK = 200;
const REFUSED = 422;

/** Where no form is left to say it above, what was wrong is said by the frame. */
function withWords(shell: Shell, refused: Refused | null): Shell {
  const words = Object.values(refused?.problems ?? {}).map((text) => ({ kind: 'problem' as const, text }));
  return { ...shell, flash: [...shell.flash, ...words] };
}

/** The evening without those of whom something is written already, each at its place. */
async function roundOf(store: Store, snapshot: Snapshot): Promise<Evening> {
  const done = new Set(await store.ask(roundDone(snapshot.today)));
  const evening = eveningOf(snapshot);
  const places = new Map(snapshot.animals.map((animal) => [animal.code, placeOf(animal, snapshot)]));
  const placed = <T extends { readonly animal: string }>(rows: readonly T[]) =>
    rows
      .filter(({ animal }) => !done.has(animal))
      .map((row) => ({ ...row, shelf: places.get(row.animal) ?? '' }));
  return { ...evening, servings: placed(evening.servings), withheld: placed(evening.withheld) };
}

function cautionsOf({ animals, facts }: Snapshot, { servings }: Evening): TonightProps['cautions'] {
  const eating = new Set(servings.map(({ animal }) => animal));
  const kindOf = ({ kind }: Animal) => facts.kinds.get(kind)?.cautions ?? [];
  return new Map(
    animals.filter(({ code }) => eating.has(code)).map((animal) => [animal.code, kindOf(animal)]),
  );
}

/** Meals of an evening before nobody has told of. */
async function waitingSince(store: Store, upTo: DayNumber): Promise<number> {
  const evening = await store.ask(openEvening(upTo));
  if (evening === null) return 0;
  return (await store.ask(offersOf(evening))).filter(({ outcome }) => outcome === null).length;
}

const DAYS_AHEAD = 14;

/** The first evening anybody is due, within two weeks. */
function nextDayOf(snapshot: Snapshot): DayNumber | null {
  const ahead = snapshot.animals
    .map((animal) => nextMealOf(snapshot, animal).evening)
    .filter((day) => day !== null && day > snapshot.today && day <= snapshot.today + DAYS_AHEAD);
  return ahead.length === 0 ? null : Math.min(...(ahead as number[]));
}
