/** One animal of the round: what it gets, one tap for "not fed", a disclosure for everything rarer. */
import type { CautionCode } from '../../src/husbandry/animals/index.ts';
import type { PreyOffer, Serving } from '../../src/husbandry/appetite/index.ts';
import { inBrief } from '../cautions.ts';
import { type LengthUnit, lengthRange, shortDay } from '../format.ts';
import { type Names, nameOf, preyName } from '../names.ts';
import { NOTHING_SHOWN, offerText } from '../offer-text.ts';
import { Toggle } from '../partials/choices.tsx';
import { entryOf, type PageForms } from '../partials/form.tsx';
import { paths } from '../paths.ts';
import { Instead } from './tonight-instead.tsx';

export interface ServingRowProps {
  readonly serving: Serving;
  readonly names: Names;
  readonly unit: LengthUnit;
  readonly forms: PageForms;
  readonly cautions: readonly CautionCode[];
  /** Whether its kind moults at all. */
  readonly moults: boolean;
}

export const ServingRow = (props: ServingRowProps) => {
  const { serving, names, unit, cautions } = props;
  const { animal, offer, note, look } = serving;
  const name = nameOf(names.animals, animal);
  return (
    <li class="serving">
      <input type="hidden" name="animal" value={animal} />
      <input
        type="hidden"
        name={`offer:${animal}`}
        value={offer === null ? NOTHING_SHOWN : offerText(offer)}
      />
      <div class="serving-words">
        <strong class="who">
          {name} <DueMark serving={serving} />
        </strong>
        {offer === null ? (
          <NothingFits note={note} />
        ) : (
          <OfferWords offer={offer} names={names} unit={unit} />
        )}
        {inBrief(cautions) === '' ? null : <p class="caution">{inBrief(cautions)}</p>}
        {look === null ? null : (
          <p class="look-at">
            {look} <a href={paths.animal(animal)}>Open {name}</a>
          </p>
        )}
        <RowProblem {...props} />
        <span class="print-box" aria-hidden="true"></span>
      </div>
      <NotFed {...props} name={name} />
      <OtherwiseDetails {...props} name={name} />
    </li>
  );
};

const DueMark = ({ serving: { state, dueTo } }: { serving: Serving }) =>
  state === 'due' ? null : <small class="due is-late">late since {shortDay(dueTo)}</small>;

const NothingFits = ({ note }: Pick<Serving, 'note'>) => (
  <span class="offer">
    {note} <a href={paths.larder}>Count a bin</a> if that is wrong.
  </span>
);

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
    {offer.thawed ? <em class="kill-first">pre-killed: thaw first</em> : null}
    {offer.killFirst ? <em class="kill-first">kill first</em> : null}{' '}
    {offer.portions > 1 ? <em class="kill-first">cut into {offer.portions}</em> : null}
  </span>
);

/** What was wrong with what the row showed when it was sent. */
const RowProblem = ({ serving: { animal, offer }, forms }: ServingRowProps) => {
  const { problems } = entryOf(forms, 'round');
  const said = problems[`offer:${animal}`] ?? (offer === null ? problems[`heads:${animal}`] : undefined);
  return said === undefined ? null : <p class="problem">{said} It is worked out anew here.</p>;
};

type Named = ServingRowProps & { readonly name: string };

/** Whether the form as it was sent had this mark on this animal. */
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
  const { serving, forms, name } = props;
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
        {MARKS.filter(({ mark }) => props.moults || mark === 'died').map(({ mark, label }) => (
          <Toggle name={mark} value={serving.animal} label={label} of={name} checked={marked(props, mark)} />
        ))}
      </fieldset>
      <Instead {...props} />
    </details>
  );
};
