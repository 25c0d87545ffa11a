/** Prey taken out of a bin: harvested, moved, culled, retired, split off or merged. */

import type { Context, Hono } from 'hono';
import { paths } from '../../../views/paths.ts';
import { HOW_CULLED } from '../../actions/cull.ts';
import { heads, oneOf } from '../../actions/fields.ts';
import { cull, harvest, mergeBins, move, retire, splitBin } from '../../actions/index.ts';
import { ok } from '../../husbandry/result.ts';
import type { DoorEnv } from '../door.ts';
import { about, at, day, lengthsOf } from './bin-post.ts';
import type { House } from './house.ts';
import { posted } from './posted.ts';
import { codeOf } from './route.ts';
import { anyText, maybeText, needed, ticked, typed } from './typed.ts';

export function binTakeRoutes(app: Hono<DoorEnv>, house: House): void {
  const { context } = house;
  app.post(
    at('retire'),
    posted(house, {
      ...about(house, 'retire'),
      shape: () => ({ heads: typed(heads), to: anyText, day, sure: ticked }),
      act: (given, { c, formId }) => retire(context, { bin: codeOf(c), ...given, formId }),
    }),
  );
  app.post(
    at('split'),
    posted(house, {
      ...about(house, 'split'),
      shape: () => ({ heads: maybeText, percent: maybeText, name: anyText, day, sure: ticked }),
      act: (given, { c, formId }) => splitBin(context, { bin: codeOf(c), ...given, formId }),
      next: (_: Context, { bin }: { bin: string }) => paths.bin(bin),
    }),
  );
  app.post(
    at('merge'),
    posted(house, {
      ...about(house, 'merge'),
      shape: () => ({ to: needed, day, sure: ticked }),
      act: (given, { c, formId }) => mergeBins(context, { bin: codeOf(c), ...given, formId }),
      next: (_: Context, { bin }: { bin: string }) => paths.bin(bin),
    }),
  );
  sizedRoutes(app, house);
}

/** Acts on prey of one size, or where '' is allowed, of all. */
function sizedRoutes(app: Hono<DoorEnv>, house: House): void {
  const { context } = house;
  const sized = (c: Context, size: string) =>
    size === '' ? ok({}) : lengthsOf(house, codeOf(c), { value: size, field: 'size' });
  app.post(
    at('harvest'),
    posted(house, {
      ...about(house, 'harvest'),
      shape: () => ({ heads: typed(heads), sizeClass: needed, to: anyText, day, sure: ticked }),
      act: async ({ sizeClass, ...given }, { c, formId }) => {
        const lengths = await lengthsOf(house, codeOf(c), { value: sizeClass, field: 'sizeClass' });
        return lengths.ok
          ? harvest(context, { bin: codeOf(c), ...given, ...lengths.value, formId })
          : lengths;
      },
    }),
  );
  app.post(
    at('cull'),
    posted(house, {
      ...about(house, 'cull'),
      shape: () => ({ heads: typed(heads), size: anyText, how: oneOf(HOW_CULLED), day, sure: ticked }),
      act: async ({ size, ...given }, { c, formId }) => {
        const lengths = await sized(c, size);
        return lengths.ok ? cull(context, { bin: codeOf(c), ...given, ...lengths.value, formId }) : lengths;
      },
    }),
  );
  app.post(
    at('move'),
    posted(house, {
      ...about(house, 'move'),
      shape: () => ({ heads: typed(heads), size: anyText, to: needed, day, sure: ticked }),
      act: async ({ size, ...given }, { c, formId }) => {
        const lengths = await sized(c, size);
        return lengths.ok ? move(context, { from: codeOf(c), ...given, ...lengths.value, formId }) : lengths;
      },
    }),
  );
}
