/** The frame of every page: document, banner, navigation, messages, footer. */
import { raw } from 'hono/html';
import type { Child } from 'hono/jsx';
import type { DayNumber } from '../src/husbandry/calendar.ts';
import { longDay } from './format.ts';
import { Icon, type IconName } from './partials/icons.tsx';
import { KeysDialog } from './partials/keys.tsx';
import { type ThemeChoice, ThemeForm } from './partials/theme.tsx';
import { paths } from './paths.ts';

export type Place = 'sunday' | 'tonight' | 'animals' | 'larder' | 'more' | 'settings';

/** What every page is given, whatever it shows. */
export interface Shell {
  readonly today: DayNumber;
  /** It is after midnight and still counts as that day. */
  readonly smallHours?: boolean;
  readonly theme: ThemeChoice;
  /** The demo room is what is shown. */
  readonly demo: boolean;
  /** The last act that can be undone. */
  readonly undo: { readonly id: string; readonly label: string } | null;
  readonly flash: readonly { readonly kind: 'done' | 'problem'; readonly text: string }[];
  /** Fresh id for the forms of the frame itself. */
  readonly formId: string;
  /** Path of the page shown, to come back to. */
  readonly path: string;
  /** False on a server without a password: nobody to log out. */
  readonly canLogOut: boolean;
}

interface LayoutProps {
  readonly shell: Shell;
  readonly title: string;
  readonly here: Place | null;
  readonly children?: Child;
}

const NAVIGATION: readonly { place: Place; label: string; href: string; icon: IconName }[] = [
  { place: 'sunday', label: 'Sunday', href: paths.sunday, icon: 'ruler' },
  { place: 'tonight', label: 'Tonight', href: paths.tonight, icon: 'moon' },
  { place: 'animals', label: 'Animals', href: paths.animals, icon: 'spider' },
  { place: 'larder', label: 'Larder', href: paths.larder, icon: 'jar' },
  { place: 'more', label: 'More', href: paths.more, icon: 'doors' },
];

export const Layout = ({ shell, title, here, children }: LayoutProps) => (
  <Document title={title} theme={shell.theme}>
    <a class="skip" href="#main">
      Skip to the page
    </a>
    <header class="top">
      <a class="brand" href={paths.sunday}>
        Preylarder
      </a>
      <Navigation here={here} />
      <span class="today">
        {longDay(shell.today)}
        {shell.smallHours ? ', until 04:00' : ''}
      </span>
    </header>
    <Banners shell={shell} />
    <Outbox />
    <main id="main" tabindex={-1}>
      {children}
    </main>
    <footer class="foot">
      {here === 'settings' ? null : <ThemeForm formId={shell.formId} theme={shell.theme} back={shell.path} />}
      <a class="button quiet" href={paths.help}>
        Help and keys
      </a>
      {shell.canLogOut ? <LogOut formId={shell.formId} /> : null}
    </footer>
    <KeysDialog />
  </Document>
);

interface DocumentProps {
  readonly title: string;
  readonly theme: ThemeChoice;
  /** What it is set in; by default as every page. */
  readonly stylesheets?: readonly string[];
  readonly children?: Child;
}

/** The document alone, for pages that stand outside the house: login and errors. */
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

const Navigation = ({ here }: Pick<LayoutProps, 'here'>) => (
  <nav class="nav" aria-label="Pages">
    {NAVIGATION.map(({ place, label, href, icon }) => (
      <a href={href} {...currentOf(place, here)}>
        <Icon name={icon} />
        <span>{label}</span>
      </a>
    ))}
  </nav>
);

/** Pages behind "More" count as being there. */
const currentOf = (place: Place, here: Place | null) =>
  place === here
    ? { 'aria-current': 'page' as const }
    : place === 'more' && here === 'settings'
      ? { 'aria-current': true as const }
      : {};

const Banners = ({ shell }: { shell: Shell }) => (
  <aside class="banners" aria-label="Notices">
    {shell.demo ? (
      <div class="banner demo">
        <span>Demo room: try anything.</span>
        <a href={paths.start}>Start your own</a>
      </div>
    ) : null}
    <div role="status">
      {shell.flash.map(({ kind, text }) => (
        <p class={`banner ${kind}`}>{text}</p>
      ))}
    </div>
    {shell.undo === null ? null : (
      <form method="post" action={paths.undo(shell.undo.id)} class="banner undo">
        <input type="hidden" name="formId" value={`${shell.formId}.undo`} />
        <span>{shell.undo.label}</span>
        <button type="submit" class="quiet" id="undo-last" aria-keyshortcuts="u">
          Undo<span class="unseen">: {shell.undo.label}</span>
        </button>
      </form>
    )}
  </aside>
);

/** What waits on this device to be sent; the script fills it. */
const Outbox = () => (
  <section class="outbox" id="outbox" aria-label="Kept on this device" tabindex={-1}>
    <p id="outbox-words" role="status"></p>
    <ul></ul>
    <button type="button" class="small" id="outbox-send" hidden>
      Send now
    </button>
  </section>
);

const LogOut = ({ formId }: { formId: string }) => (
  <form method="post" action={paths.logout}>
    <input type="hidden" name="formId" value={`${formId}.logout`} />
    <button type="submit" class="quiet">
      Log out
    </button>
  </form>
);
