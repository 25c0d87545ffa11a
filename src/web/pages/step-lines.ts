/** Steps of the keeper as lines of the history: what was done, when, and how it is undone or done again. */
import type { Names } from '../../../views/names.ts';
import type { StepLine, StepUndo } from '../../../views/partials/step-list.tsx';
import { stepWords } from '../../actions/index.ts';
import { type Act, actsNumbered, inOrder, restingUpon, undosOf, withResting } from '../../store/index.ts';
import type { House } from './house.ts';
import { inNames } from './names.ts';

/** So many acts can be undone together at a press; of more than that some are undone first. */
const MOST_TOGETHER = 200;

interface Known {
  readonly house: House;
  readonly names: Names;
  readonly acts: ReadonlyMap<number, Act>;
  readonly resting: Awaited<ReturnType<typeof restingUpon>>;
  /** By act undone: the undo that holds, and how many acts it undid. */
  readonly undos: ReadonlyMap<number, readonly [undo: number, together: number]>;
}

export async function stepLines(
  house: House,
  names: Names,
  steps: readonly (readonly number[])[],
): Promise<readonly StepLine[]> {
  const { store } = house.context;
  const shown = steps.flat();
  const resting = await restingUpon(store.ask, shown, shown.length + MOST_TOGETHER);
  const told = [...new Set([...shown, ...[...resting.values()].flatMap((newer) => [...newer])])];
  const acts = new Map((await store.ask(actsNumbered(told))).map((act) => [act.id, act]));
  const undos = await store.ask(undosOf(shown));
  const known: Known = {
    house,
    names,
    acts,
    resting,
    undos: new Map(undos.map(([act, undo, together]) => [act, [undo, together]])),
  };
  return Promise.all(steps.map((ids) => lineOf(known, ids)));
}

async function lineOf(known: Known, ids: readonly number[]): Promise<StepLine> {
  const { house, names, acts } = known;
  const own = ids.flatMap((id) => acts.get(id) ?? []);
  const newest = own.at(-1)!;
  const words = await stepWords(house.context.store.ask, own);
  const { undo, resting } = await undoOf(known, ids, newest);
  return {
    id: ids.join(','),
    day: newest.day,
    time: timeOf(newest.writtenAt, house.timezone),
    sentence: `${inNames(words, names)}.`,
    parts: own.length > 1 ? own.map(({ summary }) => inNames(summary, names)) : [],
    undone: newest.voidedAt !== null,
    undo,
    resting,
  };
}

const timeOf = (moment: string, timeZone = 'UTC'): string =>
  new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit', timeZone }).format(new Date(moment));

type Way = Pick<StepLine, 'undo' | 'resting'>;

async function undoOf(known: Known, ids: readonly number[], newest: Act): Promise<Way> {
  if (newest.verb === 'first-room') return { undo: null, resting: [] };
  return newest.voidedAt === null ? together(known, ids) : { undo: again(known, ids), resting: [] };
}

/** The step with all that rests on it. */
async function together(known: Known, ids: readonly number[]): Promise<Way> {
  const { resting, acts, names, house } = known;
  const all = [...withResting(resting, ids)];
  const newer = all.filter((id) => !ids.includes(id)).sort((a, b) => b - a);
  const isKnown = all.every((id) => resting.has(id)) && all.length <= MOST_TOGETHER;
  const said = newer.flatMap((id) => acts.get(id)?.summary ?? []).map((summary) => inNames(summary, names));
  if (!isKnown) return { undo: null, resting: said };
  const id = (await house.context.store.ask(inOrder(all))).join(',');
  return { undo: { id, kind: 'undo', acts: newer.length === 0 ? 1 : all.length }, resting: said };
}

/** What an undo undid together is done again together. */
function again({ undos }: Known, ids: readonly number[]): StepUndo | null {
  const [undo, acts] = undos.get(ids[0] ?? 0) ?? [];
  return undo === undefined || acts === undefined ? null : { id: `${undo}`, kind: 'again', acts };
}
