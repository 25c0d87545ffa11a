/** Numbers with their sources, as pages list them: an animal's rule, and the defaults that weigh most on a week. */

import { counted, span } from '../../../views/format.ts';
import type { SourceLine } from '../../../views/partials/sources.tsx';
import { hatchToFirstFeed, layingToFirstFeed } from '../../facts/sacs.ts';
import { ruleOf, type StageRule } from '../../husbandry/animals/index.ts';
import type { Policy } from '../../husbandry/policy.ts';
import type { PreySpecies } from '../../husbandry/prey/index.ts';
import type { PlannedChange, Snapshot } from '../../husbandry/snapshot.ts';
import type { CoverAnswer, GroupAnswer } from '../../husbandry/supply/index.ts';
import { PERCENT } from '../../husbandry/units.ts';
import { lineOf as line } from './source-line.ts';

const percent = (share: number): string => `${Math.round(share * PERCENT)} %`;

/** The rule an animal lives by. */
export function ruleLines(rule: StageRule): readonly SourceLine[] {
  const { window, mealItems, intervalDays, weeklyNeed, moult } = rule;
  const { min, ideal, max } = window.value;
  const lengths = `${percent(min)} to ${percent(max)} of its own length, best ${percent(ideal)}`;
  return [
    line('Length of its prey', window, lengths),
    line('Prey items a meal', mealItems, span(mealItems.value, 'of the best length')),
    line('Between meals', intervalDays, span(intervalDays.value, 'days')),
    line(
      'Eaten in a week',
      weeklyNeed,
      weeklyNeed.value.map(percent).join(' to ').concat(' of its own mass'),
    ),
    line('Wait after a moult', rule.waitAfterMoultDays, `${rule.waitAfterMoultDays.value} days`),
    line('Offered again after a refusal', rule.retryDays, `after ${rule.retryDays.value} days`),
    line('A late meal is missed', rule.graceDays, `${rule.graceDays.value} days after the range`),
    line('Danger without food', rule.safeGapDays, `after ${rule.safeGapDays.value} days`),
    ...(moult === null
      ? []
      : [
          line('From moult to moult', moult.meanDays, `${moult.meanDays.value} days`),
          line('Grows at a moult', moult.lengthFactor, `by ${percent(moult.lengthFactor.value - 1)}`),
        ]),
  ];
}

/** How long the young of these sacs take to their first feed, group by group. */
export function sacLines(sacs: readonly PlannedChange[], { facts }: Snapshot): readonly SourceLine[] {
  const groups = sacs.flatMap(({ animalKind }) => facts.kinds.get(animalKind)?.group ?? []);
  return [...new Set(groups)].flatMap((group) => [
    line(
      `${group}: laying to first feed`,
      layingToFirstFeed[group],
      span(layingToFirstFeed[group].value, 'days'),
    ),
    line(
      `${group}: hatching to first feed`,
      hatchToFirstFeed[group],
      span(hatchToFirstFeed[group].value, 'days'),
    ),
  ]);
}

const MOST_KINDS = 6;

/** How long these animals are safe without food, kind by kind and stage by stage, and the days kept to spare. */
export function gapLines(codes: readonly string[], { animals, facts }: Snapshot): readonly SourceLine[] {
  const lines = new Map<string, SourceLine>();
  const wanted = new Set(codes);
  for (const animal of animals.filter(({ code }) => wanted.has(code))) {
    const kind = facts.kinds.get(animal.kind);
    if (kind === undefined) continue;
    const rule = ruleOf(kind, animal);
    const what = `${kind.commonName}, ${rule.words[0] ?? rule.stage}: safe without food`;
    lines.set(what, line(what, rule.safeGapDays, `${rule.safeGapDays.value} days`));
  }
  const spare = facts.policy.awayMarginDays;
  return [
    line('Kept to spare after an absence', spare, `${spare.value} days`),
    ...[...lines.values()].slice(0, MOST_KINDS),
  ];
}

const MOST_GROUPS = 3;
const MOST_SPECIES = 3;

/** The few numbers that weigh most on this answer: of the largest groups, of the prey here, of the method. */
export function weightiest(answer: CoverAnswer, snapshot: Snapshot): readonly SourceLine[] {
  const { policy, species } = snapshot.facts;
  const groups = answer.groups
    .toSorted((a, b) => b.itemsWantedMean - a.itemsWantedMean)
    .slice(0, MOST_GROUPS);
  const prey = [...new Set(answer.bins.map((bin) => bin.species))].slice(0, MOST_SPECIES);
  const skipped = policy.eveningSkippedChance;
  const speed = policy.speedLogSd;
  return [
    ...groups.flatMap((group) => groupLines(group, snapshot)),
    ...prey.flatMap((code) => preyLines(species.get(code))),
    line('Evenings skipped', skipped, percent(skipped.value)),
    givenLine(answer.given, policy),
    line('Bins grow slower or faster', speed, `by about ${percent(speed.value)}`),
  ];
}

/** What meals on record say of how much is given, else the usual doubt. */
function givenLine({ low, mid, high, meals }: CoverAnswer['given'], { generosityCv }: Policy): SourceLine {
  const what = 'You give, against what is meant';
  if (meals === 0) return line(what, generosityCv, `as much, give or take ${percent(generosityCv.value)}`);
  return {
    what,
    value: `${percent(mid)} (${percent(low)} to ${percent(high)})`,
    status: 'yours',
    source: `${counted(meals, 'meal')} written down since each animal has its size`,
  };
}

function groupLines(
  { name, animals }: GroupAnswer,
  { animals: all, facts }: Snapshot,
): readonly SourceLine[] {
  const animal = all.find(({ code }) => code === animals[0]);
  const kind = animal === undefined ? undefined : facts.kinds.get(animal.kind);
  if (animal === undefined || kind === undefined) return [];
  const { intervalDays, mealItems } = ruleOf(kind, animal);
  return [
    line(`${name}: between meals`, intervalDays, span(intervalDays.value, 'days')),
    line(`${name}: a meal`, mealItems, span(mealItems.value, 'items of the best length')),
  ];
}

function preyLines(species: PreySpecies | undefined): readonly SourceLine[] {
  const span = species?.spans.at(-1);
  const point = span?.points.value.at(-1);
  if (species === undefined || span === undefined || point === undefined) return [];
  return [
    line(`${species.commonName}: ${span.code}`, span.points, `${point.days} days at ${point.tempC} °C`),
  ];
}
