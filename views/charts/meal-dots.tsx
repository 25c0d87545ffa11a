/** The last weeks' meals as dots along the days: as large as their share of its mass, hollow when refused. */
import type { MealShare } from '../../src/husbandry/appetite/index.ts';
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import { mealsFinding, mealsTable } from '../appetite-words.ts';
import { parts } from '../format.ts';
import { Drawing, Numbers } from './figure.tsx';
import { place } from './ruler.tsx';

interface MealDotsProps {
  readonly meals: readonly MealShare[];
  readonly from: DayNumber;
  readonly today: DayNumber;
}

const WIDTH = 358;
const HEIGHT = 56;
const MARGIN = 12;
const LINE_Y = 22;
const MOST_RADIUS = 10;
const LEAST_RADIUS = 4;

export const MealDots = ({ meals, from, today }: MealDotsProps) => {
  const at = (day: DayNumber): number =>
    place(MARGIN + ((WIDTH - 2 * MARGIN) * (day - from)) / Math.max(1, today - from));
  const title = mealsFinding(meals, today - from);
  return (
    <figure class="meals">
      <figcaption>
        {title}. Dot: a meal, as large as its share of its mass; hollow: refused; half: eaten in part.
      </figcaption>
      <Drawing
        id="meals"
        title={title}
        description="Dots along the days, the latest on the right."
        width={WIDTH}
        height={HEIGHT}
      >
        <line x1={MARGIN} x2={WIDTH - MARGIN} y1={LINE_Y} y2={LINE_Y} class="axis" />
        {monthStarts(from, today).map((day) => (
          <>
            <line x1={at(day)} x2={at(day)} y1={LINE_Y} y2={LINE_Y + 14} class="axis" />
            <text x={at(day) + 3} y={LINE_Y + 30} class="ruler-number axis-number">
              {parts(day).month}
            </text>
          </>
        ))}
        {meals.map((meal) => (
          <MealDot meal={meal} x={at(meal.day)} r={radius(meals, meal)} />
        ))}
      </Drawing>
      <Numbers {...mealsTable(meals)} />
    </figure>
  );
};

interface MealDotProps {
  readonly meal: MealShare;
  readonly x: number;
  readonly r: number;
}

const MealDot = ({ meal: { outcome }, x, r }: MealDotProps) => {
  if (outcome === 'refused') return <circle cx={x} cy={LINE_Y} r={r} class="meal is-refused" />;
  if (outcome !== 'part-taken') return <circle cx={x} cy={LINE_Y} r={r} class="meal" />;
  return (
    <>
      <circle cx={x} cy={LINE_Y} r={r} class="meal is-refused" />
      <path d={`M${place(x - r)} ${LINE_Y}a${r} ${r} 0 0 0 ${place(2 * r)} 0z`} class="meal" />
    </>
  );
};

/** By area; what was refused or not weighed is drawn small. */
function radius(meals: readonly MealShare[], { share }: MealShare): number {
  const most = Math.max(0, ...meals.map((meal) => meal.share ?? 0));
  const part = most > 0 && share !== null ? Math.sqrt(share / most) : 0;
  return place(Math.max(LEAST_RADIUS, MOST_RADIUS * part));
}

/** First days of the months within the days drawn, but for one so near the end that its name would not fit. */
function monthStarts(from: DayNumber, today: DayNumber): DayNumber[] {
  const days = Array.from({ length: Math.max(0, today - from - NAME_DAYS) }, (_, i) => from + i);
  return days.filter((day) => parts(day).date === 1);
}
/** Days a month's name takes at this scale. */
const NAME_DAYS = 10;
