/** What the forms of a bin share: what they are told, the day, and saying that one is sure. */

import { civilDate } from '../../src/husbandry/calendar.ts';
import type { Bin } from '../../src/husbandry/larder/index.ts';
import type { PreySpecies } from '../../src/husbandry/prey/index.ts';
import type { Shell } from '../layout.tsx';
import { Toggle } from '../partials/choices.tsx';
import { entryOf, Field, type FormEntry, type Option, type PageForms } from '../partials/form.tsx';
import type { BinAct } from '../paths.ts';

export interface BinActsProps {
  readonly shell: Shell;
  readonly forms: PageForms;
  readonly bin: Bin;
  readonly species: PreySpecies;
  /** Trade sizes of its species. */
  readonly sizes: readonly Option[];
  /** Value of the size the middle one has, where it has one. */
  readonly sizeNow?: string | undefined;
  /** Bins that can take its prey in. */
  readonly otherBins: readonly Option[];
  readonly rooms: readonly Option[];
  /** Days new stock is kept apart, as the policy has it. */
  readonly quarantineDays: number;
  /** After a crash: how many may be left, as numbers of heads and in words. */
  readonly leftAlive: readonly Option[];
}

export const OnDay = ({ forms, shell, act }: Pick<BinActsProps, 'forms' | 'shell'> & { act: BinAct }) => (
  <Field
    entry={entryOf(forms, act)}
    name="day"
    label="On"
    type="date"
    start={civilDate(shell.today)}
    required
  />
);

/** Posts `sure`; shown once the act was asked about. */
export const Sure = ({ entry }: { entry: FormEntry }) => {
  if (Object.keys(entry.problems).length === 0) return null;
  return (
    <div class="field">
      <Toggle name="sure" value="on" label="I am sure" checked={entry.values.sure === 'on'} />
      {entry.problems.sure === undefined ? null : <p class="problem">{entry.problems.sure}</p>}
    </div>
  );
};
