/** The table of the plan's benchmark: what each way to buy costs and misses in each room, and what of it was avoidable. */
import { type Compared, compare, type Interval, type Paired } from './plan-rules/compare.ts';
import { meanOf } from './plan-rules/frontier.ts';
import { GRID, told } from './plan-rules/grid.ts';
import { DANGER_CENTS, MISSED_CENTS, pointOf } from './plan-rules/prices.ts';
import type { Rule } from './plan-rules/rules.ts';
import { KINDS_OF_RULE, type Tuned } from './plan-tuning.ts';
import { URGENCIES } from './plan-worlds/kinds.ts';
import type { Score } from './plan-worlds/score.ts';

/** All that was played of a room, world by world. */
export interface Played {
  readonly room: string;
  readonly tuned: Tuned;
  readonly rules: readonly Readonly<Record<number, Score>>[];
  readonly plan: readonly Score[] | null;
  /** Milliseconds of every single plan, where there are any. */
  readonly tookMs: readonly number[];
  /** By weight of harm, world by world. */
  readonly foresight: readonly (readonly Score[])[];
  readonly foresightAtQuarter: readonly (readonly Score[])[];
}

/** Weights of harm at which foresight searches: its frontier, a little below and above the stated prices. */
export const WEIGHTS: readonly number[] = [0.5, 2];

const HEAD = `| who buys | a week | harm | goods | postage | shop | parcels a year | ${URGENCIES.join(' | ')} | dangers a year | eaten of what came |
| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |`;

const money = (cents: number): string => (cents / 100).toFixed(2);
const percent = (share: number, digits = 1): string => `${(100 * share).toFixed(digits)} %`;
const sum = (scores: readonly Score[], of: (score: Score) => number): number =>
  scores.reduce((total, score) => total + of(score), 0);

function row(name: string, scores: readonly Score[]): string {
  const weeks = sum(scores, (score) => score.weeks);
  const { cents, harm } = meanOf(scores.map(pointOf));
  const served = URGENCIES.map((_, u) => {
    const due = sum(scores, (score) => score.due[u] as number);
    return percent(1 - sum(scores, (score) => score.missed[u] as number) / due, 2);
  });
  const dangers = sum(scores, (score) => score.dangers.reduce((a, b) => a + b, 0));
  const weekly = (of: (score: Score) => number) => money(sum(scores, of) / weeks);
  const cells = [
    name,
    money(cents),
    money(harm),
    weekly((score) => score.goods),
    weekly((score) => score.postage),
    weekly((score) => score.shop),
    ((52 * sum(scores, (score) => score.parcels)) / weeks).toFixed(1),
    ...served,
    ((52 * dangers) / weeks).toFixed(1),
    percent(sum(scores, (score) => score.eaten) / sum(scores, (score) => score.heads), 0),
  ];
  return `| ${cells.join(' | ')} |`;
}

/** One room: the frontier of every kind of rule, the plan, foresight, the floor. */
export function roomTable(played: Played): string {
  const { room, tuned, rules, plan, foresight, foresightAtQuarter } = played;
  const ruleRow = (rule: number) =>
    row(
      `${tuned.frontier.includes(rule) ? '**' : ''}${told(GRID[rule] as Rule)}${tuned.frontier.includes(rule) ? '**' : ''}`,
      rules.map((scores) => scores[rule] as Score),
    );
  const rows = [
    ...KINDS_OF_RULE.flatMap((kind) => tuned.byKind[kind].map(ruleRow)),
    ...(plan ? [row('the plan', plan)] : []),
    ...foresight.flatMap((scores, w) => [
      row(
        `foresight, a quarter of the search, harm x ${WEIGHTS[w]}`,
        foresightAtQuarter[w] as readonly Score[],
      ),
      row(`foresight, harm x ${WEIGHTS[w]}`, scores),
    ]),
  ];
  const floor =
    sum(foresight[0] ?? [], (score) => score.floorCents) / sum(foresight[0] ?? [], (s) => s.weeks);
  return `## Room ${room}, ${rules.length} worlds\n\n${HEAD}\n${rows.join('\n')}\n\nNo way to buy can cost less a week than ${money(floor)}: a loose bound.\n`;
}

/** The comparison of a room, or null where no plan was played. */
export function comparedIn({ tuned, rules, plan, foresight }: Played): Compared | null {
  if (!plan) return null;
  return compare(
    plan.map(
      (score, w): Paired => ({
        plan: pointOf(score),
        rules: tuned.frontier.map((rule) => pointOf(rules[w]?.[rule] as Score)),
        foresight: foresight.map((scores) => pointOf(scores[w] as Score)),
      }),
    ),
  );
}

const told95 = ({ mean, low, high }: Interval): string =>
  `${percent(mean)} (${percent(low)} to ${percent(high)})`;

export function summary(rooms: readonly Played[]): string {
  const rows = rooms.map((played) => {
    const compared = comparedIn(played);
    if (!compared) return `| ${played.room} | no plan played | | | | |`;
    const { removed, dearer, avoidable, within } = compared;
    const sorted = played.tookMs.toSorted((a, b) => a - b);
    const took = ((sorted[Math.floor(sorted.length / 2)] ?? 0) / 1000).toFixed(1);
    return `| ${played.room} | ${removed ? told95(removed) : 'nothing to be had'} | ${told95(dearer)} | ${told95(avoidable)} | ${within ? 'yes' : 'no'} | ${took} s |`;
  });
  return `| room | avoidable cost removed | plan over best rule | avoidable at all | service within the rules' | median plan |
| --- | --- | --- | --- | --- | --- |
${rows.join('\n')}`;
}

export const notes = (search: number): string =>
  `Money is the keeper's own a week; what is left in the tubs at the end is taken off, what colonies are worth less than on the first day is put on. Harm is money too: ${URGENCIES.map((urgency, u) => `${money(MISSED_CENTS[u] as number)} a missed meal of the ${urgency}`).join(', ')}, ${money(DANGER_CENTS)} a danger. Shares are of due meals not missed. Rules in bold are the frontier of all three kinds, found on other worlds; all are shown as they did on these. Foresight is the best of ${search} changes tried in each world by who knows everything that will happen in it, beginning with the plan's and the best rules' own orders.`;
