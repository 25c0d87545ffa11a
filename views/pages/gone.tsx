/** Who and what is gone: when, why, its record, and the way back. */
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import { sentenceCase, writtenDay } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import type { PageForms } from '../partials/form.tsx';
import { paths } from '../paths.ts';

export interface GoneLine {
  readonly what: 'animal' | 'bin' | 'room' | 'delivery' | 'purchase' | 'planned_change';
  readonly code: string;
  readonly name: string;
  /** 'died', 'sold', 'taken out of use' ... */
  readonly why: string;
  readonly day: DayNumber | null;
  /** Of a group that left whole. */
  readonly count?: number;
  /** Deaths in a group that is still here. */
  readonly heads?: number;
}

/** The form posts `what`, `code` and, for deaths in a group, `heads` to `paths.bringBack`. */
export interface GoneProps {
  readonly shell: Shell;
  readonly forms: PageForms;
  readonly animals: readonly GoneLine[];
  readonly deaths: readonly GoneLine[];
  readonly bins: readonly GoneLine[];
  readonly rooms: readonly GoneLine[];
  readonly orders: readonly GoneLine[];
  readonly plans: readonly GoneLine[];
}

const PARTS = [
  ['animals', 'Animals'],
  ['deaths', 'Deaths in groups that are still here'],
  ['bins', 'Bins and cups'],
  ['rooms', 'Rooms'],
  ['orders', 'Deliveries'],
  ['plans', 'Plans'],
] as const;

export const GonePage = (props: GoneProps) => {
  const shown = PARTS.filter(([part]) => props[part].length > 0);
  return (
    <Layout shell={props.shell} title="Gone" here="more">
      <header class="page-head">
        <h1>{shown.length === 0 ? 'Nobody and nothing is gone' : 'Who and what is gone'}</h1>
        <p>
          {shown.length === 0
            ? 'Animals that die or leave, bins taken out of use, rooms removed and orders cancelled are kept here with their records, and can come back.'
            : 'Nothing is deleted: each keeps its code and its record, and can come back.'}{' '}
          <a href={paths.history}>History</a>
        </p>
      </header>
      {shown.map(([part, title]) => (
        <section aria-labelledby={part}>
          <h2 id={part}>{title}</h2>
          <ul class="lines gone">
            {props[part].map((line, at) => (
              <Line line={line} formId={`${props.forms.formId}.${part}.${at}`} />
            ))}
          </ul>
        </section>
      ))}
    </Layout>
  );
};

const Line = ({ line, formId }: { line: GoneLine; formId: string }) => (
  <li>
    <span>
      <Name {...line} />
      <small>{whenAndWhy(line)}</small>
    </span>
    <BringBack {...line} formId={formId} />
  </li>
);

const Name = ({ what, code, name, count, heads }: GoneLine) => {
  const place = what === 'animal' ? paths.animal(code) : what === 'bin' ? paths.bin(code) : null;
  const words = `${heads === undefined ? '' : `${heads} of `}${name}${count === undefined ? '' : ` × ${count}`}`;
  return place === null ? words : <a href={place}>{words}</a>;
};

export const whenAndWhy = ({ why, day }: Pick<GoneLine, 'why' | 'day'>): string =>
  `${sentenceCase(why)}${day === null ? '' : ` on ${writtenDay(day)}`}`;

type BringBackProps = Pick<GoneLine, 'what' | 'code' | 'name' | 'heads'> & { readonly formId: string };

export const BringBack = ({ what, code, name, heads, formId }: BringBackProps) => (
  <form method="post" action={paths.bringBack}>
    <input type="hidden" name="formId" value={`${formId}.back`} />
    <input type="hidden" name="what" value={what} />
    <input type="hidden" name="code" value={code} />
    {heads === undefined ? null : <input type="hidden" name="heads" value={`${heads}`} />}
    <button type="submit" class="quiet small">
      {heads === undefined || heads === 1 ? 'Bring it back' : 'Bring them back'}
      <span class="unseen">: {name}</span>
    </button>
  </form>
);
