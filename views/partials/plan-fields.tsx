/** Fields of something planned: its days, how many, how large, how likely. */
import { civilDate } from '../../src/husbandry/calendar.ts';
import type { PlannedChange } from '../../src/husbandry/snapshot.ts';
import { PERCENT } from '../../src/husbandry/units.ts';
import { type LengthUnit, lengthText } from '../format.ts';
import { Field, type FormEntry } from './form.tsx';

export const COMES_OFF = 'How likely it comes off, in percent';

interface PercentProps {
  readonly entry: FormEntry;
  readonly name: string;
  readonly label: string;
  readonly least: 0 | 1;
  /** Shown until another is typed, from 0 to 1. */
  readonly share: number;
}

/** A share, asked for in whole percent. */
export const PercentField = ({ entry, name, label, least, share }: PercentProps) => (
  <Field
    entry={entry}
    name={name}
    label={label}
    type="number"
    min={`${least}`}
    start={`${Math.round(share * PERCENT)}`}
  />
);

interface PlanProps {
  readonly entry: FormEntry;
  readonly change: PlannedChange;
  readonly unit: LengthUnit;
  /** What each field is called. */
  readonly words: Readonly<Record<'from' | 'to' | 'count' | 'gauge' | 'chance', string>>;
}

/** Posts `from`, `to`, `count`, `gauge` and `chance` in percent, each as it stands until it is typed anew. */
export const PlanFields = ({ entry, change, unit, words }: PlanProps) => (
  <>
    <Field entry={entry} name="from" label={words.from} type="date" start={civilDate(change.from)} required />
    <Field entry={entry} name="to" label={words.to} type="date" start={civilDate(change.to)} required />
    <Field
      entry={entry}
      name="count"
      label={words.count}
      type="number"
      min="1"
      start={`${change.count}`}
      required
    />
    <Field entry={entry} name="gauge" label={words.gauge} start={lengthText(change.gaugeMm, unit)} required />
    <PercentField entry={entry} name="chance" label={words.chance} least={1} share={change.chance} />
  </>
);
