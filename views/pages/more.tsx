/** More: every page that is not in the navigation, each with what it is for. */
import { Layout, type Shell } from '../layout.tsx';
import { paths } from '../paths.ts';

interface Door {
  readonly href: string;
  readonly label: string;
  readonly what: string;
}

const ROOMS: readonly { title: string; doors: readonly Door[] }[] = [
  {
    title: 'The evening on paper',
    doors: [
      { href: paths.sheet, label: 'Evening sheet', what: 'Tonight’s round, to print.' },
      { href: paths.blankSheet(7), label: 'Blank sheet', what: 'A week to write on.' },
      { href: paths.keyIn, label: 'Key a sheet in', what: 'Write an evening down from paper.' },
      { href: paths.labels, label: 'Labels', what: 'Codes for enclosures, bins and cups, to print.' },
      { href: paths.walk, label: 'The order you walk', what: 'Shelves and animals as you come to them.' },
    ],
  },
  {
    title: 'What is coming',
    doors: [
      { href: paths.orders, label: 'Orders', what: 'What is on its way, how it came, and a new order.' },
      {
        href: paths.plan,
        label: 'Plan',
        what: 'What to order, harvest, cull and start in the coming weeks, and why.',
      },
      {
        href: paths.whatIf,
        label: 'What if',
        what: 'Warmer, away, a sac, a supplier stops: compared with the plan.',
      },
      {
        href: paths.suppliers,
        label: 'Suppliers',
        what: 'Who sends what, at which price, and by when to order.',
      },
      {
        href: paths.bulk,
        label: 'Bulk order',
        what: 'How many the box should hold: what each one that is eaten costs.',
      },
      { href: paths.away, label: 'When you are away', what: 'Who can wait, and a sheet for a sitter.' },
      { href: paths.sacs, label: 'Sacs', what: 'When young hatch, and the cup to start for them.' },
    ],
  },
  {
    title: 'What was',
    doors: [
      { href: paths.history, label: 'History', what: 'Everything written down, each with its undo.' },
      { href: paths.gone, label: 'Gone', what: 'Animals and bins that left, and the way back.' },
    ],
  },
  {
    title: 'The room and its numbers',
    doors: [
      {
        href: paths.book,
        label: 'Book',
        what: 'Every kind with its rule: where each number comes from, and yours.',
      },
      {
        href: paths.settings,
        label: 'Settings',
        what: 'Feeding days, deliveries, rooms, money, units and light.',
      },
      { href: paths.import, label: 'Bring in a list', what: 'Animals or prey from a spreadsheet.' },
      { href: paths.start, label: 'First steps', what: 'Three short forms to a first answer.' },
      { href: paths.help, label: 'Help', what: 'What each page is for, and the keys.' },
    ],
  },
];

export const MorePage = ({ shell }: { shell: Shell }) => (
  <Layout shell={shell} title="More" here="more">
    <header class="page-head">
      <h1>Everything else</h1>
    </header>
    <div class="rooms">
      {ROOMS.map(({ title, doors }) => (
        <section>
          <h2>{title}</h2>
          <ul class="doors">
            {doors.map(({ href, label, what }) => (
              <li>
                <a href={href}>{label}</a>
                <small>{what}</small>
              </li>
            ))}
          </ul>
        </section>
      ))}
    </div>
  </Layout>
);
