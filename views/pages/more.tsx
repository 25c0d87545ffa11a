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
    title: 'The room',
    doors: [
      { href: paths.settings, label: 'Settings', what: 'Feeding days, deliveries, rooms, units and light.' },
      { href: paths.import, label: 'Bring in a list', what: 'Animals or prey from a spreadsheet.' },
      { href: paths.start, label: 'First steps', what: 'Three short forms to a first answer.' },
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
