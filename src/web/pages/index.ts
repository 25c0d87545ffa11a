/** The keeper's pages: every address and form of the list of paths. */
import type { Hono } from 'hono';
import type { DoorEnv } from '../door.ts';
import { animalRoutes } from './animal.ts';
import { animalActRoutes } from './animal-acts.ts';
import { animalFormRoutes } from './animal-form.ts';
import { animalsRoutes } from './animals.ts';
import { binActRoutes } from './bin-acts.ts';
import { binFormRoutes } from './bin-form.ts';
import { deliveryRoutes } from './deliveries.ts';
import { demoRoutes } from './demo.ts';
import { goneRoutes } from './gone.ts';
import { helpRoutes } from './help.ts';
import { historyRoutes } from './history-page.ts';
import type { House } from './house.ts';
import { importRoutes } from './import.ts';
import { keyInRoutes } from './key-in.ts';
import { labelRoutes } from './labels.ts';
import { larderRoutes } from './larder.ts';
import { leavingRoutes } from './leaving.ts';
import { moreRoutes } from './more.ts';
import { morningRoutes } from './morning.ts';
import { planRoutes } from './plans.ts';
import { settingsRoutes } from './settings.ts';
import { sheetRoutes } from './sheet.ts';
import { startRoutes } from './start.ts';
import { sundayRoutes } from './sunday.ts';
import { tonightRoutes } from './tonight.ts';
import { undoRoutes } from './undo.ts';
import { walkRoutes } from './walk.ts';
import { walkShelfRoutes } from './walk-shelf.ts';

export type { House } from './house.ts';

/** Adds every page behind the door; a form's own address comes before that of any code. */
export function mountPages(app: Hono<DoorEnv>, house: House): void {
  sundayRoutes(app, house);
  startRoutes(app, house);
  tonightRoutes(app, house);
  morningRoutes(app, house);
  animalFormRoutes(app, house);
  animalActRoutes(app, house);
  animalsRoutes(app, house);
  animalRoutes(app, house);
  binFormRoutes(app, house);
  binActRoutes(app, house);
  larderRoutes(app, house);
  deliveryRoutes(app, house);
  settingsRoutes(app, house);
  moreRoutes(app, house);
  planRoutes(app, house);
  importRoutes(app, house);
  sheetRoutes(app, house);
  keyInRoutes(app, house);
  walkRoutes(app, house);
  walkShelfRoutes(app, house);
  demoRoutes(app, house);
  helpRoutes(app, house);
  undoRoutes(app, house);
  historyRoutes(app, house);
  labelRoutes(app, house);
  goneRoutes(app, house);
  leavingRoutes(app, house);
}
