/** Every page drawn from the fixtures, by name. */
import type { Child } from 'hono/jsx';
import type { Shell } from '../../views/layout.tsx';
import { AnimalPage } from '../../views/pages/animal.tsx';
import { AnimalFormPage } from '../../views/pages/animal-form.tsx';
import { AnimalsPage } from '../../views/pages/animals.tsx';
import { AnimalsChangePage } from '../../views/pages/animals-change.tsx';
import { AnimalsCheckPage } from '../../views/pages/animals-check.tsx';
import { AnimalsRefusedPage } from '../../views/pages/animals-refused.tsx';
import { BinPage } from '../../views/pages/bin.tsx';
import { BinFormPage } from '../../views/pages/bin-form.tsx';
import { CameBackPage } from '../../views/pages/came-back.tsx';
import { ErrorPage } from '../../views/pages/error.tsx';
import { ImportPage } from '../../views/pages/import.tsx';
import { LarderPage } from '../../views/pages/larder.tsx';
import { LoginPage } from '../../views/pages/login.tsx';
import { MorePage } from '../../views/pages/more.tsx';
import { MorningPage } from '../../views/pages/morning.tsx';
import { SettingsPage } from '../../views/pages/settings.tsx';
import { SplitPage } from '../../views/pages/split.tsx';
import { StartPage } from '../../views/pages/start.tsx';
import { SundayPage } from '../../views/pages/sunday.tsx';
import { TonightPage } from '../../views/pages/tonight.tsx';
import type { ThemeChoice } from '../../views/partials/theme.tsx';
import { answer, names, shell } from './view-fixtures.ts';
import {
  animalFormProps,
  animalProps,
  animalsChangeProps,
  animalsCheckProps,
  animalsFound,
  binFormProps,
  binProps,
  cameBackProps,
  earlierRoundProps,
  importProps,
  larderProps,
  morningProps,
  settingsProps,
  splitProps,
  startProps,
  sundayProps,
  tonightProps,
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
  const own: Shell = { ...themed, demo: false, undo: null };
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
    animals: markup(<AnimalsPage {...animalsFound(query)} shell={own} />),
    'animals-change': markup(<AnimalsChangePage {...animalsChangeProps} shell={own} />),
    'animals-check': markup(<AnimalsCheckPage {...animalsCheckProps} shell={own} />),
    'animals-refused': markup(
      <AnimalsRefusedPage shell={own} sentence="Nobody is ticked." back="/animals" />,
    ),
    'came-back': markup(<CameBackPage {...cameBackProps} shell={own} />),
    split: markup(<SplitPage {...splitProps} shell={own} />),
    animal: markup(<AnimalPage {...animalProps} shell={own} />),
    'animal-form': markup(<AnimalFormPage {...animalFormProps} shell={own} />),
    larder: markup(<LarderPage {...larderProps} shell={own} />),
    bin: markup(<BinPage {...binProps} shell={own} />),
    'bin-form': markup(<BinFormPage {...binFormProps} shell={own} />),
    settings: markup(<SettingsPage {...settingsProps} shell={own} />),
    import: markup(<ImportPage {...importProps} draft={null} shell={own} />),
    'import-check': markup(<ImportPage {...importProps} shell={own} />),
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
