/** Suppliers and offers to choose from. */
import { type Names, preyName, sizedPrey } from '../../../views/names.ts';
import type { Option } from '../../../views/partials/form.tsx';
import type { Market } from '../../husbandry/orders/index.ts';

export const supplierOptions = ({ suppliers }: Market): readonly Option[] =>
  suppliers.map(({ code, name }) => ({ value: code, label: name }));

/** Offers in groups of their suppliers. */
export const offerOptions = ({ suppliers, offers }: Market, { species }: Names): readonly Option[] =>
  offers.map((offer) => ({
    value: offer.code,
    label: `${sizedPrey(offer.size, preyName(species, offer.species))}, packs of ${offer.packHeads.toLocaleString('en-GB')}`,
    group: suppliers.find(({ code }) => code === offer.supplier)?.name ?? 'No supplier',
  }));
