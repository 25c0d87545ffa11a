/** A sac in words: how it stands, what its young will want, and what to start or order for them. */
import type { DayNumber } from '../src/husbandry/calendar.ts';
import type { PlannedChange } from '../src/husbandry/snapshot.ts';
import type { HatchWave, YoungPrey } from '../src/husbandry/supply/index.ts';
import { DAYS_PER_WEEK } from '../src/husbandry/units.ts';
import { plural } from '../src/husbandry/words.ts';
import {
  counted,
  dayRange,
  listed,
  longDay,
  partOfMonth,
  percent,
  roundly,
  sentenceCase,
  shortDay,
} from './format.ts';
import { type Names, nameOf, preyName, sizedPrey } from './names.ts';

/** 'the sac of Clove', or of its kind where no mother is named. */
export const sacOf = ({ animal }: PlannedChange, { names, kind }: { names: Names; kind: string }): string =>
  animal === null ? `a sac of ${kind}` : `the sac of ${nameOf(names.animals, animal)}`;

/** 'flies', 'pinheads', 'small dubia roaches'. */
function nounOf({ species, size }: YoungPrey['fits'][number], { species: known }: Names): string {
  if (known.get(species)?.form === 'fly') return 'flies';
  return size === 'pinhead' ? plural(size) : sizedPrey(size, preyName(known, species));
}

/** 'about 130 flies or 80 pinheads': what fits, in the words of the trade, and how many of it a week. */
function fittingWords({ fits, cups, order }: YoungPrey, names: Names): string {
  const counts = new Map<string, number>();
  const advised = fits.filter(({ species }) => species === cups?.species || species === order?.species);
  for (const fitting of advised.length > 0 ? advised : fits.slice(0, 1)) {
    const word = nounOf(fitting, names);
    if (!counts.has(word)) counts.set(word, fitting.heads);
  }
  const [first, second] = [...counts].map(([word, heads]) => ({ word, many: roundly(heads) }));
  if (first === undefined) return 'prey smaller than any the trade sells';
  if (second === undefined) return `about ${first.many} ${first.word}`;
  const many = second.many === first.many ? '' : `${second.many} `;
  return `about ${first.many} ${first.word} or ${many}${second.word}`;
}

/** A first feed this near is not given a part of a month. */
const SOON_DAYS = 10;

/** 'will want about 130 flies or 80 pinheads a week from mid February; others of that size now want 14'. */
export function waveWords(change: PlannedChange, wave: HatchWave, { prey, names }: Fed): string {
  const fitting = fittingWords(prey, names);
  const middle = Math.round((change.from + change.to) / 2);
  const when = Math.max(wave.firstDay, middle) - wave.firstDay < SOON_DAYS ? 'now on' : partOfMonth(middle);
  const others =
    wave.now < 1 ? 'nobody else eats that size now' : `the others of that size now eat ${roundly(wave.now)}`;
  return `will want ${fitting} a week from ${when}; ${others}`;
}

interface Fed {
  readonly prey: YoungPrey;
  readonly names: Names;
}

/** How far it has come, in sentences. */
export function sacStory({ sac, from, to, count, chance }: PlannedChange): string {
  const laid = sac?.laid
    ? `Laid ${dayRange(sac.laid.from, sac.laid.to)}.`
    : 'Day of laying not written down.';
  const pulled = sac?.pulled ? ` Taken from the mother ${shortDay(sac.pulled)}.` : '';
  const young = sac?.counted ? `${count} young` : `about ${count} young expected`;
  const kept = sac && sac.shareKept < 1 ? `, ${Math.round(count * sac.shareKept)} to stay` : '';
  const out = sac?.hatched ? ` Out since ${shortDay(sac.hatched)}.` : '';
  const likely = chance < 1 ? ` ${percent(chance)} likely to come off, as you said.` : '';
  const fast = sac?.motherFasts ? ` Its mother takes no food until ${shortDay(sac.motherFasts.to + 1)}.` : '';
  return `${laid}${pulled}${out} ${sentenceCase(young)}${kept}; first feed ${dayRange(from, to)}.${likely}${fast}`;
}

interface Told {
  readonly names: Names;
  readonly today: DayNumber;
}

/** 'Start 2 cups of small fruit flies on Sunday 24 January, then 2 more each week.' */
export function cupWords({ cups }: YoungPrey, { names, today }: Told): string | null {
  const first = cups?.starts[0];
  if (!cups || !first) return null;
  const flies = preyName(names.species, cups.species);
  const on = first.day === today ? 'today' : `on ${longDay(first.day)}`;
  const begin = `Start ${counted(first.cups, 'cup')} of ${flies} ${on}`;
  const later = cups.starts.slice(1);
  if (later.length === 0) return `${begin}.`;
  const alike = later.every(({ cups: n }) => n === later[0]?.cups);
  const weekly = later.every(({ day }, i) => day - (cups.starts[i]?.day ?? 0) === DAYS_PER_WEEK);
  if (alike && weekly) return `${begin}, then ${later[0]?.cups} more each week.`;
  return `${begin}, then ${listed(later.map(({ day, cups: n }) => `${n} on ${shortDay(day)}`))}.`;
}

/** 'Or order about 120 pinheads a week: by Wed 20 Jan, to come Sat 23 Jan.' */
export function orderWords({ order }: YoungPrey, { names, today }: Told): string | null {
  if (order === null) return null;
  const by = order.orderBy === today ? 'today' : `by ${longDay(order.orderBy)}`;
  return `order about ${roundly(order.heads)} ${nounOf(order, names)} a week: ${by}, to come ${longDay(order.comes)}.`;
}
