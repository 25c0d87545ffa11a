/** The sitter's sheet: for somebody who does not know the animals, evening by evening and shelf by shelf, on paper. */

import type { CautionCode } from '../../src/husbandry/animals/index.ts';
import type { PreyOffer } from '../../src/husbandry/appetite/index.ts';
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import { grouped } from '../../src/husbandry/grouped.ts';
import { inBrief } from '../cautions.ts';
import { counted, dayRange, type LengthUnit, lengthRange, longDay } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import { type Names, nameOf, preyName } from '../names.ts';

export interface SheetRow {
  readonly animal: string;
  readonly place: string;
  readonly offer: PreyOffer | null;
  readonly cautions: readonly CautionCode[];
}

export interface AwaySheetProps {
  readonly shell: Shell;
  readonly names: Names;
  readonly unit: LengthUnit;
  readonly from: DayNumber;
  readonly to: DayNumber;
  /** Back to the page with the same days. */
  readonly back: string;
  /** Evenings, each in the order of the walk. */
  readonly evenings: readonly { readonly day: DayNumber; readonly rows: readonly SheetRow[] }[];
  readonly leaveAlone: readonly {
    readonly animal: string;
    readonly place: string;
    readonly reason: string;
  }[];
  /** The bins are not known that far ahead; the prey is then written in by hand. */
  readonly byHand: boolean;
  /** Cautions of any kind fed. */
  readonly cautions: readonly CautionCode[];
}

export const AwaySheetPage = (props: AwaySheetProps) => (
  <Layout shell={props.shell} title="Sitter's sheet" here="more">
    <article class="sitter-sheet">
      <p class="screen-only">
        <a href={props.back}>Back to the plan</a>. Print this page (Ctrl or ⌘ and P), write in your telephone
        number, and show the way round once.
      </p>
      <header>
        <h1>Feeding while I am away, {dayRange(props.from, props.to)}</h1>
        <p class="by-hand">
          <span>Call me on</span> <i></i>
        </p>
        <p class="by-hand">
          <span>If I do not answer, call</span> <i></i>
        </p>
      </header>
      <FirstThings {...props} />
      {props.evenings.map((evening) => (
        <SheetEvening {...props} evening={evening} />
      ))}
      {props.evenings.length === 0 ? <p class="lede">Nobody needs to be fed on these days.</p> : null}
      <DoNotOpen {...props} />
    </article>
  </Layout>
);

/** What a stranger must know of the animals in this round, in plain words. */
const PLAIN: Readonly<Partial<Record<CautionCode, string>>> = {
  venom:
    'Some of these animals are venomous. Never put a hand in: use the long tweezers, and keep the lid between you and the animal.',
  'urticating hairs':
    'Some kick off fine hairs that itch and harm the eyes. Keep your face away and wash your hands after.',
  escape:
    'Some are very quick. Open a lid only as far as the tweezers need, with a cup and a card ready. If one gets out: put the cup over it, slide the card under, shut the door of the room, call me.',
};

const FirstThings = ({ cautions }: AwaySheetProps) => (
  <section aria-label="Read this first">
    <h2>Read this first</h2>
    <ul>
      {(Object.keys(PLAIN) as CautionCode[])
        .filter((code) => cautions.includes(code))
        .map((code) => (
          <li>{PLAIN[code]}</li>
        ))}
      <li>
        <strong>An animal on its back is not dead: it is moulting.</strong> Do not touch it, do not feed it,
        take out any live prey you can reach without nearing it, and cross it off.
      </li>
      <li>Give only what the sheet says, to the box with the same code. When in doubt, give nothing.</li>
      <li>
        Prey that is not eaten comes out within 24 hours: look again the next day with the tweezers. Live prey
        can hurt an animal that moults.
      </li>
      <li>“Kill first” means: crush its head with the tweezers before you offer it.</li>
      <li>
        Fill a water dish that is dry, with plain water, from above and without reaching past the animal.
      </li>
      <li>Shut every lid and check the catch before you open the next box.</li>
    </ul>
  </section>
);

type EveningProps = AwaySheetProps & { readonly evening: AwaySheetProps['evenings'][number] };

/** Rows by place, in the order given. */
const byPlace = (rows: readonly SheetRow[]): ReadonlyMap<string, readonly SheetRow[]> =>
  grouped(rows, ({ place }) => place);

const SheetEvening = (props: EveningProps) => {
  const { evening, names } = props;
  return (
    <section class="sheet-evening" aria-label={longDay(evening.day)} tabindex={0}>
      <h2>
        <span class="paper-tick" aria-hidden="true"></span>
        {longDay(evening.day)}: {counted(evening.rows.length, 'animal')}
      </h2>
      <TakeOut rows={evening.rows} names={names} />
      <table>
        <thead>
          <tr>
            <th scope="col">
              <span class="unseen">Done</span>
            </th>
            <th scope="col">Box</th>
            <th scope="col">Animal</th>
            <th scope="col">Give</th>
            <th scope="col">From</th>
            <th scope="col">Mind</th>
          </tr>
        </thead>
        {[...byPlace(evening.rows)].map(([place, rows]) => (
          <tbody>
            <tr class="sheet-place">
              <th scope="rowgroup" colspan={6}>
                {place === '' ? 'Place not written down' : place}
              </th>
            </tr>
            {rows.map((row) => (
              <SheetLine {...props} row={row} />
            ))}
          </tbody>
        ))}
      </table>
    </section>
  );
};

/** '12 house crickets from Small box' for the whole evening, to be put in a cup before the walk. */
const TakeOut = ({ rows, names }: { rows: readonly SheetRow[]; names: Names }) => {
  const sums = new Map<string, { heads: number; species: string }>();
  for (const { offer } of rows) {
    if (offer === null) continue;
    const before = sums.get(offer.bin)?.heads ?? 0;
    sums.set(offer.bin, { heads: before + offer.heads, species: offer.species });
  }
  if (sums.size === 0) return null;
  return (
    <p>
      Take out first:{' '}
      {[...sums]
        .map(
          ([bin, { heads, species }]) =>
            `${heads} ${preyName(names.species, species, heads)} from ${nameOf(names.bins, bin)}`,
        )
        .join('; ')}
      .
    </p>
  );
};

const SheetLine = ({ row, names, unit, byHand }: EveningProps & { readonly row: SheetRow }) => {
  const { offer } = row;
  const kill =
    offer === null
      ? ''
      : offer.portions > 1
        ? `kill first, cut into ${offer.portions}`
        : offer.killFirst
          ? 'kill first'
          : '';
  return (
    <tr>
      <td>
        <span class="paper-tick" aria-hidden="true"></span>
      </td>
      <td class="sheet-code">{row.animal}</td>
      <th scope="row">{nameOf(names.animals, row.animal)}</th>
      <td>
        {offer === null ? (
          <span class="write-in">{byHand ? '' : 'nothing fits: ask'}</span>
        ) : (
          <>
            <b>{offer.heads}</b> {preyName(names.species, offer.species, offer.heads)},{' '}
            <span class="whole">{lengthRange(offer.fromMm, offer.toMm, unit)}</span>
          </>
        )}
      </td>
      <td>{offer === null ? '' : nameOf(names.bins, offer.bin)}</td>
      <td>{[kill, inBrief(row.cautions)].filter((words) => words !== '').join('; ')}</td>
    </tr>
  );
};

const DoNotOpen = ({ leaveAlone, names }: AwaySheetProps) => (
  <section aria-label="Do not open">
    <h2>Do not open</h2>
    {leaveAlone.length === 0 ? null : (
      <ul>
        {leaveAlone.map(({ animal, place, reason }) => (
          <li>
            <strong class="sheet-code">{animal}</strong> {nameOf(names.animals, animal)}
            {place === '' ? '' : `, ${place}`}: {reason}
          </li>
        ))}
      </ul>
    )}
    <p>Every other box can wait until I am back. Please leave it shut, however hungry it looks.</p>
  </section>
);
