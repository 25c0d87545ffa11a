/** The Book: all kinds and prey, found by name, and what its numbers rest on. */
import type { Context, Hono } from 'hono';
import { type LengthUnit, lengthRange } from '../../../views/format.ts';
import { type BookGroup, type BookKind, BookPage } from '../../../views/pages/book.tsx';
import type { BookPrey } from '../../../views/pages/book-prey.tsx';
import { paths } from '../../../views/paths.ts';
import { standingOf } from '../../facts/standing.ts';
import type { ChangedKind, Kind } from '../../husbandry/animals/index.ts';
import type { ChangedNumbers } from '../../husbandry/own-numbers.ts';
import { type PreySpecies, sizeWord } from '../../husbandry/prey/index.ts';
import { plural } from '../../husbandry/words.ts';
import { isGeneral } from '../../intake/index.ts';
import { rowsOf } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import { everyLength } from './choices.ts';
import type { House } from './house.ts';
import { page, type Visit, visit } from './visit.ts';

export function bookRoutes(app: Hono<DoorEnv>, house: House): void {
  app.get(paths.book, (c) => showBook(house, c));
}

const LONGEST_QUERY = 200;

async function showBook(house: House, c: Context): Promise<Response> {
  const here = await visit(house, c);
  const { kinds, species, policy } = here.snapshot.facts;
  const { changed, numbers } = await house.context.store.askAll({
    changed: rowsOf('kind'),
    numbers: rowsOf('numbers'),
  });
  const query = (c.req.query('q') ?? '').slice(0, LONGEST_QUERY).trim();
  const isFound = matches(query);
  const groups = groupsOf(here, changed, isFound);
  const prey = [...species.values()].filter(isFound).map((each) => preyOf(each, here.unit, numbers));
  const props = {
    ...here,
    query,
    kinds: kinds.size,
    ownKinds: changed.filter(({ base }) => base !== null).length,
    preySpecies: species.size,
    standing: standingOf([[...kinds.values()], [...species.values()], policy]),
    groups: query === '' ? groups : groups.filter((group) => group.kinds.length > 0),
    prey,
  };
  return page(c, BookPage(props));
}

type Named = Pick<Kind, 'name' | 'commonName' | 'aliases'> & { readonly group?: string };

/** Every word asked for stands somewhere in its names. */
const matches =
  (query: string) =>
  ({ name, commonName, aliases, group = '' }: Named): boolean => {
    const text = [name, commonName, ...aliases, group].join(' ').toLowerCase();
    return query
      .toLowerCase()
      .split(/\s+/)
      .every((word) => text.includes(word));
  };

function groupsOf(
  here: Visit,
  changed: readonly ChangedKind[],
  isFound: (kind: Named) => boolean,
): readonly BookGroup[] {
  const kinds = [...here.snapshot.facts.kinds.values()];
  return [...new Set(kinds.map(({ group }) => group))].map((name) => {
    const members = kinds.filter(({ group }) => group === name);
    return {
      name: plural(name),
      general: (members.find(isGeneral) ?? members[0])?.code ?? '',
      kinds: members.filter(isFound).map((kind) => rowOf(here, kind, changed)),
    };
  });
}

function rowOf({ snapshot, unit }: Visit, kind: Kind, changed: readonly ChangedKind[]): BookKind {
  const own = snapshot.animals.filter((animal) => animal.kind === kind.code);
  const [least, most] = kind.adultGaugeMm.value;
  return {
    code: kind.code,
    name: kind.name,
    commonName: kind.commonName,
    isOwn: kind.madeFrom !== undefined,
    adult: lengthRange(least, most, unit),
    heads: own.reduce((sum, { count }) => sum + count, 0),
    changed: valuesChanged(changed.find(({ code }) => code === kind.code)),
  };
}

function valuesChanged(row: ChangedKind | undefined): number {
  if (row === undefined) return 0;
  const whole = row.base === null ? row.changes.kind : withoutNames(row.changes.kind);
  const sets = [whole, ...Object.values(row.changes.stages)];
  return sets.reduce((sum, own) => sum + Object.keys(own).length, 0);
}

/** The names of a kind of the keeper's own are no change. */
const withoutNames = ({
  name: _,
  commonName: _common,
  aliases: _aliases,
  ...others
}: ChangedKind['changes']['kind']) => others;

function preyOf(species: PreySpecies, unit: LengthUnit, changed: readonly ChangedNumbers[]): BookPrey {
  const { fromMm, toMm } = everyLength(species);
  return {
    code: species.code,
    name: species.name,
    commonName: species.commonName,
    lengths: lengthRange(fromMm, toMm, unit),
    sizes: species.sizeClasses.value.map(sizeWord).join(', '),
    changed: Object.keys(changed.find(({ code }) => code === species.code)?.changes ?? {}).length,
  };
}
