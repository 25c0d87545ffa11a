/** What is known of a bin in numbers: how many, how large, how it grows, what may be taken, when it outgrows whom. */
import type { Cull } from '../../src/husbandry/colony/index.ts';
import type { BinToday, FedBy } from '../../src/husbandry/supply/index.ts';
import { PERCENT } from '../../src/husbandry/units.ts';
import { PreyStrip, RulerHead } from '../charts/window-bracket.tsx';
import {
  ago,
  counted,
  dayRange,
  isGuess,
  type LengthUnit,
  lengthRange,
  listed,
  roundly,
  sentenceCase,
  shortDay,
} from '../format.ts';
import { aliveWords, comesTo, goes as goesWords } from '../partials/bin-words.ts';
import { lastLookWords, learnedWords } from '../partials/learned-words.ts';
import type { BinPageProps } from './bin.tsx';

export const BinFacts = (props: BinPageProps) => {
  const { bin, now, names, unit, outlook } = props;
  const { lengthsNow, headsNow } = now;
  const isThere = headsNow.high >= 1 && lengthsNow.high > 0;
  return (
    <section class="facts" aria-label="Now and next">
      {isThere && outlook === null ? (
        <div class="strip-box">
          <RulerHead unit={unit} />
          <PreyStrip
            id="size"
            title={`${bin.name}: ${lengthRange(lengthsNow.low, lengthsNow.high, unit)}`}
            form={names.species.get(bin.species)?.form ?? 'cricket'}
            {...lengthsNow}
          />
        </div>
      ) : null}
      <dl class="pairs">
        {linesOf(props).map(([what, said]) => (
          <>
            <dt>{what}</dt>
            <dd>{typeof said === 'string' ? said : <Several said={said} />}</dd>
          </>
        ))}
      </dl>
    </section>
  );
};

const Several = ({ said }: { said: readonly string[] }) => (
  <ul class="starts">
    {said.map((each) => (
      <li>{each}</li>
    ))}
  </ul>
);

type Said = string | readonly string[];
type Line = readonly [what: string, said: Said];

/** What there is to say; a line without words is left out. */
const linesOf = (props: BinPageProps): readonly Line[] => {
  const { bin, now, unit, answer, horizonDays, warmth, remarks } = props;
  const isThere = now.headsNow.high >= 1;
  const { low, high } = now.lengthsNow;
  const lines: readonly (readonly [string, Said | null])[] = [
    [
      bin.role === 'frozen' ? 'Frozen' : 'Alive',
      bin.role === 'cup' ? null : `${aliveWords(now)}${isThere ? howSure(now.headsNow) : ''}`,
    ],
    ['Size now', isThere && high > 0 ? lengthRange(low, high, unit) : null],
    ['Last looked', now.lookedDaysAgo === null ? 'never' : ago(now.lookedDaysAgo)],
    ['Last seen', lastLookWords(props.lastLook)],
    [`Next ${counted(horizonDays, 'day')}`, answer === null ? null : goesWords(answer, bin.role)],
    ...aheadLines(props),
    ['Learned', bin.role === 'holding' || bin.role === 'colony' ? learnedWords(now.learned) : null],
    bin.role === 'frozen' ? ['Keeps', remarks] : ['Warmth', [warmthWords(warmth), ...remarks]],
    ['Came from', bin.origin === undefined || bin.origin === '' ? null : bin.origin],
  ];
  return lines.filter((line): line is Line => line[1] !== null && line[1].length > 0);
};

function aheadLines({ bin, goes, outlook, unit, shell }: BinPageProps) {
  const { today } = shell;
  const coming = goes === null ? [] : comesTo({ bin, goes, today });
  const culls = outlook?.culls ?? [];
  return [
    ['In the weeks to come', coming.length === 0 ? null : sentenceCase(coming.join('; '))],
    ['Take each week', outlook?.takes == null ? null : takesWords(outlook.takes)],
    ['Feeds', feedsWords(outlook?.feeds ?? [], { today, unit })],
    ['Room', culls.some(({ why }) => why === 'room') ? roomWords(culls, today) : null],
    ['Males', malesWords(culls)],
  ] as const;
}

const howSure = (heads: BinToday['headsNow']): string =>
  isGuess(heads)
    ? ' in 9 cases of 10: too long ago to tell; count it'
    : `, in 9 cases of 10 between ${Math.round(heads.low)} and ${Math.round(heads.high)}`;

const warmthWords = ({ minC, maxC }: BinPageProps['warmth']): string =>
  minC === maxC ? `${minC} °C` : `${maxC} °C by day, ${minC} °C by night`;

/** '70 small, or 55 medium, once it is full; while it grows no more than 7 in 100 of each size'. */
function takesWords({
  most,
  weeklyShare,
}: NonNullable<NonNullable<BinPageProps['outlook']>['takes']>): string {
  const share = Math.floor(weeklyShare * PERCENT);
  if (share < 1) return 'Nothing: it does not grow as warm as it stands.';
  const growing = `While it grows, no more than ${share} in 100 of each size.`;
  const sizes = most.filter(({ heads }) => heads >= 1);
  if (sizes.length === 0) return growing;
  const said = sizes.map(({ size, heads }) => `${roundly(heads).toLocaleString('en-GB')} ${size}`);
  return `Once it is full, up to ${said.join(', or ')}. ${growing}`;
}

const MOST_GROUPS = 4;

/** The groups it outgrows first, with the days on which it does; how many more it feeds. */
function feedsWords(
  feeds: readonly FedBy[],
  { today, unit }: { today: number; unit: LengthUnit },
): readonly string[] {
  const on = (day: number) => today + Math.round(day);
  const outgrown = feeds.flatMap(({ outgrownOn, ...fed }) =>
    outgrownOn !== null && outgrownOn.mid >= 1 ? [{ ...fed, ...outgrownOn }] : [],
  );
  const first = outgrown.toSorted((a, b) => a.mid - b.mid).slice(0, MOST_GROUPS);
  const said = first.map(
    ({ name, fromMm, toMm, low, mid, high }) =>
      `${sentenceCase(name)} that take ${lengthRange(fromMm, toMm, unit)}: until about ${shortDay(on(mid))} (${dayRange(on(low), on(high))})`,
  );
  const later = outgrown.length - first.length;
  const always = feeds.filter(({ outgrownOn }) => outgrownOn === null).length;
  return [
    ...said,
    ...(later > 0 ? [`Until later: ${counted(later, 'more group')}`] : []),
    ...(always > 0 ? [`Through the weeks ahead: ${counted(always, 'group')}`] : []),
  ];
}

/** How many of which size make room enough, the first time it is too full. */
function roomWords(culls: readonly Cull[], today: number): string {
  const forRoom = culls.filter(({ why }) => why === 'room');
  const day = forRoom[0]!.day;
  const first = forRoom.filter((cull) => cull.day === day);
  const heads = first.map(({ heads: n, size }) => `${roundly(n)} ${size?.name ?? 'of any size'}`);
  const when = day <= today ? 'now' : `by about ${shortDay(day)}`;
  return `Too full: take out about ${listed(heads)} ${when}. Feed them off, freeze them or split the bin.`;
}

function malesWords(culls: readonly Cull[]): string | null {
  const males = culls.find(({ why }) => why === 'males');
  return males === undefined
    ? null
    : `${counted(males.heads, 'male')} more than the females need: feed them off`;
}
