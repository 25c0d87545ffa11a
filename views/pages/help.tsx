/** Help: what each page is for, the keys, and what is kept where. */
import { Layout, type Shell } from '../layout.tsx';
import { KeyList, KeysSwitch } from '../partials/keys.tsx';
import { paths } from '../paths.ts';

interface PageWords {
  readonly href: string;
  readonly name: string;
  readonly asks: string;
  readonly does: string;
}

const PAGES: readonly PageWords[] = [
  {
    href: paths.sunday,
    name: 'Sunday',
    asks: 'Will the feeders last until the next delivery?',
    does: 'What runs out when, how sure that is, and the one act that helps most.',
  },
  {
    href: paths.tonight,
    name: 'Tonight',
    asks: 'Who eats what, how many, out of which bin?',
    does: 'Tap only what went otherwise; one button writes down the rest.',
  },
  {
    href: paths.morning,
    name: 'Morning',
    asks: 'What became of the meals?',
    does: 'Tap only who did not eat; one button closes the rest.',
  },
  {
    href: paths.animals,
    name: 'Animals',
    asks: 'Who lives here, how big, when is the next meal?',
    does: 'Add, find, measure; write down moults and deaths.',
  },
  {
    href: paths.larder,
    name: 'Larder',
    asks: 'What prey is alive here, and how big?',
    does: 'Count, weigh or look at a bin; say what is on its way.',
  },
  {
    href: paths.orders,
    name: 'Orders',
    asks: 'What comes when, and what if it falls short?',
    does: 'Write an order down; say that it came, with its dead and its size, or that it is late.',
  },
  {
    href: paths.bulk,
    name: 'Bulk order',
    asks: 'How many should the box hold?',
    does: 'Choose an offer; see what each one that is eaten costs at every count, and order the best.',
  },
  {
    href: paths.plan,
    name: 'Plan',
    asks: 'What do you order, harvest, cull and start in the coming weeks, and why?',
    does: 'Take a step, insist on it or forbid it; ask what if; nothing is done until you do it.',
  },
  {
    href: paths.more,
    name: 'More',
    asks: 'Where is everything else?',
    does: 'History and undo, sheets for paper, labels, the Book of numbers, and what is needed more rarely.',
  },
  {
    href: paths.settings,
    name: 'Settings',
    asks: 'When do you feed, and how warm is it?',
    does: 'Feeding days, delivery days, rooms, absences, units, light.',
  },
];

export const HelpPage = ({ shell }: { shell: Shell }) => (
  <Layout shell={shell} title="Help and keys" here="more">
    <header class="page-head">
      <h1>Every page answers one question</h1>
    </header>
    <dl class="help-pages">
      {PAGES.map(({ href, name, asks, does }) => (
        <div>
          <dt>
            <a href={href}>{name}</a>
          </dt>
          <dd>
            <strong>{asks}</strong> {does}
          </dd>
        </div>
      ))}
    </dl>
    <section aria-labelledby="help-keys">
      <h2 id="help-keys">Keys</h2>
      <p>With a keyboard. They rest while you type; Tab, Space and Enter do everything too.</p>
      <KeyList />
      <p>
        <KeysSwitch />
      </p>
    </section>
    <Kept />
  </Layout>
);

const Kept = () => (
  <section aria-labelledby="help-kept">
    <h2 id="help-kept">What is kept where</h2>
    <ul class="help-kept">
      <li>
        <strong>Everything you write down</strong> is kept by the server. Each thing can be undone, a whole
        round as one.
      </li>
      <li>
        <strong>When the server is away</strong>, leave the page open and go on tapping. What you send is kept
        on this device, named above the page, and sent in order as soon as the server answers; never twice. It
        counts for the evening on the page, whenever it arrives.
      </li>
      <li>
        <strong>Marks of a round not sent yet</strong> stay on this device until you send them. A private
        window may keep nothing; the page then says so.
      </li>
      <li>
        <strong>The light and the single keys</strong> are chosen for each device.
      </li>
    </ul>
  </section>
);
