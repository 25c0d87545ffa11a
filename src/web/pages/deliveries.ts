/** Deliveries: expected, come, or not coming. */

import type { Context, Hono } from 'hono';
import type { Refused } from '../../../views/partials/form.tsx';
import { paths } from '../../../views/paths.ts';
import { civilDay, heads, headsOrNone } from '../../actions/fields.ts';
import { cancelDelivery, deliveryCame, expectDelivery, loadSnapshot } from '../../actions/index.ts';
import { fittingBin } from '../../husbandry/larder/index.ts';
import { problem } from '../../husbandry/problems.ts';
import { err, ok, type Result } from '../../husbandry/result.ts';
import { plural } from '../../husbandry/words.ts';
import { rowNamed } from '../../store/index.ts';
import type { DoorEnv } from '../door.ts';
import { type Lengths, lengthsChosen, speciesChosen } from './choices.ts';
import type { House } from './house.ts';
import { showLarder } from './larder.ts';
import { posted } from './posted.ts';
import { binsFilled } from './prey-into.ts';
import { codeOf, route } from './route.ts';
import { anyText, maybe, needed, typed } from './typed.ts';

export function deliveryRoutes(app: Hono<DoorEnv>, house: House): void {
  const { context } = house;
  const shown = {
    next: () => paths.larder,
    again: (c: Context, refused: Refused) => showLarder(house, c, refused),
    fields: { fromMm: 'size', delivery: '' },
  };
  app.post(
    paths.newDelivery,
    posted(house, {
      ...shown,
      form: () => 'delivery',
      shape: () => ({ bin: anyText, heads: typed(heads), size: needed, day: typed(civilDay) }),
      act: async ({ size, bin: chosen, ...given }, { formId }) => {
        const bin = chosen === '' ? await binFitting(house, size) : ok(chosen);
        if (!bin.ok) return bin;
        const lengths = await lengthsFor(house, bin.value, size);
        if (!lengths.ok) return lengths;
        return expectDelivery(context, { ...given, bin: bin.value, ...lengths.value, formId });
      },
    }),
  );
  app.post(
    route(paths.arrived(':code')),
    posted(house, {
      ...shown,
      form: (c) => `came-${codeOf(c)}`,
      shape: () => ({
        day: typed(civilDay),
        alive: typed(headsOrNone),
        dead: maybe(headsOrNone),
        size: anyText,
      }),
      act: async ({ size, dead = '0', ...given }, { c, formId }) => {
        const order = await context.store.ask(rowNamed('delivery', codeOf(c)));
        const lengths = size === '' ? ok({}) : await lengthsFor(house, order?.bin ?? '', size);
        if (!lengths.ok) return lengths;
        return deliveryCame(context, { delivery: codeOf(c), ...given, dead, ...lengths.value, formId });
      },
    }),
  );
  app.post(
    route(paths.cancelDelivery(':code')),
    posted(house, {
      ...shown,
      form: (c) => `cancel-${codeOf(c)}`,
      shape: () => ({}),
      act: (_, { c, formId }) => cancelDelivery(context, { delivery: codeOf(c), formId }),
    }),
  );
}

/** The bin that prey of a size is best put into. */
async function binFitting(house: House, size: string): Promise<Result<string>> {
  const snapshot = await loadSnapshot(house.context);
  const species = snapshot.facts.species.get(speciesChosen(size));
  if (species === undefined) return err(problem('no-bin', 'Choose the bin it goes into.', 'bin'));
  const lengths = lengthsChosen(size, species, 'size');
  if (!lengths.ok) return lengths;
  const coming = { species: species.code, ...lengths.value };
  const bin = fittingBin(await binsFilled(house, snapshot), coming, snapshot.today);
  const sentence = `No bin holds ${plural(species.commonName)} of about that size, and none is empty: choose one, or add a bin first.`;
  return bin === null ? err(problem('no-bin', sentence, 'bin')) : ok(bin.code);
}

/** Lengths of a size of the prey that goes into this bin. */
async function lengthsFor({ context }: House, code: string, size: string): Promise<Result<Lengths>> {
  const { bins, facts } = await loadSnapshot(context);
  const bin = bins.find((each) => each.code === code);
  const species = facts.species.get(bin?.species ?? '');
  return species === undefined
    ? err(problem('unknown-bin', `There is no bin "${code}" in use.`, 'bin'))
    : lengthsChosen(size, species, 'size');
}
