/** Every page drawn from the fixtures, by name. */
import type { Child } from 'hono/jsx';
import type { Shell } from '../../views/layout.tsx';
import { AnimalPage } from '../../views/pages/animal.tsx';
import { AnimalFormPage } from '../../views/pages/animal-form.tsx';
import { AnimalsPage } from '../../views/pages/animals.tsx';
import { AnimalsChangePage } from '../../views/pages/animals-change.tsx';
import { AnimalsCheckPage } from '../../views/pages/animals-check.tsx';
import { AnimalsRefusedPage } from '../../views/pages/animals-refused.tsx';
import { AwayPage } from '../../views/pages/away.tsx';
import { AwaySheetPage } from '../../views/pages/away-sheet.tsx';
import { BinPage } from '../../views/pages/bin.tsx';
import { BinFormPage } from '../../views/pages/bin-form.tsx';
import { BlankSheetPage } from '../../views/pages/blank-sheet.tsx';
import { BookPage } from '../../views/pages/book.tsx';
import { BulkPage } from '../../views/pages/bulk.tsx';
import { CameBackPage } from '../../views/pages/came-back.tsx';
import { ColonyStartPage } from '../../views/pages/colony-start.tsx';
import { ErrorPage } from '../../views/pages/error.tsx';
import { EveningSheetPage } from '../../views/pages/evening-sheet.tsx';
import { GonePage } from '../../views/pages/gone.tsx';
import { HelpPage } from '../../views/pages/help.tsx';
import { HistoryPage } from '../../views/pages/history.tsx';
import { ImportPage } from '../../views/pages/import.tsx';
import { KeyInPage } from '../../views/pages/key-in.tsx';
import { KindPage } from '../../views/pages/kind.tsx';
import { NewKindPage } from '../../views/pages/kind-new.tsx';
import { LabelsPage } from '../../views/pages/labels.tsx';
import { LarderPage } from '../../views/pages/larder.tsx';
import { LeftPage } from '../../views/pages/left.tsx';
import { LoginPage } from '../../views/pages/login.tsx';
import { MethodPage } from '../../views/pages/method.tsx';
import { MorePage } from '../../views/pages/more.tsx';
import { MorningPage } from '../../views/pages/morning.tsx';
import { OfferFormPage } from '../../views/pages/offer-form.tsx';
import { NewOrderPage } from '../../views/pages/order-new.tsx';
import { OrdersPage } from '../../views/pages/orders.tsx';
import { PlanPage } from '../../views/pages/plan.tsx';
import { PreyPage } from '../../views/pages/prey.tsx';
import { SacsPage } from '../../views/pages/sacs.tsx';
import { SettingsPage } from '../../views/pages/settings.tsx';
import { SplitPage } from '../../views/pages/split.tsx';
import { StartPage } from '../../views/pages/start.tsx';
import { SundayPage } from '../../views/pages/sunday.tsx';
import { SupplierPage } from '../../views/pages/supplier.tsx';
import { SupplierFormPage } from '../../views/pages/supplier-form.tsx';
import { SuppliersPage } from '../../views/pages/suppliers.tsx';
import { TonightPage } from '../../views/pages/tonight.tsx';
import { WalkPage } from '../../views/pages/walk.tsx';
import { WalkShelfPage } from '../../views/pages/walk-shelf.tsx';
import { WhatIfPage } from '../../views/pages/what-if.tsx';
import type { ThemeChoice } from '../../views/partials/theme.tsx';
import { binProps, binSoonProps, colonyProps, crashedProps, larderProps } from './view-bins.ts';
import {
  bookProps,
  kindProps,
  kindRuleProps,
  kindWholeProps,
  methodProps,
  newKindProps,
  preyChangeProps,
  preyProps,
} from './view-book.ts';
import { bulkAskingProps, bulkNoneProps, bulkProps } from './view-bulk.ts';
import { colonyAskingProps, colonyStartProps } from './view-colony.ts';
import { answer, names, shell } from './view-fixtures.ts';
import { goneProps, historyProps, labelsProps, leftProps } from './view-history.ts';
import { offerFormProps, supplierFormProps, supplierProps, suppliersProps } from './view-market.ts';
import { newOrderProps, nothingOrderedProps, ordersProps } from './view-orders.ts';
import {
  planFirstProps,
  plannedWeek,
  planProps,
  planWorkingProps,
  whatIfFirstProps,
  whatIfProps,
} from './view-plan.ts';
import {
  animalFormProps,
  animalProps,
  animalsChangeProps,
  animalsCheckProps,
  animalsFound,
  awayProps,
  awaySheetProps,
  binFormProps,
  blankSheetProps,
  cameBackProps,
  earlierRoundProps,
  eveningSheetProps,
  importProps,
  keyInProps,
  morningProps,
  sacsProps,
  settingsProps,
  splitProps,
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
  const own: Shell = { ...themed, demo: false, undo: null };
  const calm: Shell = { ...themed, demo: false, undo: { ...shell.undo!, calm: true } };
  return {
    sunday: markup(<SundayPage {...sundayProps} shell={own} />),
    'sunday-planned': markup(<SundayPage {...sundayProps} plan={plannedWeek} shell={own} />),
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
    'bin-soon': markup(<BinPage {...binSoonProps} shell={own} />),
    'bin-busy': markup(<BinPage {...colonyProps} outlook={null} whole={false} shell={own} />),
    'bin-colony': markup(<BinPage {...colonyProps} shell={own} />),
    'bin-crashed': markup(<BinPage {...crashedProps} shell={own} />),
    'bin-form': markup(<BinFormPage {...binFormProps} shell={own} />),
    'colony-start': markup(<ColonyStartPage {...colonyStartProps} shell={own} />),
    'colony-asking': markup(<ColonyStartPage {...colonyAskingProps} shell={own} />),
    plan: markup(<PlanPage {...planProps} shell={own} />),
    'plan-working': markup(<PlanPage {...planWorkingProps} shell={own} />),
    'plan-first': markup(<PlanPage {...planFirstProps} shell={own} />),
    bulk: markup(<BulkPage {...bulkProps} shell={own} />),
    'bulk-asking': markup(<BulkPage {...bulkAskingProps} shell={own} />),
    'bulk-none': markup(<BulkPage {...bulkNoneProps} shell={own} />),
    'what-if': markup(<WhatIfPage {...whatIfProps} shell={own} />),
    'what-if-first': markup(<WhatIfPage {...whatIfFirstProps} shell={own} />),
    book: markup(<BookPage {...bookProps} query={query} shell={own} />),
    'book-nothing': markup(<BookPage {...bookProps} query="wombat" groups={[]} prey={[]} shell={own} />),
    prey: markup(<PreyPage {...preyProps} shell={own} />),
    'prey-change': markup(<PreyPage {...preyChangeProps} shell={own} />),
    method: markup(<MethodPage {...methodProps} shell={own} />),
    'method-change': markup(<MethodPage {...methodProps} form={preyChangeProps.form} shell={own} />),
    kind: markup(<KindPage {...kindProps} shell={own} />),
    'kind-rule': markup(<KindPage {...kindRuleProps} shell={own} />),
    'kind-whole': markup(<KindPage {...kindWholeProps} shell={own} />),
    'kind-new': markup(<NewKindPage {...newKindProps} shell={own} />),
    away: markup(<AwayPage {...awayProps} shell={own} />),
    'away-asking': markup(<AwayPage {...awayProps} answer={null} shell={own} />),
    'away-sheet': markup(<AwaySheetPage {...awaySheetProps} shell={own} />),
    sacs: markup(<SacsPage {...sacsProps} shell={own} />),
    'sacs-none': markup(<SacsPage {...sacsProps} open={[]} past={[]} shell={own} />),
    suppliers: markup(<SuppliersPage {...suppliersProps} shell={own} />),
    'suppliers-none': markup(<SuppliersPage {...suppliersProps} suppliers={[]} shell={own} />),
    supplier: markup(<SupplierPage {...supplierProps} shell={own} />),
    'supplier-form': markup(<SupplierFormPage {...supplierFormProps} shell={own} />),
    'offer-form': markup(<OfferFormPage {...offerFormProps} shell={own} />),
    'offer-new': markup(<OfferFormPage {...offerFormProps} offer={null} size="" shell={own} />),
    orders: markup(<OrdersPage {...ordersProps} shell={own} />),
    'orders-none': markup(<OrdersPage {...nothingOrderedProps} shell={own} />),
    'order-new': markup(<NewOrderPage {...newOrderProps} shell={own} />),
    'order-whom': markup(<NewOrderPage {...newOrderProps} chosen={null} shell={own} />),
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
