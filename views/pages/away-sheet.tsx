/** The sitter's sheet: for somebody who does not know the animals, evening by evening and shelf by shelf, on paper. */

import type { CautionCode } from '../../src/husbandry/animals/index.ts';
import type { DayNumber } from '../../src/husbandry/calendar.ts';
import { dayRange, type LengthUnit } from '../format.ts';
import { Layout, type Shell } from '../layout.tsx';
import { type Names, nameOf } from '../names.ts';
import { SheetEvening, type SitterEvening } from './away-sheet-evening.tsx';

export interface AwaySheetProps {
  readonly shell: Shell;
  readonly names: Names;
  readonly unit: LengthUnit;
  readonly from: DayNumber;
  readonly to: DayNumber;
  /** Back to the page with the same days. */
  readonly back: string;
  readonly evenings: readonly SitterEvening[];
  readonly leaveAlone: readonly {
    readonly animal: string;
    readonly place: string;
    readonly reason: string;
  }[];
  /** The bins are not known that far ahead; the prey is then written in by hand. */
  readonly byHand: boolean;
  /** Hours within which prey not taken comes out. */
  readonly leftoversOutHours: number;
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

const FirstThings = ({ cautions, leftoversOutHours }: AwaySheetProps) => (
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
        Prey that is not eaten comes out within {leftoversOutHours} hours: look again the next day with the
        tweezers. Live prey can hurt an animal that moults.
      </li>
      <li>“Kill first” means: crush its head with the tweezers before you offer it.</li>
      <li>
        Fill a water dish that is dry, with plain water, from above and without reaching past the animal.
      </li>
      <li>Shut every lid and check the catch before you open the next box.</li>
    </ul>
  </section>
);

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
