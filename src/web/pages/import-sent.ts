/** The form that sends a list: a file or pasted cells, of a length that can be read. */
import type { Context } from 'hono';
import type { Refused } from '../../../views/partials/form.tsx';
import { err, ok, type Result } from '../../husbandry/result.ts';
import { sizeProblem } from '../../intake/index.ts';
import type { ListOf } from './drafts.ts';

const KNOWN = ['what', 'file', 'text', 'formId'];

export interface SentList {
  readonly what: ListOf;
  readonly bytes: Uint8Array;
  /** The form again, with a sentence beside the file or the cells. */
  readonly refuse: (sentence: string) => Refused;
}

export async function sentList(c: Context): Promise<Result<SentList, Refused>> {
  const form = await c.req.parseBody();
  const file = form.file instanceof File && form.file.size > 0 ? form.file : null;
  const text = typeof form.text === 'string' ? form.text : '';
  const what = String(form.what ?? '');
  const values = { what, text };
  const refused = (field: string, sentence: string): Refused => ({
    form: 'import',
    values,
    problems: { [field]: sentence },
  });
  const field = file === null ? 'text' : 'file';
  const unknown = Object.keys(form).find((name) => !KNOWN.includes(name));
  if (unknown !== undefined) return err(refused('', `"${unknown}" is not a field known here.`));
  if (what !== 'animals' && what !== 'stock')
    return err(refused('what', 'Say what the list is of: animals or prey.'));
  const bytes = file === null ? new TextEncoder().encode(text) : new Uint8Array(await file.arrayBuffer());
  if (text.trim() === '' && form.file instanceof File && form.file.name !== '' && file === null)
    return err(refused('file', `The file "${form.file.name}" is empty. Choose another or paste the cells.`));
  if (text.trim() === '' && file === null)
    return err(refused('text', 'Choose a file or paste the cells of a list.'));
  const tooLarge = sizeProblem(bytes.length);
  if (tooLarge !== null) return err(refused(field, tooLarge.sentence));
  return ok({ what, bytes, refuse: (sentence) => refused(field, sentence) });
}
