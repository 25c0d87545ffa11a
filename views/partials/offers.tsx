/** What a supplier offers: prey, size on the ruler, pack, and the price of a pack and of one head at each break. */
import { headCents, type Offer, packCents } from '../../src/husbandry/orders/index.ts';
import { type PreySpecies, sizeWord, tradeSizes } from '../../src/husbandry/prey/index.ts';
import { PreyStrip, RulerHead } from '../charts/window-bracket.tsx';
import { headPrice, money } from '../format/money.ts';
import { type LengthUnit, lengthRange, sentenceCase } from '../format.ts';
import { type Names, preyName } from '../names.ts';
import { paths } from '../paths.ts';

interface OffersProps {
  readonly offers: readonly Offer[];
  readonly names: Names;
  readonly unit: LengthUnit;
  readonly currency: string;
  /** The sizes the trade sells, by species. */
  readonly sizes: ReadonlyMap<string, Pick<PreySpecies, 'sizeClasses'>>;
}

export const Offers = (props: OffersProps) => (
  <table class="bins stacks offers">
    <thead>
      <tr>
        <th scope="col">Prey and size</th>
        <th scope="col" class="on-ruler">
          Size, {props.unit}
          <RulerHead unit={props.unit} />
        </th>
        <th scope="col">Heads in a pack</th>
        <th scope="col">A pack, and one head</th>
      </tr>
    </thead>
    <tbody>
      {props.offers.map((offer) => (
        <OfferRow {...props} offer={offer} />
      ))}
    </tbody>
  </table>
);

type RowProps = OffersProps & { readonly offer: Offer };

const OfferRow = ({ offer, names, unit, currency, sizes }: RowProps) => {
  const { code, species, fromMm, toMm, packHeads, mostPacks } = offer;
  const length = lengthRange(fromMm, toMm, unit);
  const prey = sentenceCase(preyName(names.species, species));
  return (
    <tr>
      <th scope="row">
        <a href={paths.editOffer(code)}>
          {prey}
          {offer.size === '' ? '' : `, ${offer.size}`}
        </a>
        <TradeSize offer={offer} classes={sizes.get(species)?.sizeClasses.value ?? []} />
      </th>
      <td class="on-ruler">
        <PreyStrip
          id={`offer-${code}`}
          title={`${prey}: ${length}`}
          form={names.species.get(species)?.form ?? 'cricket'}
          low={fromMm}
          mid={(fromMm + toMm) / 2}
          high={toMm}
        />
        <small>{length}</small>
      </td>
      <td data-label="Heads in a pack">
        {packHeads.toLocaleString('en-GB')}
        {mostPacks === null ? null : <small>{mostPacks} packs at most</small>}
      </td>
      <td data-label="A pack, and one head">
        <Prices offer={offer} currency={currency} />
        <a href={paths.bulkOf({ offer: code })}>
          How many?
          <span class="unseen">
            {' '}
            {prey}, {length}
          </span>
        </a>
      </td>
    </tr>
  );
};

/** The size of the trade these lengths are, where the offer's own words do not say it. */
const TradeSize = ({ offer, classes }: { offer: Offer; classes: PreySpecies['sizeClasses']['value'] }) => {
  const { fromMm, toMm, size } = offer;
  const { best } = tradeSizes({ minMm: fromMm, idealMm: (fromMm + toMm) / 2, maxMm: toMm }, classes);
  if (best === null) return <small>No size the trade sells</small>;
  const words = best.name === sizeWord(best) ? best.name : `${best.name}, ${sizeWord(best)}`;
  return words === size ? null : <small>The trade’s {words}</small>;
};

const Prices = ({ offer, currency }: { offer: Offer; currency: string }) => (
  <ul class="prices">
    {offer.prices.map(({ fromPacks }) => (
      <li>
        {fromPacks > 1 ? `from ${fromPacks} packs ` : ''}
        {money(packCents(offer, fromPacks), currency)},{' '}
        <strong>{headPrice(headCents(offer, fromPacks), currency)}</strong> each
        {headCents(offer, fromPacks) > headCents(offer, fromPacks - 1) ? ', dearer than fewer packs' : ''}
      </li>
    ))}
  </ul>
);
