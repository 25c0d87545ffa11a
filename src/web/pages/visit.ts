/** One request for a page: the room as it is, the frame around it, and the ids of its forms. */
import { randomUUID } from 'node:crypto';
import { setTimeout as pause } from 'node:timers/promises';
import type { Context } from 'hono';
import type { ContentfulStatusCode } from 'hono/utils/http-status';
import type { LengthUnit } from '../../../views/format.ts';
import type { Shell } from '../../../views/layout.tsx';
import { type Names, namesOf } from '../../../views/names.ts';
import type { PageForms, Refused } from '../../../views/partials/form.tsx';
import { loadSnapshot } from '../../actions/index.ts';
import type { DayNumber } from '../../husbandry/calendar.ts';
import type { Snapshot } from '../../husbandry/snapshot.ts';
import { demoIsHere, type Settings, settings } from '../../store/index.ts';
import { themeOf, wordsLeft } from './cookies.ts';
import type { House } from './house.ts';
import { lastStep } from './last-step.ts';

export interface Visit {
  readonly snapshot: Snapshot;
  readonly unit: LengthUnit;
  readonly names: Names;
  readonly shell: Shell;
  readonly forms: PageForms;
}

interface Asked {
  /** The form that was refused, shown again with what was typed. */
  readonly refused?: Refused | null;
  /** The day shown; by default today. */
  readonly day?: DayNumber;
}

export const unitOf = ({ units }: Settings): LengthUnit => (units === 'inch' ? 'in' : 'mm');

export async function visit(house: House, c: Context, { refused = null, day }: Asked = {}): Promise<Visit> {
  const { context } = house;
  const snapshot = await loadSnapshot(context, day);
  const found = await context.store.askAll({ settings, demo: demoIsHere });
  const names = namesOf(snapshot);
  const formId = randomUUID();
  const { smallHours = false } = context.clock();
  const shell: Shell = {
    today: snapshot.today,
    smallHours,
    theme: themeOf(c),
    demo: found.demo,
    undo: await lastStep(house, c, names),
    flash: wordsLeft(c),
    formId,
    path: c.req.method === 'GET' ? c.req.path : '/',
    canLogOut: house.canLogOut,
  };
  return { snapshot, unit: unitOf(found.settings), names, shell, forms: { formId, refused } };
}

/** Where no form is left to say it above, what was wrong is said by the frame. */
export function withWords(shell: Shell, sentences: readonly string[]): Shell {
  const words = sentences.map((text) => ({ kind: 'problem' as const, text }));
  return { ...shell, flash: [...shell.flash, ...words] };
}

const OK = 200;
const REFUSED = 422;
/** Of a page that shows a form again, or of any other. */
export const statusOf = (isRefused: boolean): ContentfulStatusCode => (isRefused ? REFUSED : OK);

/** Sends a page; it looks otherwise for another cookie. Its markup becomes text in a turn of the loop of its own. */
export async function page(
  c: Context,
  markup: string | Promise<string>,
  status: ContentfulStatusCode = 200,
): Promise<Response> {
  c.header('Vary', 'Cookie');
  await pause(0);
  return c.html(markup, status);
}
