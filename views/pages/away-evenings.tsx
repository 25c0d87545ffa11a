/** The evenings around an absence: who eats before the keeper leaves, and what a sitter feeds when. */
import type { Serving } from '../../src/husbandry/appetite/index.ts';
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import { counted, longDay, shortDay } from '../format.ts';
import { type Names, nameOf, preyName } from '../names.ts';
import { firstWords } from '../offer-words.ts';
import { paths } from '../paths.ts';
import type { AwayAnswer } from './away-answer.ts';

interface EveningsProps {
  readonly answer: AwayAnswer;
  readonly names: Names;
}

const AnimalLink = ({ code, names }: { code: string; names: Names }) => (
  <a href={paths.animal(code)}>{nameOf(names.animals, code)}</a>
);

export const Before = ({ answer, names }: EveningsProps) => {
  const { plan, rounds } = answer;
  const early = plan.animals.filter(({ fedBefore }) => fedBefore);
  if (early.length === 0 || plan.absence.eve === null) return null;
  const servings = rounds?.before?.servings ?? [];
  return (
    <section aria-labelledby="before">
      <h2 id="before">Before you leave: {longDay(plan.absence.eve)}</h2>
      <p>These may eat early that evening; then nobody need come for them.</p>
      {servings.length > 0 ? (
        <ServingList servings={servings} names={names} />
      ) : (
        <ul>
          {early.map(({ animal }) => (
            <li>
              <AnimalLink code={animal} names={names} />
            </li>
          ))}
        </ul>
      )}
    </section>
  );
};

/** '3 pinheads from Tub (kill first)' in words. */
function servingWords({ offer }: Serving, names: Names): string {
  if (offer === null) return 'nothing in the larder fits then';
  const first = firstWords(offer);
  const prey = preyName(names.species, offer.species, offer.heads);
  return `${offer.heads} ${prey} from ${nameOf(names.bins, offer.bin)}${first === '' ? '' : `, ${first}`}`;
}

const ServingList = ({ servings, names }: { servings: readonly Serving[]; names: Names }) => (
  <ul>
    {servings.map((serving) => (
      <li>
        <AnimalLink code={serving.animal} names={names} />: {servingWords(serving, names)}
      </li>
    ))}
  </ul>
);

export const SitterEvenings = ({ answer, names }: EveningsProps) => {
  const { plan, rounds } = answer;
  if (plan.visits.length === 0) return null;
  return (
    <section aria-labelledby="sitter">
      <h2 id="sitter">Somebody comes on {counted(plan.visits.length, 'evening')}</h2>
      {rounds === null ? (
        <p class="note">
          It begins too far ahead to say which bin will hold what. Look again nearer the day.
        </p>
      ) : (
        <PreyForSitter answer={answer} names={names} />
      )}
      {plan.visits.map(({ day, animals }) => (
        <VisitDetails day={day} animals={animals} answer={answer} names={names} />
      ))}
    </section>
  );
};

type VisitProps = EveningsProps & {
  readonly day: DayNumber;
  readonly animals: readonly string[];
};

const VisitDetails = ({ day, animals, answer, names }: VisitProps) => {
  const servings = answer.rounds?.visits.find((round) => round.day === day)?.servings;
  const fed = servings?.length ?? animals.length;
  const unfed = servings?.filter(({ offer }) => offer === null).length ?? 0;
  return (
    <details class="visit">
      <summary>
        {longDay(day)}: {counted(fed, 'animal')}
        {unfed > 0 ? `, ${unfed} with nothing that fits` : ''}
      </summary>
      {servings === undefined ? (
        <p>{animals.map((code) => nameOf(names.animals, code)).join(', ')}</p>
      ) : (
        <ServingList servings={servings} names={names} />
      )}
    </details>
  );
};

const PreyForSitter = ({ answer, names }: EveningsProps) => {
  const prey = answer.rounds?.prey ?? [];
  const unfed = answer.rounds?.visits.flatMap(({ day, servings }) =>
    servings.filter(({ offer }) => offer === null).map(() => day),
  );
  return (
    <>
      {prey.length === 0 ? null : (
        <div class="scroller">
          <table class="compact">
            <caption>The sitter takes out of the larder</caption>
            <thead>
              <tr>
                <th scope="col">Bin</th>
                <th scope="col">Prey</th>
                <th scope="col" class="number">
                  Heads
                </th>
                <th scope="col" class="number">
                  Killed first
                </th>
              </tr>
            </thead>
            <tbody>
              {prey.map(({ bin, species, heads, killed }) => (
                <tr>
                  <th scope="row">{nameOf(names.bins, bin)}</th>
                  <td>{preyName(names.species, species)}</td>
                  <td class="number">{heads}</td>
                  <td class="number">{killed}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      {unfed === undefined || unfed.length === 0 ? null : (
        <p class="caution">
          For {counted(unfed.length, 'meal')} (first on {shortDay(Math.min(...unfed))}) nothing in the larder
          will fit: leave prey of the right size, or order it before you go.
        </p>
      )}
    </>
  );
};
