/** The frame of every page: banner, navigation, messages, footer. */
import type { Child } from 'hono/jsx';
import type { DayNumber } from '../src/husbandry/calendar.ts';
import { Document } from './document.tsx';
import { longDay } from './format.ts';
import { Icon, type IconName } from './partials/icons.tsx';
import { KeysDialog } from './partials/keys.tsx';
import { type ThemeChoice, ThemeForm } from './partials/theme.tsx';
import { paths } from './paths.ts';

export type Place = 'sunday' | 'tonight' | 'animals' | 'larder' | 'more' | 'settings';

export interface LastStep {
  /** Numbers of its acts, parted by commas. */
  readonly id: string;
  readonly label: string;
  /** The step was an undo: pressing does it again. */
  readonly again?: boolean;
  /** It has been seen: a quiet line at the foot instead of the banner. */
  readonly calm?: boolean;
}

/** What every page is given, whatever it shows. */
export interface Shell {
  readonly today: DayNumber;
  /** It is after midnight and still counts as that day. */
  readonly smallHours?: boolean;
  readonly theme: ThemeChoice;
  /** The demo room is what is shown. */
  readonly demo: boolean;
  /** The last step that can be undone. */
  readonly undo: LastStep | null;
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
      <Navigation here={here} path={shell.path} />
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
      <LastDone shell={shell} />
      {here === 'settings' ? null : <ThemeForm formId={shell.formId} theme={shell.theme} back={shell.path} />}
      <a class="button quiet" href={paths.help}>
        Help and keys
      </a>
      {shell.canLogOut ? <LogOut formId={shell.formId} /> : null}
    </footer>
    <KeysDialog />
  </Document>
);

interface CurrentProps extends Pick<LayoutProps, 'here'> {
  readonly path: string;
}

const Navigation = ({ here, path }: CurrentProps) => (
  <nav class="nav" aria-label="Pages">
    {NAVIGATION.map(({ place, label, href, icon }) => (
      <a href={href} {...currentOf(place, { here, path })}>
        <Icon name={icon} />
        <span>{label}</span>
      </a>
    ))}
  </nav>
);

/** The page shown is marked as such; of a page behind "More", that it is behind it. */
const currentOf = (place: Place, { here, path }: CurrentProps) => {
  if (place !== here && !(place === 'more' && here === 'settings')) return {};
  return { 'aria-current': place === 'more' && path !== paths.more ? ('true' as const) : ('page' as const) };
};

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
    {shell.undo === null || shell.undo.calm ? null : (
      <UndoLast step={shell.undo} formId={shell.formId} class="banner undo" />
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

interface UndoLastProps {
  readonly step: LastStep;
  readonly formId: string;
  readonly class: string;
  readonly before?: string;
}

const UndoLast = ({ step, formId, class: look, before = '' }: UndoLastProps) => (
  <form method="post" action={paths.undo(step.id)} class={look}>
    <input type="hidden" name="formId" value={`${formId}.undo`} />
    <span>
      {before}
      {step.label}
    </span>
    <button type="submit" class="quiet" id="undo-last" aria-keyshortcuts="u">
      {step.again ? 'Do it again' : 'Undo'}
      <span class="unseen">: {step.label}</span>
    </button>
  </form>
);

/** What was done last, for a month, and the way to all that was done before. */
const LastDone = ({ shell }: { shell: Shell }) => (
  <div class="last-done">
    {shell.undo?.calm ? (
      <UndoLast step={shell.undo} formId={shell.formId} class="undo" before="Last: " />
    ) : null}
    <a href={paths.history}>History</a>
  </div>
);

const LogOut = ({ formId }: { formId: string }) => (
  <form method="post" action={paths.logout}>
    <input type="hidden" name="formId" value={`${formId}.logout`} />
    <button type="submit" class="quiet">
      Log out
    </button>
  </form>
);
