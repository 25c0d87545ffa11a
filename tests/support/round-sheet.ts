/** The round's form as a browser would send it untouched: hidden fields, and choices as they stand. */
import { attributes, tags } from './markup-words.ts';

/** Fields of `<form id="round">`; a name that comes more than once holds a list. */
export function sheetIn(html: string): Readonly<Record<string, string | readonly string[]>> {
  const form = /<form[^>]*id="round".*?<\/form>/s.exec(html)?.[0] ?? '';
  const fields: Record<string, string[]> = {};
  for (const tag of tags(form, 'input')) {
    const sent = tag.includes('type="hidden"') || / checked/.test(tag);
    const [name] = attributes(tag, 'name');
    const [value = ''] = attributes(tag, 'value');
    if (sent && name !== undefined) fields[name] = [...(fields[name] ?? []), value];
  }
  return Object.fromEntries(
    Object.entries(fields).map(([name, values]) => [name, values.length === 1 ? values[0]! : values]),
  );
}
