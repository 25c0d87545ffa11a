/** Many animals at once: what shall be done with those chosen; each act is looked over on the next page. */
import type { Child } from 'hono/jsx';
import { civilDate } from '../../src/husbandry/calendar.ts';
import { Layout, type Shell } from '../layout.tsx';
import { RadioButtons } from '../partials/choices.tsx';
import { entryOf, Field, type FormEntry, type Option, type PageForms, Select } from '../partials/form.tsx';
import { type HerdAct, paths } from '../paths.ts';

/** Who is chosen, as fields that travel with every form. */
export interface ChosenFields {
  /** Codes of those ticked; none when a whole page or list is meant. */
  readonly animal: readonly string[];
  readonly of: string;
  readonly list: string;
  readonly seen: string;
}

/**
 * Forms by GET to `paths.herdAct(act)`, each with the fields of who is chosen: move (`room`, `shelf`), stage (`stage`),
 * kind (`kind`), gone (`reason`, `day`), lend (`to`, `day`, `back`), died (`day`).
 */
export interface AnimalsChangeProps {
  readonly shell: Shell;
  readonly forms: PageForms;
  /** '14 animals', '14 animals (51 heads with the groups)'. */
  readonly who: string;
  readonly names: string;
  readonly chosen: ChosenFields;
  readonly back: string;
  readonly rooms: readonly Option[];
  readonly shelves: readonly string[];
  readonly kinds: readonly Option[];
}

export const AnimalsChangePage = (props: AnimalsChangeProps) => (
  <Layout shell={props.shell} title={`Change ${props.who}`} here="animals">
    <header class="page-head">
      <p class="eyebrow">
        <a href={props.back}>Back to the list</a>
      </p>
      <h1>What happens to {props.who}?</h1>
      <p class="lede">{props.names}.</p>
      <p class="note">Choose one. You see what it changes before anything is written down.</p>
    </header>
    <section class="acts-list" aria-label="What may be done">
      <Move {...props} />
      <Stage {...props} />
      <Kind {...props} />
      <Lend {...props} />
      <Gone {...props} />
      <Died {...props} />
    </section>
  </Layout>
);

interface LookOverProps extends AnimalsChangeProps {
  readonly act: HerdAct;
  readonly title: string;
  readonly entry: FormEntry;
  readonly children?: Child;
}

/** One act as a disclosure; open when something in it was refused. */
const LookOver = ({ act, title, entry, chosen, children }: LookOverProps) => {
  const problems = Object.keys(entry.problems).length;
  return (
    <details class="act-form" open={problems > 0}>
      <summary>{title}</summary>
      <form method="get" action={paths.herdAct(act)} class="form" id={act}>
        <WhoIsChosen chosen={chosen} />
        {problems === 0 ? null : (
          <p class="problem" role="alert">
            {entry.problems[''] ?? 'Not yet: put right what is marked below.'}
          </p>
        )}
        {children}
        <button type="submit">Look it over</button>
      </form>
    </details>
  );
};

export const WhoIsChosen = ({ chosen: { animal, of, list, seen } }: { chosen: ChosenFields }) => (
  <>
    {animal.map((code) => (
      <input type="hidden" name="animal" value={code} />
    ))}
    <input type="hidden" name="of" value={of} />
    <input type="hidden" name="list" value={list} />
    <input type="hidden" name="seen" value={seen} />
  </>
);

const Move = (props: AnimalsChangeProps) => {
  const entry = entryOf(props.forms, 'move');
  const inUse = props.shelves.length > 0 ? `In use: ${props.shelves.join('; ')}.` : 'Such as Shelf A.';
  return (
    <LookOver {...props} act="move" title="Move to a room or shelf" entry={entry}>
      <Select entry={entry} name="room" label="Room" options={props.rooms} none="Where each one is" />
      <Field entry={entry} name="shelf" label="Shelf" hint={inUse} />
    </LookOver>
  );
};

const STAGES = [
  { value: 'by size', label: 'By size' },
  { value: 'young', label: 'Young' },
  { value: 'juvenile', label: 'Juvenile' },
  { value: 'subadult', label: 'Subadult' },
  { value: 'adult', label: 'Adult' },
];

const Stage = (props: AnimalsChangeProps) => {
  const entry = entryOf(props.forms, 'stage');
  return (
    <LookOver {...props} act="stage" title="Feed by another stage’s rule" entry={entry}>
      <RadioButtons entry={entry} name="stage" legend="Feed as" options={STAGES} />
    </LookOver>
  );
};

const Kind = (props: AnimalsChangeProps) => {
  const entry = entryOf(props.forms, 'kind');
  return (
    <LookOver {...props} act="kind" title="Change the kind, as when it is renamed" entry={entry}>
      <Select
        entry={entry}
        name="kind"
        label="Kind"
        options={props.kinds}
        none="Choose a kind"
        hint="Codes and whole records stay with the animals."
      />
    </LookOver>
  );
};

const Day = ({ entry, label, shell }: { entry: FormEntry; label: string; shell: Shell }) => (
  <Field entry={entry} name="day" label={label} type="date" start={civilDate(shell.today)} required />
);

const Lend = (props: AnimalsChangeProps) => {
  const entry = entryOf(props.forms, 'lend');
  return (
    <LookOver {...props} act="lend" title="Lend" entry={entry}>
      <Field entry={entry} name="to" label="To whom" required />
      <Day entry={entry} label="They leave on" shell={props.shell} />
      <Field
        entry={entry}
        name="back"
        label="Expected back on"
        type="date"
        hint="Leave empty if no day is agreed."
      />
    </LookOver>
  );
};

const REASONS = [
  { value: 'sold', label: 'Sold' },
  { value: 'given away', label: 'Given away' },
  { value: 'lost', label: 'Lost' },
];

const Gone = (props: AnimalsChangeProps) => {
  const entry = entryOf(props.forms, 'gone');
  return (
    <LookOver {...props} act="gone" title="Sold, given away or lost" entry={entry}>
      <RadioButtons entry={entry} name="reason" legend="They were" options={REASONS} />
      <Day entry={entry} label="On" shell={props.shell} />
    </LookOver>
  );
};

const Died = (props: AnimalsChangeProps) => {
  const entry = entryOf(props.forms, 'died');
  return (
    <LookOver {...props} act="died" title="Died" entry={entry}>
      <Day entry={entry} label="Found on" shell={props.shell} />
    </LookOver>
  );
};
