/** After a crash or die-off: who goes short from when, what they can take tonight, what to start, and which bins to look at. */
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import type { AtRisk, CrashAnswer, ShortAfter, StartNow } from '../../src/husbandry/supply/index.ts';
import { LOSS_CAUTION } from '../cautions.ts';
import {
  casesIn,
  counted,
  type LengthUnit,
  lengthRange,
  roundly,
  sentenceCase,
  shortDay,
} from '../format.ts';
import { type Names, nameOf, preyName } from '../names.ts';
import { insteadWords } from '../partials/instead-words.ts';
import { paths } from '../paths.ts';

/** A loss written down in the last days. */
export interface CrashShown {
  readonly day: DayNumber;
  /** Bins that share something with it. */
  readonly atRisk: readonly AtRisk[];
  /** Null until it is worked out. */
  readonly answer: CrashAnswer | null;
}

interface AfterCrashProps {
  readonly crash: CrashShown;
  readonly names: Names;
  readonly unit: LengthUnit;
}

export const AfterCrash = ({ crash, names, unit }: AfterCrashProps) => (
  <section class="after-crash" aria-labelledby="after-crash">
    <h2 id="after-crash">{findingOf(crash)}</h2>
    <p class="caution">{LOSS_CAUTION}</p>
    {crash.answer?.short.map((short) => (
      <ShortGroup short={short} names={names} unit={unit} />
    ))}
    <Neighbours atRisk={crash.atRisk} names={names} />
  </section>
);

function findingOf({ day, answer }: CrashShown): string {
  if (answer === null) return `It crashed on ${shortDay(day)}: who goes short is being worked out …`;
  const [first] = answer.short;
  return first === undefined
    ? `It crashed on ${shortDay(day)}: nobody goes short for it within ${counted(answer.days, 'day')}`
    : `${sentenceCase(first.name)} go short from about ${shortDay(first.from)}`;
}

const ShortGroup = ({ short, names, unit }: { short: ShortAfter; names: Names; unit: LengthUnit }) => (
  <>
    <h3>
      {sentenceCase(short.name)} that take {lengthRange(short.window.minMm, short.window.maxMm, unit)}
    </h3>
    <p>
      From about {shortDay(short.from)} an evening finds too little for them in {casesIn(short.chance)}.
      Before the loss that was {casesIn(short.chanceBefore)}.
    </p>
    <dl class="pairs">
      <dt>Tonight</dt>
      <dd>{insteadWords(short, names)}</dd>
      <dt>Start today</dt>
      <dd>
        {short.start.length === 0 ? (
          'Nothing here helps in time: add another prey they take.'
        ) : (
          <ul class="starts">
            {short.start.map((start) => (
              <li>{startWords(start, names)}</li>
            ))}
          </ul>
        )}
      </dd>
    </dl>
  </>
);

function startWords(start: StartNow, names: Names): string {
  switch (start.kind) {
    case 'cup':
      return `A cup of ${preyName(names.species, start.species)}: first flies about ${shortDay(start.yields)}, most in the week from ${shortDay(start.best)}, about ${roundly(start.weekly)} in it.`;
    case 'order':
      return `Order ${preyName(names.species, start.species)}, ${start.size}, by ${shortDay(start.orderBy)}: here on ${shortDay(start.yields)}.`;
    case 'leave to breed':
      return start.yields === null
        ? 'Leaving the rest alone does not bring a week of meals back within a year.'
        : `Leave the rest alone: it holds a week of meals again about ${shortDay(start.yields)}.`;
  }
}

const SHARES: Readonly<Record<AtRisk['shares'], string>> = {
  origin: 'came from the same place',
  'species and room': 'the same prey in the same room',
};

const Neighbours = ({ atRisk, names }: { atRisk: readonly AtRisk[]; names: Names }) =>
  atRisk.length === 0 ? null : (
    <>
      <h3>Look at these today</h3>
      <ul class="starts">
        {atRisk.map(({ bin, shares }) => (
          <li>
            <a href={paths.bin(bin)}>{nameOf(names.bins, bin)}</a>: {SHARES[shares]}
          </li>
        ))}
      </ul>
    </>
  );
