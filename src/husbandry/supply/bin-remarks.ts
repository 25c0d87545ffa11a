/** What must be said of a bin as it stands: its climate, how long it keeps in the cold or the freezer, how long it stays apart. */
import type { DayNumber } from '../calendar.ts';
import {
  type Bin,
  coldSince,
  coldUntil,
  growthRemarks,
  isApart,
  isCold,
  layingRemarks,
  oldestSince,
} from '../larder/index.ts';
import { madeOnce } from '../made-once.ts';
import type { ColdStore, PreySpecies } from '../prey/index.ts';
import { binClimate } from '../rooms.ts';
import type { Facts } from '../snapshot.ts';
import { plural, sentenceCase } from '../words.ts';
import { binNow } from './holding.ts';
import { keptOr } from './laid.ts';
import type { Setting } from './stock-bin.ts';
import { spokenDay } from './wording.ts';

/** Sentences for the bin's page and for the answer of an act that moves it; none when all is as usual. */
export function binRemarks(setting: Setting, bin: Bin): readonly string[] {
  const species = setting.facts.species.get(bin.species);
  if (species === undefined) return [];
  const apart = isApart(bin, setting.today)
    ? [`Kept apart until ${spokenDay(bin.quarantineUntil ?? 0)}.`]
    : [];
  const kept = bin.role === 'frozen' ? frozenWords(setting, bin) : livingWords(setting, bin, species);
  return [...apart, ...kept];
}

/** The last day to which what stands in the cold or the freezer keeps; null for other bins, and where nobody wrote since when. */
export function keepsTo(setting: Setting, bin: Bin): DayNumber | null {
  if (bin.role === 'frozen') {
    const oldest = oldestSince(bin, headsFrozen(setting, bin));
    return oldest === null ? null : oldest + frozenDays(setting.facts);
  }
  const store = setting.facts.species.get(bin.species)?.coldStore;
  const since = store === undefined ? null : coldSince(bin, store);
  return store === undefined || since === null ? null : coldUntil(since, store);
}

function livingWords(setting: Setting, bin: Bin, species: PreySpecies): readonly string[] {
  const { today } = setting;
  if (species.coldStore && isCold(bin.ownC ?? null, species.coldStore))
    return coldWords(bin, species, { today, store: species.coldStore });
  const climate = binClimate(setting, bin);
  const days = { temp: climate.on(today), weekMeanC: climate.weekMeanOn(today) };
  const laying = bin.role === 'colony' ? layingRemarks(species, days) : [];
  return [...growthRemarks(species, days), ...laying];
}

/** How long the cold may last, and that it has lasted too long. */
function coldWords(
  bin: Bin,
  { commonName }: PreySpecies,
  { today, store }: { today: number; store: ColdStore },
): readonly string[] {
  const since = coldSince(bin, store);
  const limit = `${sentenceCase(plural(commonName))} keep ${store.days.value} days in the cold`;
  const colder = Math.min(bin.ownC?.dayC ?? Infinity, bin.ownC?.nightC ?? Infinity) < store.harmBelowC.value;
  const harm = colder ? [`Below ${store.harmBelowC.value} °C the cold harms them.`] : [];
  if (since === null) return [`${limit}.`, ...harm];
  const until = coldUntil(since, store);
  return today > until
    ? [`${limit}; these have stood in it since ${spokenDay(since)}: warm them up or feed them off.`, ...harm]
    : [`${limit}: to ${spokenDay(until)}.`, ...harm];
}

/** How old the frozen stock is, when the oldest is used first. */
function frozenWords(setting: Setting, bin: Bin): readonly string[] {
  const since = oldestSince(bin, headsFrozen(setting, bin));
  if (since === null) return [];
  const keeps = frozenDays(setting.facts);
  return setting.today - since > keeps
    ? [
        `Some of it has been frozen since ${spokenDay(since)}, longer than ${keeps} days: use no more of that.`,
      ]
    : [`The oldest was frozen on ${spokenDay(since)}; it keeps to ${spokenDay(since + keeps)}.`];
}

const headsIn = madeOnce((_: Setting) => new Map<Bin, number>());

/** Every look at the larder asks. */
const headsFrozen = (setting: Setting, bin: Bin): number =>
  keptOr(headsIn(setting), bin, () => binNow(setting, bin).heads);

const frozenDays = ({ policy }: Facts): number => policy.frozenKeepsDays.value;
