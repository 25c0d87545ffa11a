/** The document alone: head, style and scripts; for every page, and for those outside the house: login and errors. */
import { raw } from 'hono/html';
import type { Child } from 'hono/jsx';
import type { ThemeChoice } from './partials/theme.tsx';
import { paths } from './paths.ts';

interface DocumentProps {
  readonly title: string;
  readonly theme: ThemeChoice;
  /** What it is set in; by default as every page. */
  readonly stylesheets?: readonly string[];
  readonly children?: Child;
}

export const Document = ({ title, theme, stylesheets = paths.stylesheets, children }: DocumentProps) => (
  <>
    {raw('<!doctype html>')}
    <html lang="en-GB" class={`theme-${theme}`}>
      <head>
        <meta charset="utf-8" />
        <title>{`${title} · Preylarder`}</title>
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta
          name="color-scheme"
          content={theme === 'light' ? 'light' : theme === 'system' ? 'light dark' : 'dark'}
        />
        {stylesheets.map((href) => (
          <link rel="stylesheet" href={href} />
        ))}
        {paths.scripts.map((src) => (
          <script src={src} defer></script>
        ))}
        {paths.modules.map((src) => (
          <script src={src} type="module"></script>
        ))}
      </head>
      <body>{children}</body>
    </html>
  </>
);
