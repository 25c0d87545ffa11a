/** Sunday's groups: who eats prey of which length, whether it lasts, when it runs out, whom it touches. */

import type { DayNumber } from '../../src/husbandry/calendar.ts';
import type { CoverAnswer, GroupAnswer } from '../../src/husbandry/supply/index.ts';
import { CoverLine } from '../charts/cover-line.tsx';
import { RunOutDots } from '../charts/run-out-dots.tsx';
import {
  counted,
  type LengthUnit,
  lengthRange,
  listed,
  percent,
  sentenceCase,
  shortDay,
  weeksIn,
} from '../format.ts';
import { type Names, nameOf, preyName } from '../names.ts';
import { shortfallWords, VerdictWord } from '../partials/verdict.tsx';
import { paths } from '../paths.ts';
import { Lasting } from './sunday-lasting.tsx';

interface GroupsProps {
  readonly answer: CoverAnswer;
  readonly names: Names;
  readonly unit: LengthUnit;
}

const URGENCY = { 'runs short': 0, tight: 1, lasts: 2, empty: 3 } as const;

/** Up to this many groups are shown at once; of more, those that last are folded. */
const SHOWN_MOST = 6;

export const GroupsTable = (props: GroupsProps) => {
  const groups = props.answer.groups.toSorted(
    (a, b) => URGENCY[a.verdict] - URGENCY[b.verdict] || b.missedMeals - a.missedMeals,
  );
  const fold = groups.length > SHOWN_MOST;
  const shown = groups.filter(({ verdict }) => !fold || verdict !== 'lasts');
  const folded = groups.filter(({ verdict, heads }) => fold && verdict === 'lasts' && heads > 0);
  return (
    <section aria-labelledby="groups">
      <h2 id="groups">Who eats what, and does it last?</h2>
      {shown.length === 0 ? null : <Groups {...props} groups={shown} />}
      {folded.length === 0 ? null : (
        <details class="folded">
          <summary>
            {lastingWords(
              folded.reduce((sum, { heads }) => sum + heads, 0),
              shown.length > 0,
            )}
          </summary>
          <Lasting {...props} groups={folded} />
        </details>
      )}
    </section>
  );
};

/** 'For the other 217 animals it lasts', or 'For all 27 animals it lasts'. */
function lastingWords(animals: number, others: boolean): string {
  const who = counted(animals, 'animal');
  if (others) return `For the other ${who} it lasts`;
  return animals === 1 ? 'For the one animal here it lasts' : `For all ${who} it lasts`;
}

interface Listed extends GroupsProps {
  readonly groups: readonly GroupAnswer[];
}

const Groups = (props: Listed) => (
  <table class="groups stacks">
    <thead>
      <tr>
        <th scope="col">Who, and prey length</th>
        <th scope="col">Lasts?</th>
        <th scope="col">Runs out</th>
        <th scope="col">Meals</th>
        <th scope="col">Misses out first</th>
      </tr>
    </thead>
    {props.groups.map((group, i) => (
      <tbody>
        <GroupRow {...props} group={group} />
        <DayByDay {...props} group={group} id={`group-${i}`} />
      </tbody>
    ))}
  </table>
);

/** 'Thu 27 Nov (Tue 25 Nov to Sat 29 Nov)'. */
function runOutWords({ chance, day }: GroupAnswer['runOut'], first: DayNumber): string {
  if (day === null || chance < NAMED_FROM) return 'it does not';
  const [low, mid, high] = [day.low, day.mid, day.high].map((days) => first + Math.round(days)) as [
    number,
    number,
    number,
  ];
  return low === high ? shortDay(mid) : `${shortDay(mid)} (${shortDay(low)} to ${shortDay(high)})`;
}
const NAMED_FROM = 0.05;

const GroupRow = ({ group, answer, names, unit }: GroupsProps & { group: GroupAnswer }) => (
  <tr>
    <th scope="row">
      {sentenceCase(group.name)}
      <small>
        {counted(group.heads, 'animal')}, prey {lengthRange(group.window.minMm, group.window.maxMm, unit)}
      </small>
    </th>
    <td data-label="Lasts">
      <VerdictWord verdict={group.verdict} />
      <small>{weeksIn(group.nothingMissed.chance)}</small>
    </td>
    <td data-label="Runs out">{runOutWords(group.runOut, answer.day)}</td>
    <td data-label="Meals">
      {Math.round(group.mealsDue)} due
      <small>{shortfallWords(group)}</small>
    </td>
    <td data-label="Misses out first">
      <Touched group={group} names={names} />
    </td>
  </tr>
);

const DayByDay = ({ group, id, answer, names }: GroupsProps & { id: string; group: GroupAnswer }) => (
  <tr class="more">
    <td colspan={5}>
      <details>
        <summary>
          Day by day<span class="unseen">: {group.name}</span>
        </summary>
        <p>Takes {listed(group.species.map((code) => preyName(names.species, code)))}.</p>
        <div class="pair">
          <CoverLine id={`${id}-cover`} group={group} firstDay={answer.day} />
          {group.runOut.day === null ? null : (
            <RunOutDots
              id={`${id}-dots`}
              name={sentenceCase(group.name)}
              runOut={group.runOut}
              firstDay={answer.day}
              days={answer.horizonDays}
            />
          )}
        </div>
      </details>
    </td>
  </tr>
);

const NAMED_MOST = 3;

const Touched = ({ group, names }: { group: GroupAnswer; names: Names }) => {
  if (group.touched.length === 0) return <>nobody</>;
  const shown = group.touched.slice(0, NAMED_MOST);
  const more = group.touched.length - shown.length;
  return (
    <>
      {shown.map(({ animal, chance }, i) => (
        <>
          {i > 0 ? ', ' : ''}
          <a href={paths.animal(animal)}>{nameOf(names.animals, animal)}</a> {percent(chance)}
        </>
      ))}
      {more > 0 ? ` and ${more} more` : ''}
    </>
  );
};
