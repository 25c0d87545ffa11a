/** What the list of animals is asked for, as it stands in its address. */
import { paths } from '../../../views/paths.ts';
import { TRAITS, type Trait } from './herd.ts';

const ORDERS = ['walk', 'meal', 'size', 'name'] as const;
export type Order = (typeof ORDERS)[number];

export interface HerdQuery {
  /** Words that must all stand somewhere in what is written of an animal. */
  readonly q: string;
  /** Traits that must all hold. */
  readonly show: readonly Trait[];
  /** Group of kinds, such as 'scorpion'; '' for all, here and below. */
  readonly group: string;
  readonly stage: string;
  /** A room's code, or code and shelf as `shelfKey` writes them. */
  readonly place: string;
  readonly order: Order;
  /** Counted from 1. */
  readonly page: number;
}

const LONGEST_QUERY = 200;

/** Whatever an address says that is not known here is left out. */
export function queryIn(address: URLSearchParams): HerdQuery {
  const said = (name: string) => (address.get(name) ?? '').slice(0, LONGEST_QUERY).trim();
  const asked = new Set(address.getAll('show'));
  return {
    q: said('q'),
    show: TRAITS.filter((trait) => asked.has(trait)),
    group: said('group'),
    stage: said('stage'),
    place: said('place'),
    order: ORDERS.find((order) => order === said('order')) ?? 'walk',
    page: Math.max(1, Math.floor(Number(said('page'))) || 1),
  };
}

/** The query as the part of an address after the question mark; '' for all animals as they stand. */
export function writtenQuery({ q, show, group, stage, place, order, page }: HerdQuery): string {
  const pairs: [string, string][] = [
    ['q', q],
    ...show.map((trait): [string, string] => ['show', trait]),
    ['group', group],
    ['stage', stage],
    ['place', place],
    ['order', order === 'walk' ? '' : order],
    ['page', page === 1 ? '' : `${page}`],
  ];
  return new URLSearchParams(pairs.filter(([, value]) => value !== '')).toString();
}

export function addressOf(query: HerdQuery): string {
  const written = writtenQuery(query);
  return written === '' ? paths.animals : `${paths.animals}?${written}`;
}

/** Whether anything narrows the list. */
export const narrows = ({ q, show, group, stage, place }: HerdQuery): boolean =>
  q !== '' || show.length > 0 || group !== '' || stage !== '' || place !== '';
