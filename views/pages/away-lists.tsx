/** Everybody a sitter does not feed: who waits, who only misses a meal, who is left alone. */
import type { AwayAnimal, AwayPlan, Standing } from '../../src/husbandry/supply/index.ts';
import { counted, longDay, shortDay } from '../format.ts';
import { type Names, nameOf } from '../names.ts';
import { paths } from '../paths.ts';

interface ListsProps {
  readonly plan: AwayPlan;
  readonly names: Names;
}

export const OtherStandings = ({ plan, names }: ListsProps) => {
  const those = (standing: Standing) => plan.animals.filter((each) => each.standing === standing);
  const { home, fedAgain } = plan.absence;
  return (
    <section aria-labelledby="others">
      <h2 id="others">Everybody else</h2>
      <Group
        animals={those('first when back')}
        names={names}
        title={(n) => `${counted(n, 'animal')} to feed on the day you are back, ${longDay(home)}`}
        said={({ meal }) => `by ${shortDay(Math.min(meal.missedAfter, meal.dangerAfter))}`}
      />
      <Group
        animals={those('misses a meal')}
        names={names}
        title={(n) =>
          `${counted(n, 'animal misses a meal and comes', 'animals miss a meal and come')} to no harm`
        }
        said={({ meal }) => `safe until ${shortDay(meal.dangerAfter)}`}
      />
      <Group
        animals={those('leave alone')}
        names={names}
        title={(n) => `${counted(n, 'animal is', 'animals are')} to be left alone`}
        said={({ reason }) => (reason ?? '').replace(/\.$/, '')}
      />
      <Group
        animals={those('waits')}
        names={names}
        title={(n) => `${counted(n, 'animal misses', 'animals miss')} nothing until ${longDay(fedAgain)}`}
        said={({ meal }) => `in time until ${shortDay(meal.missedAfter)}`}
      />
    </section>
  );
};

interface GroupProps {
  readonly animals: readonly AwayAnimal[];
  readonly names: Names;
  readonly title: (n: number) => string;
  readonly said: (animal: AwayAnimal) => string;
}

const Group = ({ animals, names, title, said }: GroupProps) =>
  animals.length === 0 ? null : (
    <details class="away-standing">
      <summary>{title(animals.length)}</summary>
      <ul>
        {animals.map((each) => (
          <li>
            <a href={paths.animal(each.animal)}>{nameOf(names.animals, each.animal)}</a>: {said(each)}
          </li>
        ))}
      </ul>
    </details>
  );
