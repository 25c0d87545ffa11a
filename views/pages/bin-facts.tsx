/** What is known of a bin in numbers: how many, how large, how it grows, what may be taken, when it outgrows whom. */
import type { BinToday } from '../../src/husbandry/supply/index.ts';
import { PreyStrip, RulerHead } from '../charts/window-bracket.tsx';
import { ago, counted, isGuess, lengthRange, sentenceCase } from '../format.ts';
import { aliveWords, comesTo, goes as goesWords } from '../partials/bin-words.ts';
import { lastLookWords, learnedWords } from '../partials/learned-words.ts';
import type { BinPageProps } from './bin.tsx';
import { feedsWords, malesWords, restWords, roomWords, takesWords } from './bin-ahead-words.ts';

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

function aheadLines({ bin, goes, outlook, unit, shell, kept }: BinPageProps) {
  const { today } = shell;
  const when = { today, restsUntil: kept.restsUntil };
  const coming = goes === null ? [] : comesTo({ bin, goes, today });
  return [
    ['Left alone', restWords(kept.restsUntil)],
    ['In the weeks to come', coming.length === 0 ? null : sentenceCase(coming.join('; '))],
    ['Take each week', outlook?.takes == null ? null : takesWords(outlook.takes, when)],
    ['Feeds', feedsWords(outlook?.feeds ?? [], { ...when, unit })],
    ['Room', roomWords(outlook?.culls ?? [], when)],
    ['Males', malesWords(outlook?.culls ?? [], when)],
  ] as const;
}

const howSure = (heads: BinToday['headsNow']): string =>
  isGuess(heads)
    ? ' in 9 cases of 10: too long ago to tell; count it'
    : `, in 9 cases of 10 between ${Math.round(heads.low)} and ${Math.round(heads.high)}`;

const warmthWords = ({ minC, maxC }: BinPageProps['warmth']): string =>
  minC === maxC ? `${minC} °C` : `${maxC} °C by day, ${minC} °C by night`;
