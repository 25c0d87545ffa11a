/** Morning: what became of the last meals; what is not said counts as eaten once a button is pressed. */
import { civilDate, type DayNumber } from '../../src/husbandry/calendar.ts';
import { ROUND_CAUTION } from '../cautions.ts';
import { counted, longDay } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import { entryOf, type FormEntry, type PageForms, PostForm } from '../partials/form.tsx';
import { paths } from '../paths.ts';
import { MorningRowLine } from './morning-row.tsx';

export interface MorningRow {
  readonly animal: string;
  readonly name: string;
  readonly shelf: string;
  /** What it was offered: '3 crickets, 6–8 mm'. */
  readonly offered: string;
  /** Whether its kind moults at all. */
  readonly moults: boolean;
  /** May moult soon: live prey still with it must come out first. */
  readonly nearMoult: boolean;
  /** Why it is likely to have left food; null when nothing on record says so. */
  readonly likelyLeft: string | null;
}

/**
 * Posts to `paths.morning`: `day`; `animal` once for each row shown, with the part of the page it stands in as
 * `at:<animal>`, and `became:<animal>` ('taken', 'part-taken', 'refused', 'moulted') where one is marked. A row
 * without a mark has eaten. A part's own button adds `shelf`: it closes that part and every row marked elsewhere.
 */
export interface MorningProps {
  readonly shell: Shell;
  readonly forms: PageForms;
  /** The evening the meals were offered. */
  readonly day: DayNumber;
  /** In the order of the walk. */
  readonly rows: readonly MorningRow[];
  /** Other evenings before today that wait to be told of. */
  readonly remaining: number;
  /** Hours within which prey not taken comes out. */
  readonly leftoversOutHours: number;
}

export const MorningPage = (props: MorningProps) => {
  const { shell, day, rows, remaining } = props;
  return (
    <Layout shell={shell} title="Morning" here="tonight">
      <div class="round">
        <header class="round-head">
          <p class="eyebrow">After {longDay(day)}</p>
          <h1>
            {rows.length === 0
              ? 'Every meal is accounted for'
              : `What became of ${counted(rows.length, 'meal')}?`}
          </h1>
          {remaining === 0 ? null : (
            <p>{counted(remaining, 'later evening waits', 'later evenings wait')} after this one.</p>
          )}
        </header>
        {rows.length === 0 ? (
          <p class="lede">
            Next: <a href={paths.tonight}>tonight's round</a>.
          </p>
        ) : (
          <MorningForm {...props} />
        )}
      </div>
    </Layout>
  );
};

interface Part {
  /** Names the part in the form. */
  readonly key: string;
  readonly title: string;
  readonly caution?: string;
  readonly first: boolean;
  readonly rows: readonly MorningRow[];
}

/** Who may moult, then who is likely to have left food, then the rest shelf by shelf; nobody twice. */
function partsOf(rows: readonly MorningRow[]): readonly Part[] {
  const moulting = rows.filter(({ nearMoult }) => nearMoult);
  const leaving = rows.filter(({ nearMoult, likelyLeft }) => !nearMoult && likelyLeft !== null);
  const others = rows.filter(({ nearMoult, likelyLeft }) => !nearMoult && likelyLeft === null);
  const shelves = [...new Set(others.map(({ shelf }) => shelf))];
  const parts: readonly Part[] = [
    {
      key: '*may moult',
      title: 'Look here first: may moult',
      caution: `${ROUND_CAUTION} Take it out now.`,
      first: true,
      rows: moulting,
    },
    { key: '*left food', title: 'Then here: likely to have left food', first: true, rows: leaving },
    ...shelves.map((shelf) => ({
      key: shelf,
      title: shelf,
      first: false,
      rows: others.filter((row) => row.shelf === shelf),
    })),
  ];
  return parts.filter((part) => part.rows.length > 0);
}

const MorningForm = ({ forms, day, rows, leftoversOutHours }: MorningProps) => {
  const entry = entryOf(forms, 'morning');
  const parts = partsOf(rows);
  return (
    <PostForm entry={entry} action={paths.morning} class="round-form" keep="the morning's outcomes">
      <input type="hidden" name="day" value={civilDate(day)} />
      <p class="caution">Prey not taken comes out within {leftoversOutHours} hours; throw it away.</p>
      <p class="note">Mark only what did not eat.</p>
      {parts.map((part, at) => (
        <PartSection part={part} entry={entry} id={`part-${at + 1}`} alone={parts.length === 1} />
      ))}
      <div class="closing">
        <button type="submit" class="act-here big">
          The rest ate
        </button>
        <p class="note">Records the others as eaten. You can undo it.</p>
      </div>
    </PostForm>
  );
};

interface PartProps {
  readonly part: Part;
  readonly entry: FormEntry;
  readonly id: string;
  /** The only part: the button at the end is its own. */
  readonly alone: boolean;
}

const PartSection = ({ part, entry, id, alone }: PartProps) => (
  <section class={`shelf${part.first ? ' urgent' : ''}`} aria-labelledby={id}>
    <h2 id={id}>{part.title}</h2>
    {part.caution === undefined ? null : <p class="caution">{part.caution}</p>}
    <ul class="rows">
      {part.rows.map((row) => (
        <MorningRowLine row={row} entry={entry} at={part.key} showShelf={part.first} />
      ))}
    </ul>
    {alone ? null : (
      <button type="submit" class="quiet morning-part" name="shelf" value={part.key}>
        {part.first ? 'The others up here ate' : `The others on ${part.title} ate`}
      </button>
    )}
  </section>
);
