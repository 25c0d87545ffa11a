/** A bin's coming weeks in two pictures: how many of each size, and how long they are. */
import type { BinOutlook } from '../../src/husbandry/colony/index.ts';
import { BinCreep } from '../charts/bin-creep.tsx';
import { BinWeeks } from '../charts/bin-weeks.tsx';
import type { BinPageProps } from './bin.tsx';

export const BinPictures = ({
  bin,
  names,
  unit,
  goes,
  outlook,
  kept,
}: BinPageProps & { readonly outlook: BinOutlook }) => {
  if (bin.role === 'frozen' || outlook.weeks.every(({ heads }) => heads.high < 1)) return null;
  const form = names.species.get(bin.species)?.form ?? 'cricket';
  return (
    <section class="bin-pictures" aria-label="The coming weeks">
      <BinWeeks
        ahead={outlook}
        form={form}
        events={bin.events}
        overFrom={goes?.overFrom ?? null}
        restsUntil={kept.restsUntil}
      />
      {bin.role === 'cup' ? null : <BinCreep ahead={outlook} form={form} unit={unit} />}
    </section>
  );
};
