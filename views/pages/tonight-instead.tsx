/** Another count, or another bin with what the animal gets from it: one tap each. */
import type { PreyOffer } from '../../src/husbandry/appetite/index.ts';
import { nameOf, preyName } from '../names.ts';
import { binIn, offerText } from '../offer-text.ts';
import { firstWords } from '../offer-words.ts';
import { RadioButtons } from '../partials/choices.tsx';
import { entryOf, type Option } from '../partials/form.tsx';
import type { ServingRowProps } from './tonight-row.tsx';

export const Instead = (props: ServingRowProps & { readonly name: string }) => {
  const { serving, forms, name } = props;
  const { animal, offer } = serving;
  const entry = entryOf(forms, 'round');
  const bins = binOptions(props, entry.values[`bin:${animal}`] ?? '');
  return (
    <>
      {offer === null ? null : (
        <RadioButtons
          entry={entry}
          name={`heads:${animal}`}
          legend={`How many ${name} got`}
          options={countOptions(offer, entry.values[`heads:${animal}`] ?? '')}
          start=""
        />
      )}
      {bins.length < 2 ? null : (
        <RadioButtons
          entry={withBin(entry, `bin:${animal}`, bins)}
          name={`bin:${animal}`}
          legend={`What ${name} got instead`}
          options={bins}
          start=""
        />
      )}
    </>
  );
};

/** Half, one fewer, as shown, one more, twice as many; and what was said before. */
function countOptions({ heads }: PreyOffer, typed: string): readonly Option[] {
  const others = [Math.round(heads / 2), heads - 1, heads + 1, heads * 2].filter(
    (n) => n >= 1 && n !== heads,
  );
  const counts = [...new Set([...others, heads])].sort((a, b) => a - b);
  const options = counts.map((n) => ({ value: n === heads ? '' : `${n}`, label: `${n}` }));
  const known = options.some(({ value }) => value === typed);
  return known ? options : [...options, { value: typed, label: typed }];
}

/** As shown, and one of each other bin that holds something it takes; and what was chosen before. */
function binOptions({ serving, names }: ServingRowProps, typed: string): readonly Option[] {
  const { offer, choices } = serving;
  const words = (each: PreyOffer) =>
    `${each.heads} ${preyName(names.species, each.species, each.heads)} from ${nameOf(names.bins, each.bin)}${how(each)}`;
  const others = choices.map((each) => ({ value: offerText(each), label: words(each) }));
  const asShown = { value: '', label: offer === null ? 'Nothing' : 'As above' };
  const gone = typed !== '' && ![offer, ...choices].some((each) => each?.bin === binIn(typed));
  const before = { value: typed, label: `As you chose, from ${nameOf(names.bins, binIn(typed))}` };
  return [asShown, ...others, ...(gone ? [before] : [])];
}

const how = (offer: PreyOffer): string => {
  const first = firstWords(offer);
  return first === '' ? '' : `, ${first}`;
};

/** A bin chosen before stays chosen, though what it gives may have changed. */
function withBin(entry: ReturnType<typeof entryOf>, name: string, options: readonly Option[]) {
  const typed = entry.values[name];
  if (typed === undefined) return entry;
  const same = options.find(({ value }) => binIn(value) === binIn(typed));
  return { ...entry, values: { ...entry.values, [name]: same?.value ?? '' } };
}
