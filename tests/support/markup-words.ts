/** Reads markup as a keeper or a browser does: its words, its attributes. */

const ENTITIES: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };

const decoded = (text: string): string =>
  text.replace(/&(amp|lt|gt|quot|#39);/g, (_, name) => ENTITIES[name] ?? '');

/** The visible words, with single spaces. */
export const words = (html: string): string =>
  decoded(
    html
      .replace(/<head>.*?<\/head>/gs, '')
      .replace(/<(?:desc|title)[^>]*>.*?<\/(?:desc|title)>/gs, '')
      .replace(/<\/?(?:b|strong|em|span|a|tspan)\b[^>]*>/g, '')
      .replace(/<[^>]+>/g, ' '),
  )
    .replace(/\s+/g, ' ')
    .trim();

/** Every value of an attribute, in order. */
export const attributes = (html: string, name: string): string[] =>
  [...html.matchAll(new RegExp(` ${name}="([^"]*)"`, 'g'))].map((match) => decoded(match[1] ?? ''));

/** The opening tags of an element. */
export const tags = (html: string, name: string): string[] =>
  html.match(new RegExp(`<${name}\\b[^>]*>`, 'g')) ?? [];

/** What stands inside each element of a name; elements of that name do not nest. */
export const insides = (html: string, name: string): string[] =>
  [...html.matchAll(new RegExp(`<${name}\\b[^>]*>(.*?)</${name}>`, 'gs'))].map((match) => match[1] ?? '');
