/** Sunday's groups that last: one line for all of one name, since they differ by the length of their prey alone. */
import type { GroupAnswer } from '../../src/husbandry/supply/index.ts';
import { counted, type LengthUnit, lengthRange, sentenceCase } from '../format.ts';
import { shortfallWords } from '../partials/verdict.tsx';

interface LastingProps {
  readonly groups: readonly GroupAnswer[];
  readonly unit: LengthUnit;
}

export const Lasting = ({ groups, unit }: LastingProps) => (
  <table class="lasting stacks">
    <thead>
      <tr>
        <th scope="col">Who</th>
        <th scope="col" class="number">
          Animals
        </th>
        <th scope="col">Prey, from the smallest to the largest animal</th>
        <th scope="col">Meals</th>
      </tr>
    </thead>
    <tbody>
      {alike(groups).map(({ name, heads, minMm, maxMm, ...meals }) => (
        <tr>
          <th scope="row">{sentenceCase(name)}</th>
          <td data-label="Animals" class="number">
            {heads}
          </td>
          <td data-label="Prey">{lengthRange(minMm, maxMm, unit)}</td>
          <td data-label="Meals">
            {counted(Math.round(meals.mealsDue), 'meal')} due, {shortfallWords(meals)}
          </td>
        </tr>
      ))}
    </tbody>
  </table>
);

type Alike = Pick<GroupAnswer, 'name' | 'heads' | 'mealsDue' | 'lateMeals' | 'missedMeals' | 'dangers'> &
  Pick<GroupAnswer['window'], 'minMm' | 'maxMm'>;

/** Groups of one name as one: animals and meals added up, the prey from the shortest to the longest. */
function alike(groups: readonly GroupAnswer[]): readonly Alike[] {
  const named = new Map<string, Alike>();
  for (const { window, ...group } of groups) {
    const so = named.get(group.name);
    named.set(group.name, {
      name: group.name,
      heads: group.heads + (so?.heads ?? 0),
      mealsDue: group.mealsDue + (so?.mealsDue ?? 0),
      lateMeals: group.lateMeals + (so?.lateMeals ?? 0),
      missedMeals: group.missedMeals + (so?.missedMeals ?? 0),
      dangers: group.dangers + (so?.dangers ?? 0),
      minMm: Math.min(window.minMm, so?.minMm ?? window.minMm),
      maxMm: Math.max(window.maxMm, so?.maxMm ?? window.maxMm),
    });
  }
  return [...named.values()].toSorted((a, b) => b.heads - a.heads);
}
