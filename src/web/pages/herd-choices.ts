/** What the list of animals can be narrowed by: choices, filters with how many each finds, and parts to leave out. */
import { sentenceCase } from '../../../views/format.ts';
import type { HerdFilter, Otherwise } from '../../../views/pages/animals.tsx';
import type { HerdChoice } from '../../../views/pages/animals-search.tsx';
import type { Option } from '../../../views/partials/form.tsx';
import { shelfKey } from '../../husbandry/walk.ts';
import { plural } from '../../husbandry/words.ts';
import { type Seen, TRAITS } from './herd.ts';
import { countFor } from './herd-found.ts';
import { addressOf, type HerdQuery } from './herd-query.ts';
import type { Herd } from './herd-visit.ts';
import { type Part, TRAIT_WORDS } from './herd-words.ts';

/** One tap each, with what it would find beside everything else that is asked. */
export const filtersFor = (herd: readonly Seen[], query: HerdQuery): readonly HerdFilter[] =>
  TRAITS.map((trait) => {
    const on = query.show.includes(trait);
    const others = query.show.filter((each) => each !== trait);
    const withIt = { ...query, show: [...others, trait], page: 1 };
    return {
      label: sentenceCase(TRAIT_WORDS[trait]),
      count: countFor(herd, withIt),
      on,
      href: addressOf(on ? { ...query, show: others, page: 1 } : withIt),
    };
  });

export const insteadOf = (herd: readonly Seen[], parts: readonly Part[]): readonly Otherwise[] =>
  parts
    .map(({ words, without }) => ({
      label: `“${words.replaceAll(/[“”]/g, '')}”`,
      href: addressOf(without),
      count: countFor(herd, without),
    }))
    .filter(({ count }) => count > 0);

const ORDER_WORDS: readonly Option[] = [
  { value: '', label: 'Shelf by shelf' },
  { value: 'meal', label: 'Next meal first' },
  { value: 'size', label: 'Smallest first' },
  { value: 'name', label: 'By name' },
];

/** Only what is here can be chosen. */
export function choicesFor({ herd, names }: Herd, query: HerdQuery): readonly HerdChoice[] {
  return [
    { name: 'group', label: 'Kinds', chosen: query.group, options: any('All kinds', groupsIn(herd)) },
    { name: 'stage', label: 'Stage', chosen: query.stage, options: any('All stages', stagesIn(herd)) },
    {
      name: 'place',
      label: 'Place',
      chosen: query.place,
      options: any('All places', placesIn(herd, names.rooms)),
    },
    {
      name: 'order',
      label: 'Order',
      chosen: query.order === 'walk' ? '' : query.order,
      options: ORDER_WORDS,
    },
  ];
}

const any = (label: string, options: readonly Option[]): readonly Option[] => [
  { value: '', label },
  ...options,
];

const groupsIn = (herd: readonly Seen[]): readonly Option[] =>
  [...new Set(herd.map(({ kind }) => kind.group))].map((group) => ({
    value: group,
    label: sentenceCase(plural(group)),
  }));

const STAGES = ['young', 'juvenile', 'subadult', 'adult', 'mature male'] as const;

function stagesIn(herd: readonly Seen[]): readonly Option[] {
  const here = new Set(herd.map(({ rule }) => rule.stage));
  return STAGES.filter((stage) => here.has(stage)).map((stage) => ({
    value: stage,
    label: sentenceCase(stage),
  }));
}

/** Each room whole, then its shelves. */
function placesIn(herd: readonly Seen[], rooms: ReadonlyMap<string, string>): readonly Option[] {
  const shelves = new Map<string, Set<string>>();
  for (const { animal } of herd)
    shelves.set(animal.room, (shelves.get(animal.room) ?? new Set()).add(animal.shelf));
  return [...shelves].flatMap(([room, named]) => {
    const group = rooms.get(room) ?? room;
    const one = (shelf: string) => ({
      value: shelfKey({ room, shelf }),
      label: shelf === '' ? 'No shelf' : shelf,
      group,
    });
    return [{ value: room, label: `All of ${group}`, group }, ...[...named].map(one)];
  });
}
