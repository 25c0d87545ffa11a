/** What a change of a kind does to the keeper's animals of it, or to typical ones where there are none. */
import { counted, lengthText } from '../../../views/format.ts';
import type { Effect, EffectLine, EffectSide } from '../../../views/partials/effect.tsx';
import type { Tried } from '../../actions/index.ts';
import { type Animal, type Kind, NOTHING_ON_RECORD, ruleOf } from '../../husbandry/animals/index.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import { type Diet, dietOf } from '../../husbandry/supply/index.ts';
import { gaugeOfStage } from '../../intake/index.ts';
import { massWords, needWords, oftenWords, takesWords, windowOf } from './diet-words.ts';
import { nextInShort } from './meals.ts';
import type { Visit } from './visit.ts';

const MOST_SHOWN = 8;

interface Asked {
  readonly kind: Kind;
  /** The stage that is changed; null for the kind as a whole. */
  readonly stage: string | null;
  /** Why what is typed cannot stand yet. */
  readonly wrong?: readonly string[];
}

/** Species that live here come first in words and masses. */
export const keptIn = ({ bins }: Snapshot): ReadonlySet<string> =>
  new Set(bins.map(({ species }) => species));

export function effectOf(here: Visit, tried: Tried, { kind, stage, wrong = [] }: Asked): Effect {
  const all = tried.before.animals.filter((animal) => animal.kind === kind.code);
  const inStage = all.filter((animal) => stage === null || touches(tried, animal, stage));
  const own = inStage.length > 0;
  const animals = own ? inStage : typical(kind, stage);
  const kept = keptIn(tried.before);
  const told = animals.flatMap((animal) => tellingOf(here, tried, { animal, own, kept }));
  const changed = told.filter(({ line }) => isChanged(line));
  const listed = [...changed, ...told.filter(({ line }) => !isChanged(line))];
  return {
    finding: wrong.length > 0 ? NOT_YET : findingOf({ changed: changed.length, all: told.length, own }),
    wrong,
    lines: listed.slice(0, MOST_SHOWN).map(({ line }) => line),
    more: Math.max(0, listed.length - MOST_SHOWN),
    week: own ? { before: weekOf(told, 'before'), after: weekOf(told, 'after') } : null,
  };
}

const NOT_YET = 'Put right what is marked, then this shows what it would do. Until then, this holds:';

/** Whether an animal is in the stage, or would be. */
const touches = ({ before, after }: Tried, animal: Animal, stage: string): boolean =>
  [before, after].some(({ facts }) => {
    const kind = facts.kinds.get(animal.kind);
    return kind !== undefined && ruleOf(kind, animal).stage === stage;
  });

interface Told {
  readonly animal: Animal;
  readonly line: EffectLine;
  readonly before: Diet;
  readonly after: Diet;
}

function tellingOf(
  { names, unit }: Visit,
  { before, after }: Tried,
  { animal, own, kept }: { animal: Animal; own: boolean; kept: ReadonlySet<string> },
): Told[] {
  const [was, will] = [before, after].map(({ facts }) => dietOf(animal, { facts, kept }));
  if (was == null || will == null) return [];
  const side = (diet: Diet, snapshot: Snapshot): EffectSide => ({
    takes: takesWords(diet, unit),
    often: own ? `${oftenWords(diet)}, ${nextInShort(snapshot, animal)}` : oftenWords(diet),
    need: needWords(diet),
    window: windowOf(diet),
    ownLengthMm: diet.eater.referenceMm,
  });
  const name = own ? (names.animals.get(animal.code) ?? animal.code) : animal.name;
  const many = animal.count > 1 ? ` × ${animal.count}` : '';
  const line = {
    who: `${name}${many} (${lengthText(animal.gaugeMm, unit)})`,
    before: side(was, before),
    after: side(will, after),
  };
  return [{ animal, line, before: was, after: will }];
}

const isChanged = ({ before, after }: EffectLine): boolean =>
  before.takes !== after.takes || before.often !== after.often || before.need !== after.need;

function findingOf({ changed, all, own }: { changed: number; all: number; own: boolean }): string {
  if (!own) {
    const typicalOne = 'None of yours is at this stage; this is a typical one.';
    return changed === 0 ? typicalOne : `${typicalOne} It would change as shown.`;
  }
  if (changed === 0) return `This is what ${all === 1 ? 'the one of yours gets' : `your ${all} get`} now.`;
  return changed === all
    ? `Changes what ${all === 1 ? 'the one of yours gets' : `all ${all} of yours get`}.`
    : `Changes what ${changed} of your ${all} get.`;
}

/** 'about 9 items of the best size, 3.1 g'. */
function weekOf(told: readonly Told[], side: 'before' | 'after'): string {
  const sum = (amount: (diet: Diet) => number) =>
    told.reduce((total, each) => total + each.animal.count * amount(each[side]), 0);
  const items = sum(({ itemsPerWeek }) => itemsPerWeek);
  const shown = items < 1 ? 'under 1 item' : counted(Number(items.toPrecision(2)), 'item');
  return `${shown} of the best size, ${massWords(sum(({ mgPerWeek }) => mgPerWeek))}`;
}

/** One of each stage asked for, of the middle size of its stage. */
const typical = (kind: Kind, stage: string | null): readonly Animal[] =>
  kind.stages
    .filter((rule) => stage === null || rule.stage === stage)
    .map((rule) => typicalOf(kind, rule.stage));

/** An animal of the middle size of a stage, about which nothing is on record. */
export const typicalOf = (kind: Kind, stage: Animal['stageOverride'] & string): Animal => ({
  code: '',
  name: `A typical ${kind.stages.find((rule) => rule.stage === stage)?.words[0] ?? stage}`,
  kind: kind.code,
  count: 1,
  sex: 'unsexed',
  matured: stage === 'mature male',
  gaugeMm: gaugeOfStage(kind, stage),
  gaugeAssumed: true,
  room: '',
  shelf: '',
  ...NOTHING_ON_RECORD,
  stageOverride: stage,
});
