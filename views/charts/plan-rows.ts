/** The plan's lines as rows of a calendar: suppliers, bins and cultures, each with its marks. */
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import { headsOf, type PlanLine, type PlanStep, stepsOf } from '../../src/husbandry/plan/index.ts';
import { sentenceCase } from '../format.ts';
import { nameOf, preyName } from '../names.ts';
import { isOrder, manyHeads, type PlanSaid, supplierName } from '../pages/plan-words.ts';

export interface CalendarMark {
  readonly what: PlanLine['what'];
  /** From dispatch to the door, from the first to the last day of a yield or rest; alike where it is one day. */
  readonly from: DayNumber;
  readonly to: DayNumber;
  readonly species: string;
  /** How many, as it stands beside the mark. */
  readonly label: string;
}

export interface CalendarRow {
  readonly name: string;
  readonly marks: readonly CalendarMark[];
}

export function calendarRows(said: PlanSaid): readonly CalendarRow[] {
  const { plan, names, market } = said;
  const orders = plan.lines.filter(isOrder);
  const suppliers = [...new Set(orders.map(({ supplier }) => supplier))].map((code) => ({
    name: supplierName(market, code),
    marks: parcels(orders.filter(({ supplier }) => supplier === code)),
  }));
  const taken = stepsOf(plan.lines).flatMap(takenMark);
  const bins = [...new Set(taken.map(({ bin }) => bin))].map((code) => ({
    name: nameOf(names.bins, code),
    marks: taken.filter(({ bin }) => bin === code),
  }));
  const starts = plan.lines.filter((line) => line.what === 'start');
  const cultures = [...new Set(starts.map(({ species }) => species))].map((code) => ({
    name: `Cups of ${preyName(names.species, code)}`,
    marks: starts.filter(({ species }) => species === code).map(startMark),
  }));
  return [...suppliers, ...bins, ...cultures].map((row) => ({ ...row, name: sentenceCase(row.name) }));
}

/** One mark a parcel. */
function parcels(orders: readonly Extract<PlanLine, { what: 'order' }>[]): readonly CalendarMark[] {
  return [...new Set(orders.map(({ parcel }) => parcel))].flatMap((code) => {
    const [first, ...rest] = orders.filter(({ parcel }) => parcel === code);
    if (first === undefined) return [];
    const label = [first, ...rest].map(({ heads }) => manyHeads(heads)).join('+');
    return { what: 'order' as const, from: first.sent, to: first.comes, species: first.species, label };
  });
}

/** One mark for all that is taken out of a bin at once, or for how long it is left alone. */
function takenMark(step: PlanStep): readonly (CalendarMark & { readonly bin: string })[] {
  const { line } = step;
  const { species } = line;
  if (line.what === 'rest')
    return [{ what: line.what, from: line.actBy, to: line.until, species, label: '', bin: line.bin }];
  if (line.what !== 'harvest' && line.what !== 'cull') return [];
  const { what, day, bin } = line;
  return [{ what, from: day, to: day, species, label: manyHeads(headsOf(step)), bin }];
}

const startMark = (line: Extract<PlanLine, { what: 'start' }>): CalendarMark => ({
  what: 'start',
  from: line.day,
  to: line.yieldsTo,
  species: line.species,
  label: `${line.cups}`,
});
