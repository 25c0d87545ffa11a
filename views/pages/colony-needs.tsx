/** What a colony takes and gives in numbers, and what insures it. */
import { DAYS_PER_WEEK, PERCENT } from '../../src/husbandry/units.ts';
import { plural } from '../../src/husbandry/words.ts';
import { counted, sentenceCase, spell, writtenDay } from '../format.ts';
import type { ColonyTold } from './colony-answer.tsx';
import { about, breedersWords, dayOfWeek, ofHundred } from './colony-words.ts';

export const ColonyNeeds = (told: ColonyTold) => (
  <section aria-labelledby="colony-needs">
    <h2 id="colony-needs">What it takes</h2>
    <dl class="pairs colony-pairs">
      {needs(told).map(([what, words]) => (
        <>
          <dt>{what}</dt>
          <dd>{words}</dd>
        </>
      ))}
    </dl>
    <Tried {...told} />
  </section>
);

type Line = readonly [what: string, words: string];

const needs = (told: ColonyTold): readonly Line[] => [
  ['Breeders to rely on', reliedOn(told)],
  ['With no bad luck at all', leastWords(told)],
  ...harvestLines(told),
  ...binLines(told),
  ['Heat', heatWords(told)],
  ['Grows', growthWords(told)],
  ['Breeders grow old', retireWords(told)],
];

function reliedOn({ start: { sustaining, tried }, lasts }: ColonyTold): string {
  const met = `all that is wanted in ${ofHundred(lasts.weeksMet)} weeks over ${lasts.years} years`;
  if (sustaining === null)
    return `None found: not even ${counted(tried.at(-1)?.females ?? 0, 'female')} give ${met} as often as asked.`;
  return `${breedersWords(sustaining)}. ${ofHundred(sustaining.chance)} such colonies give ${met}.`;
}

const TENTHS = 10;
const inTenths = (n: number): string => `${Math.round(n * TENTHS) / TENTHS}`;

function leastWords({ start: { smallest } }: ColonyTold): string {
  const surplus =
    smallest.surplus >= 1 ? ` About ${about(smallest.surplus)} a week of other sizes are left over.` : '';
  return `${inTenths(smallest.females)} females and ${inTenths(smallest.males)} males. With fewer, what is wanted cannot last.${surplus}`;
}

function harvestLines(told: ColonyTold): readonly Line[] {
  const { firstHarvest, lastsFrom, breakEven, costs } = told.start;
  const when = (week: number | null, from: string): string =>
    week === null
      ? 'not within these years'
      : `${from}week ${week}, about ${writtenDay(dayOfWeek(told, week))}`;
  return [
    ['First harvest', when(firstHarvest, '')],
    ['All that is wanted', when(lastsFrom, 'from ')],
    ...(costs === null ? [] : [['Cheaper than buying', when(breakEven, 'from ')] as const]),
  ];
}

function binLines({ start: { path, lastsFrom }, question }: ColonyTold): readonly Line[] {
  const most = Math.max(...path.map(({ heads }) => heads));
  const bins = path.map((week) => week.bins ?? 0);
  const alive = `About ${about(most)} alive at most`;
  if (question.binSize === null)
    return [['Room', `${alive}. Say below how large a bin is to know how many.`]];
  const first = lastsFrom === null ? null : bins[lastsFrom - 1];
  const mostBins = counted(Math.max(...bins), 'bin');
  const words = first == null || first === Math.max(...bins) ? mostBins : `${first}, later ${mostBins}`;
  return [['Bins', `${words}. ${alive}.`]];
}

/** How much warmer than its room it is kept. */
function heatWords({ question, room }: ColonyTold): string {
  const { dayC, nightC } = question;
  const kept =
    dayC === nightC
      ? `${inTenths(dayC)} °C day and night`
      : `${inTenths(dayC)} °C by day, ${inTenths(nightC)} °C by night`;
  const [byDay, byNight] = [dayC - room.temp.maxC, nightC - room.temp.minC];
  if (byDay === 0 && byNight === 0) return `${kept}, as ${room.name} is.`;
  if (byDay < 0 || byNight < 0) return `${kept}: cooler than ${room.name}.`;
  const warmer =
    byDay === byNight
      ? `${inTenths(byDay)} degrees`
      : `${inTenths(byDay)} degrees by day and ${inTenths(byNight)} by night`;
  return `${kept}. ${room.name} is colder: warm the bins by ${warmer}.`;
}

function growthWords({ start: { growth } }: ColonyTold): string {
  const { doublingDays, generationDays, weeklyShare } = growth;
  const doubles =
    doublingDays === null
      ? ''
      : `Doubles in ${spell(doublingDays)} while there is room and nothing is taken. `;
  return `${doubles}${sentenceCase(spell(generationDays))} from one generation to the next. At most ${ofHundred(weeklyShare)} of all sizes can be taken a week for good.`;
}

function retireWords({ species }: ColonyTold): string {
  const days = species.laying?.retireAfterDays?.value;
  return days === undefined
    ? 'Nobody says at what age to replace them; those that die are replaced from the young.'
    : `Replace them after ${spell(days)} of adult life.`;
}

/** How the chance rises with the breeders. */
const Tried = ({ start: { tried }, lasts }: ColonyTold) => (
  <details class="numbers">
    <summary>The numbers of females tried</summary>
    <div class="scroller">
      <table>
        <caption>
          Of {PERCENT} colonies, how many give all that is wanted in {ofHundred(lasts.weeksMet)} weeks
        </caption>
        <thead>
          <tr>
            <th scope="col">Females</th>
            <th scope="col">Males</th>
            <th scope="col">Colonies of {PERCENT}</th>
          </tr>
        </thead>
        <tbody>
          {tried.map(({ females, males, chance }) => (
            <tr>
              <th scope="row">{females}</th>
              <td>{males}</td>
              <td>{Math.round(chance * PERCENT)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  </details>
);

/** Two lines, and starters of many ages. */
export const Insured = ({ lost, species, start }: ColonyTold) => (
  <section aria-labelledby="colony-insured">
    <h2 id="colony-insured">So that one bad day does not end it</h2>
    <p>
      Of {PERCENT} colonies about {Math.round(lost.one * PERCENT)} are lost within a year. Two lines that
      share a room or their origin are both lost in about {inTenths(lost.together * PERCENT)}; two that share
      neither, in {inTenths(lost.apart * PERCENT)}. Split it once it can spare the starters.
    </p>
    <p>
      Begin with {plural(species.commonName)} of many ages, or add a few females every{' '}
      {counted(
        Math.max(1, Math.round(start.growth.generationDays / DAYS_PER_WEEK / GENERATION_PARTS)),
        'week',
      )}{' '}
      in the first generation: then they do not grow old together.
    </p>
  </section>
);
/** Starters come in so many parts over a generation. */
const GENERATION_PARTS = 4;
