/** Animals: the list in the order of the walk, searched and narrowed, a page at a time. */

import type { Context, Hono } from 'hono';
import {
  type AnimalRow,
  AnimalsPage,
  type HerdSection,
  type LentRow,
} from '../../../views/pages/animals.tsx';
import { paths } from '../../../views/paths.ts';
import { grouped } from '../../husbandry/grouped.ts';
import { rowsOf, type AnimalRow as Written } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import type { Seen } from './herd.ts';
import { choicesFor, filtersFor, insteadOf } from './herd-choices.ts';
import { foundIn, type Leaf, leafOf } from './herd-found.ts';
import { addressOf, type HerdQuery, narrows, queryIn, writtenQuery } from './herd-query.ts';
import { markOf } from './herd-seen.ts';
import { type Herd, visitHerd } from './herd-visit.ts';
import { foundWords, partsOf } from './herd-words.ts';
import type { House } from './house.ts';
import { eatingOf, nextInShort } from './meals.ts';
import { page } from './visit.ts';

export function animalsRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.animals, (c) => showAnimals(house, c));
}

async function showAnimals(house: House, c: Context): Promise<Response> {
  const here = await visitHerd(house, c);
  const query = queryIn(new URL(c.req.url).searchParams);
  const found = foundIn(here.herd, query);
  const parts = partsOf(query, here.names.rooms);
  const leaf = leafOf(found, query.page);
  const lent = await house.context.store.ask(rowsOf('animal', LENT));
  const props = {
    ...here,
    total: here.snapshot.animals.reduce((heads, { count }) => heads + count, 0),
    entries: here.herd.length,
    search: { q: query.q, show: query.show, choices: choicesFor(here, query) },
    filters: filtersFor(here.herd, query),
    found: foundWords(found.length, here.herd.length, parts),
    clear: narrows(query) ? paths.animals : null,
    instead: found.length > 0 ? [] : insteadOf(here.herd, parts),
    sections: sectionsOf(here, leaf.rows, query),
    leaves: leavesOf(leaf, found.length, query),
    list: writtenQuery({ ...query, page: leaf.page }),
    seen: markOf(found),
    lent: lent.map((row) => lentRow(row, here)),
  };
  return page(c, AnimalsPage(props));
}

const ORDER_HEADS = { meal: 'By next meal', size: 'By size, smallest first', name: 'By name' } as const;

/** Shelf by shelf in the order of the walk; in any other order one table. */
function sectionsOf(here: Herd, rows: readonly Seen[], { order }: HerdQuery): readonly HerdSection[] {
  if (order !== 'walk')
    return [{ head: ORDER_HEADS[order], rows: rows.map((seen) => rowOf(here, seen, true)) }];
  const shelves = grouped(rows, (seen) => placeOf(here, seen));
  return [...shelves].map(([head, shelf]) => ({ head, rows: shelf.map((seen) => rowOf(here, seen, false)) }));
}

function placeOf({ names }: Herd, { animal: { room, shelf } }: Seen): string {
  const name = names.rooms.get(room) ?? room;
  return shelf === '' ? name : `${name}, ${shelf}`;
}

function rowOf(here: Herd, seen: Seen, placed: boolean): AnimalRow {
  const { animal } = seen;
  const { kind, ownLengthMm, window, stageWord } = eatingOf(animal, here.snapshot.facts);
  return {
    code: animal.code,
    name: here.names.animals.get(animal.code) ?? animal.code,
    kindName: kind.commonName,
    stageWord,
    count: animal.count,
    place: placed ? placeOf(here, seen) : null,
    ownLengthMm,
    window,
    next: nextInShort(here.snapshot, animal),
    remarks: remarksOn(seen),
  };
}

function remarksOn({ traits, animal }: Seen): readonly string[] {
  const size = animal.gaugeAssumed ? 'size assumed' : 'size to be measured again';
  return [
    ...(traits.has('refused') ? [`refused ${animal.refusalsInRow} times`] : []),
    ...(traits.has('measure') ? [size] : []),
  ];
}

function leavesOf({ page: at, pages, from, rows }: Leaf, of: number, query: HerdQuery) {
  const other = (to: number) => addressOf({ ...query, page: to });
  return {
    from: from + 1,
    to: from + rows.length,
    of,
    previous: at > 1 ? other(at - 1) : null,
    next: at < pages ? other(at + 1) : null,
  };
}

/** Those to come back first come first. */
const LENT = { where: "left_reason = 'lent'", order: 'back_day is null, back_day, code' };

const lentRow = (row: Written, { snapshot }: Herd): LentRow => ({
  code: row.code,
  name: row.name === '' ? row.code : row.name,
  kindName: snapshot.facts.kinds.get(row.kind)?.commonName ?? row.kind,
  count: row.count,
  to: row.lentTo ?? 'somebody',
  since: row.leftDay ?? snapshot.today,
  back: row.backDay,
});
