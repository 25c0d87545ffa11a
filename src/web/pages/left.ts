/** Pages of an animal that left and of a bin out of use: the record stays where it was. */

import type { Context } from 'hono';
import { sentenceCase } from '../../../views/format.ts';
import { kindNameOf, preyName } from '../../../views/names.ts';
import { LeftPage } from '../../../views/pages/left.tsx';
import type { Refused } from '../../../views/partials/form.tsx';
import { type AnimalRow, actsAbout, leavings, rowNamed, rowsOf } from '../../store/index.ts';
import { historyLines } from './history.ts';
import type { House } from './house.ts';
import { namesOnRecord } from './names.ts';
import { codeOf } from './route.ts';
import { page, statusOf, type Visit } from './visit.ts';

interface Asked {
  readonly house: House;
  readonly c: Context;
  readonly here: Visit;
  readonly refused: Refused | null;
}

export async function showLeftAnimal({ house, c, here, refused }: Asked): Promise<Response> {
  const code = codeOf(c);
  const row = await house.context.store.ask(rowNamed('animal', code));
  if (row === null || row.leftDay === null) return c.notFound();
  const kind = kindNameOf(here.snapshot.facts.kinds, row.kind);
  const count = row.count > 1 ? { count: row.count } : {};
  const gone = { what: 'animal' as const, code, name: row.name === '' ? code : row.name, ...count };
  const props = {
    ...here,
    here: 'animals' as const,
    gone: { ...gone, why: whyLeft(row), day: row.leftDay },
    lent: row.leftReason === 'lent',
    is: `${sentenceCase(kind)}, ${row.sex}`,
    refused: sentencesOf(refused),
    history: await historyOf(house, here, { about: 'animal', code }),
  };
  return page(c, LeftPage(props), statusOf(refused !== null));
}

const whyLeft = ({ leftReason, lentTo }: AnimalRow): string =>
  leftReason === 'lent' ? `lent to ${lentTo}` : (leftReason ?? 'left');

export async function showClosedBin({ house, c, here, refused }: Asked): Promise<Response> {
  const code = codeOf(c);
  const { store } = house.context;
  const row = await store.ask(rowNamed('bin', code));
  if (row === null || !row.closed) return c.notFound();
  const went = (await store.ask(leavings)).find((each) => each.noun === 'bin' && each.code === code);
  const gone = {
    what: 'bin' as const,
    code,
    name: row.name,
    why: 'taken out of use',
    day: went?.day ?? null,
  };
  const props = {
    ...here,
    here: 'larder' as const,
    gone,
    lent: false,
    is: sentenceCase(preyName(here.names.species, row.species)),
    refused: sentencesOf(refused),
    history: await historyOf(house, here, { about: 'bin', code }),
  };
  return page(c, LeftPage(props), statusOf(refused !== null));
}

const sentencesOf = (refused: Refused | null): readonly string[] => Object.values(refused?.problems ?? {});

interface Told {
  readonly about: 'animal' | 'bin';
  readonly code: string;
}

async function historyOf({ context }: House, { unit }: Visit, { about, code }: Told) {
  const { store, facts } = context;
  const { acts, bins } = await store.askAll({ acts: actsAbout(about, code), bins: rowsOf('bin') });
  const speciesOf = new Map(bins.map((bin) => [bin.code, bin.species]));
  return historyLines(acts, { about, names: await namesOnRecord(store, facts), unit, speciesOf });
}
