/** Every page drawn from the fixtures, by name. */
import type { Child } from 'hono/jsx';
import type { Shell } from '../../views/layout.tsx';
import { AnimalPage } from '../../views/pages/animal.tsx';
import { AnimalFormPage } from '../../views/pages/animal-form.tsx';
import { AnimalsPage } from '../../views/pages/animals.tsx';
import { BinPage } from '../../views/pages/bin.tsx';
import { BinFormPage } from '../../views/pages/bin-form.tsx';
import { BlankSheetPage } from '../../views/pages/blank-sheet.tsx';
import { ErrorPage } from '../../views/pages/error.tsx';
import { EveningSheetPage } from '../../views/pages/evening-sheet.tsx';
import { GonePage } from '../../views/pages/gone.tsx';
import { HelpPage } from '../../views/pages/help.tsx';
import { HistoryPage } from '../../views/pages/history.tsx';
import { ImportPage } from '../../views/pages/import.tsx';
import { KeyInPage } from '../../views/pages/key-in.tsx';
import { LabelsPage } from '../../views/pages/labels.tsx';
import { LarderPage } from '../../views/pages/larder.tsx';
import { LeftPage } from '../../views/pages/left.tsx';
import { LoginPage } from '../../views/pages/login.tsx';
import { MorePage } from '../../views/pages/more.tsx';
import { MorningPage } from '../../views/pages/morning.tsx';
import { SettingsPage } from '../../views/pages/settings.tsx';
import { StartPage } from '../../views/pages/start.tsx';
import { SundayPage } from '../../views/pages/sunday.tsx';
import { TonightPage } from '../../views/pages/tonight.tsx';
import { WalkPage } from '../../views/pages/walk.tsx';
import { WalkShelfPage } from '../../views/pages/walk-shelf.tsx';
import type { ThemeChoice } from '../../views/partials/theme.tsx';
import { answer, names, shell } from './view-fixtures.ts';
import { goneProps, historyProps, labelsProps, leftProps } from './view-history.ts';
import {
  animalFormProps,
  animalProps,
  animalsProps,
  binFormProps,
  binProps,
  blankSheetProps,
  earlierRoundProps,
  eveningSheetProps,
  importProps,
  keyInProps,
  larderProps,
  morningProps,
  settingsProps,
  startProps,
  sundayProps,
  tonightProps,
  walkProps,
  walkShelfProps,
} from './view-props.ts';

/** Markup of one page. */
export const markup = (page: Child): string => String(page);

const emptyAnswer = {
  ...answer,
  verdict: 'empty' as const,
  headline: 'Nobody lives here yet',
  groups: [],
  bins: [],
  act: null,
  look: null,
  missedMeals: 0,
  spectrum: { edgesMm: [1, 60], alive: [], eaten: [0], missing: [0] },
};
const lastingAnswer = {
  ...answer,
  verdict: 'lasts' as const,
  headline: 'Everything lasts until Sunday’s parcel',
  nothingMissed: { chance: 0.985, standardError: 0.004 },
  missedMeals: 0.02,
  lateMeals: 0.03,
  act: null,
  spectrum: { ...answer.spectrum, missing: answer.spectrum.missing.map(() => 0) },
};

/** Every page in a theme; the list of animals as found for a query. */
export function pages(theme: ThemeChoice, query = ''): Record<string, string> {
  const themed: Shell = { ...shell, theme };
  const found = animalsProps.rows.filter(({ name }) => name.toLowerCase().includes(query));
  const own: Shell = { ...themed, demo: false, undo: null };
  const calm: Shell = { ...themed, demo: false, undo: { ...shell.undo!, calm: true } };
  return {
    sunday: markup(<SundayPage {...sundayProps} shell={own} />),
    'sunday-demo': markup(<SundayPage {...sundayProps} unit="in" shell={themed} />),
    'sunday-empty': markup(
      <SundayPage {...sundayProps} answer={emptyAnswer} names={names} delivery={null} shell={own} />,
    ),
    'sunday-lasts': markup(<SundayPage {...sundayProps} answer={lastingAnswer} shell={own} />),
    start: markup(<StartPage {...startProps} shell={own} />),
    'start-demo': markup(<StartPage {...startProps} shell={{ ...themed, demo: true }} />),
    more: markup(<MorePage shell={own} />),
    tonight: markup(<TonightPage {...tonightProps} shell={themed} />),
    'tonight-earlier': markup(<TonightPage {...earlierRoundProps} shell={{ ...own, smallHours: true }} />),
    morning: markup(<MorningPage {...morningProps} shell={own} />),
    'evening-sheet': markup(<EveningSheetPage {...eveningSheetProps} shell={own} />),
    'blank-sheet': markup(<BlankSheetPage {...blankSheetProps} shell={own} />),
    'key-in': markup(<KeyInPage {...keyInProps} shell={own} />),
    walk: markup(<WalkPage {...walkProps} shell={own} />),
    'walk-shelf': markup(<WalkShelfPage {...walkShelfProps} shell={own} />),
    animals: markup(<AnimalsPage {...animalsProps} query={query} rows={found} shell={own} />),
    animal: markup(<AnimalPage {...animalProps} shell={own} />),
    'animal-form': markup(<AnimalFormPage {...animalFormProps} shell={own} />),
    larder: markup(<LarderPage {...larderProps} shell={own} />),
    bin: markup(<BinPage {...binProps} shell={own} />),
    'bin-form': markup(<BinFormPage {...binFormProps} shell={own} />),
    settings: markup(<SettingsPage {...settingsProps} shell={own} />),
    history: markup(<HistoryPage {...historyProps} shell={calm} />),
    labels: markup(<LabelsPage {...labelsProps} labels={null} shell={calm} />),
    'labels-sheet': markup(<LabelsPage {...labelsProps} shell={own} />),
    gone: markup(<GonePage {...goneProps} shell={calm} />),
    left: markup(<LeftPage {...leftProps} shell={own} />),
    import: markup(<ImportPage {...importProps} draft={null} shell={own} />),
    'import-check': markup(<ImportPage {...importProps} shell={own} />),
    help: markup(<HelpPage shell={own} />),
    login: markup(<LoginPage theme={theme} forms={settingsProps.forms} next="/" />),
    error: markup(
      <ErrorPage
        theme={theme}
        sentence="There is no page here."
        advice="Check the address."
        requestId="7f3a"
      />,
    ),
  };
}
