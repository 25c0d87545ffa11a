/** Folds an animal's recent record into what the core needs to know of its meals and moults. */
import type { Animal, Outcome } from '../husbandry/animals/index.ts';
import type { PreyGiven } from '../husbandry/appetite/index.ts';
import type { DayNumber } from '../husbandry/calendar.ts';
import { grouped } from '../husbandry/grouped.ts';
import { type AnimalRecord, OFFERS_READ } from '../store/index.ts';

export type Fed = Pick<
  Animal,
  | 'lastOffered'
  | 'lastOutcome'
  | 'lastTaken'
  | 'lastMoult'
  | 'premoultSeen'
  | 'intervalsOnRecord'
  | 'offersOnRecord'
  | 'takenOnRecord'
  | 'refusalsInRow'
>;

export interface Reading {
  readonly today: DayNumber;
  /** Days without food after a moult, in which an offer teaches nothing of appetite. */
  readonly waitAfterMoultDays: number;
}

interface Offer {
  readonly day: DayNumber;
  readonly outcome: Outcome;
}

/** The animal's record as of today. */
export function fedFrom(record: AnimalRecord, { today, waitAfterMoultDays }: Reading): Fed {
  const offers = record.offers.map(
    ([day, outcome]): Offer => ({ day, outcome: outcome ?? unsaid(day, today) }),
  );
  const meals = [...new Set(offers.filter(accepted).map(({ day }) => day))];
  const [moult] = record.moults;
  const telling = offers.filter(
    ({ day, outcome }) => outcome !== 'offered' && isTelling(record, day, waitAfterMoultDays),
  );
  return {
    lastOffered: offers[0]?.day ?? null,
    lastOutcome: offers[0]?.outcome ?? null,
    lastTaken: meals[0] ?? null,
    lastMoult: moult === undefined ? null : { earliest: moult[0], found: moult[1] },
    premoultSeen: premoultSince(record, today),
    intervalsOnRecord: plainIntervals(meals, offers, record.moults),
    offersOnRecord: telling.length,
    takenOnRecord: telling.filter(accepted).length,
    refusalsInRow: refusalsInRow(offers, moult?.[1] ?? null),
  };
}

/** Whole meals given since the animal has the size it has now; a meal of which a part cannot be counted is left out. */
export function givenSince({ offers, moults }: AnimalRecord, gaugeDay: DayNumber): PreyGiven[] {
  const found = moults[0]?.[1] ?? -Infinity;
  const isCut = offers.length === OFFERS_READ;
  const oldest = offers.at(-1)?.[0];
  const now = offers.filter(([day]) => day > found && day >= gaugeDay && !(isCut && day === oldest));
  return [...grouped(now, ([day]) => day)].flatMap(([day, rows]) => {
    const given = rows.flatMap(([, , heads, species, fromMm, toMm]) =>
      heads === null || species === null || fromMm === null || toMm === null
        ? []
        : [{ day, species, heads, fromMm, toMm }],
    );
    return given.length === rows.length ? given : [];
  });
}

/**
 * Days between meals, oldest first, where the animal was free to eat: a refusal or a moult between two meals is
 * counted by acceptance and by the wait after a moult already.
 */
function plainIntervals(
  meals: readonly DayNumber[],
  offers: readonly Offer[],
  moults: AnimalRecord['moults'],
): number[] {
  const refused = offers.filter(({ outcome }) => outcome === 'refused').map(({ day }) => day);
  return meals
    .slice(1)
    .map((from, at) => ({ from, to: meals[at]! }))
    .filter(
      ({ from, to }) =>
        !refused.some((day) => from < day && day < to) &&
        !moults.some(([earliest, found]) => earliest < to && from < found),
    )
    .map(({ from, to }) => to - from)
    .reverse();
}

/** Evenings refused since prey was last taken or a moult was found; what waits for an outcome is passed over. */
function refusalsInRow(offers: readonly Offer[], moultFound: DayNumber | null): number {
  const since = offers.filter(({ day, outcome }) => outcome !== 'offered' && day > (moultFound ?? -Infinity));
  const end = since.findIndex(accepted);
  const refused = end < 0 ? since : since.slice(0, end);
  return new Set(refused.map(({ day }) => day)).size;
}

/** If nobody says, prey offered on an earlier day was taken. */
export const unsaid = (day: DayNumber, today: DayNumber): Outcome =>
  day < today ? 'taken (assumed)' : 'offered';

const accepted = ({ outcome }: Offer): boolean =>
  outcome === 'taken' || outcome === 'part-taken' || outcome === 'taken (assumed)';

/** The last premoult seen with no moult found since, up to a day. */
function premoultSince(record: AnimalRecord, day: DayNumber): DayNumber | null {
  const seen = record.premoults.find((premoult) => premoult <= day);
  if (seen === undefined) return null;
  return record.moults.some(([, found]) => found >= seen && found <= day) ? null : seen;
}

/** Whether an offer tells of appetite: not in premoult, nor between a moult and the end of its wait. */
const isTelling = (record: AnimalRecord, day: DayNumber, wait: number): boolean =>
  premoultSince(record, day) === null &&
  !record.moults.some(([earliest, found]) => earliest <= day && day <= found + wait);
