/** One animal of the round: what it gets, one tap for "not fed", a disclosure for everything rarer. */
import type { CautionCode } from '../../src/husbandry/animals/index.ts';
import type { PreyOffer, Serving } from '../../src/husbandry/appetite/index.ts';
import { inBrief } from '../cautions.ts';
import { type LengthUnit, lengthRange, shortDay } from '../format.ts';
import { type Names, nameOf, preyName } from '../names.ts';
import { Toggle } from '../partials/choices.tsx';
import { entryOf, Field, type PageForms, Select } from '../partials/form.tsx';

interface ServingRowProps {
  readonly serving: Serving;
  readonly names: Names;
  readonly unit: LengthUnit;
  readonly forms: PageForms;
  readonly cautions: readonly CautionCode[];
}

export const ServingRow = (props: ServingRowProps) => {
  const { serving, names, unit, cautions } = props;
  const name = nameOf(names.animals, serving.animal);
  return (
    <li class="serving">
      <input type="hidden" name="animal" value={serving.animal} />
      <div class="serving-words">
        <strong class="who">
          {name} <DueMark serving={serving} />
        </strong>
        {serving.offer === null ? (
          <span class="offer">Nothing that fits is left in the larder.</span>
        ) : (
          <OfferWords offer={serving.offer} names={names} unit={unit} />
        )}
        {serving.note === null || serving.offer === null ? null : <p class="caution">{serving.note}</p>}
        {inBrief(cautions) === '' ? null : <p class="caution">{inBrief(cautions)}</p>}
        <span class="print-box" aria-hidden="true"></span>
      </div>
      <NotFed {...props} name={name} />
      <OtherwiseDetails {...props} name={name} />
    </li>
  );
};

const DueMark = ({ serving: { state, dueTo } }: { serving: Serving }) =>
  state === 'due' ? null : <small class="due is-late">late since {shortDay(dueTo)}</small>;

interface OfferProps {
  readonly offer: PreyOffer;
  readonly names: Names;
  readonly unit: LengthUnit;
}

const OfferWords = ({ offer, names, unit }: OfferProps) => (
  <span class="offer">
    <b class="heads">{offer.heads}</b> {preyName(names.species, offer.species, offer.heads)},{' '}
    <span class="whole">{lengthRange(offer.fromMm, offer.toMm, unit)}</span>
    <small>from {nameOf(names.bins, offer.bin)}</small>
    {offer.killFirst ? <em class="kill-first">kill first</em> : null}{' '}
    {offer.portions > 1 ? <em class="kill-first">cut into {offer.portions}</em> : null}
  </span>
);

type Named = ServingRowProps & { readonly name: string };

/** Whether a refused form had this mark on this animal. */
const marked = ({ forms, serving }: ServingRowProps, mark: string): boolean =>
  (entryOf(forms, 'round').values[mark] ?? '').split(',').includes(serving.animal);

const NotFed = (props: Named) =>
  props.serving.offer === null ? (
    <input type="hidden" name="notFed" value={props.serving.animal} />
  ) : (
    <Toggle
      name="notFed"
      value={props.serving.animal}
      label="Not fed"
      of={props.name}
      checked={marked(props, 'notFed')}
      class="tap wide"
    />
  );

const MARKS = [
  { mark: 'premoult', label: 'Premoult' },
  { mark: 'moulted', label: 'Moulted' },
  { mark: 'died', label: 'Died' },
] as const;

/** Marks that also mean "not fed", and other prey than proposed. */
const OtherwiseDetails = (props: Named) => {
  const { serving, names, forms, name } = props;
  const entry = entryOf(forms, 'round');
  const fields = [`heads:${serving.animal}`, `bin:${serving.animal}`];
  const open =
    MARKS.some(({ mark }) => marked(props, mark)) ||
    fields.some((field) => entry.values[field] || entry.problems[field] !== undefined);
  return (
    <details class="otherwise" open={open}>
      <summary>
        Otherwise<span class="unseen"> ({name})</span>
      </summary>
      <fieldset class="choice-row">
        <legend class="unseen">{name}: not fed, because</legend>
        {MARKS.map(({ mark, label }) => (
          <Toggle name={mark} value={serving.animal} label={label} of={name} checked={marked(props, mark)} />
        ))}
      </fieldset>
      <div class="pair tight">
        <Field
          entry={entry}
          name={`heads:${serving.animal}`}
          label="Another count"
          type="number"
          min="0"
          placeholder={`${serving.offer?.heads ?? 0}`}
        />
        <Select
          entry={entry}
          name={`bin:${serving.animal}`}
          label="Another bin"
          none="as above"
          options={[...names.bins].map(([value, label]) => ({ value, label }))}
        />
      </div>
    </details>
  );
};
