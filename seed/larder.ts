/** The demo room's larder: bins, colonies and cups, and what came into them and was seen of them, by day before today. */
import type { BinRole, CupLook, Level, Space } from '../src/husbandry/larder/index.ts';
import type { RoomName } from './places.ts';

export interface DemoBin {
  readonly name: string;
  readonly species: string;
  readonly role: BinRole;
  readonly room: RoomName;
  readonly capacity?: number;
  readonly keepAdults?: boolean;
  readonly space?: Space;
  /** Where its stock came from. */
  readonly origin?: string;
}

export const BINS = [
  { name: 'Pinhead tub', species: 'acheta-domesticus', role: 'holding', room: 'Back room', capacity: 600 },
  {
    name: 'Small cricket box',
    species: 'acheta-domesticus',
    role: 'holding',
    room: 'Back room',
    capacity: 900,
  },
  {
    name: 'Medium cricket box',
    species: 'acheta-domesticus',
    role: 'holding',
    room: 'Back room',
    capacity: 400,
  },
  { name: 'Banded box', species: 'gryllodes-sigillatus', role: 'holding', room: 'Warm room', capacity: 250 },
  {
    name: 'Black cricket box',
    species: 'gryllus-bimaculatus',
    role: 'holding',
    room: 'Warm room',
    capacity: 150,
  },
  { name: 'Dubia tub, small', species: 'blaptica-dubia', role: 'holding', room: 'Warm room', capacity: 300 },
  { name: 'Dubia tub, large', species: 'blaptica-dubia', role: 'holding', room: 'Warm room', capacity: 200 },
  { name: 'Mealworm tray', species: 'tenebrio-molitor', role: 'holding', room: 'Back room', capacity: 900 },
  { name: 'Waxworm pot', species: 'galleria-mellonella', role: 'holding', room: 'Back room', capacity: 100 },
  {
    name: 'Dubia colony',
    species: 'blaptica-dubia',
    role: 'colony',
    room: 'Warm room',
    capacity: 1000,
    keepAdults: true,
    space: { by: 'area', units: 60 },
    origin: 'a keeper nearby',
  },
  {
    name: 'Runner colony',
    species: 'periplaneta-lateralis',
    role: 'colony',
    room: 'Warm room',
    capacity: 1500,
    keepAdults: true,
    origin: 'a keeper nearby',
  },
] as const satisfies readonly DemoBin[];

export type BinName = (typeof BINS)[number]['name'];

/** Fly cups, by the day they were started. */
export const CUPS = [
  { name: 'Small fly cup 1', species: 'drosophila-melanogaster', daysAgo: 28 },
  { name: 'Small fly cup 2', species: 'drosophila-melanogaster', daysAgo: 8 },
  { name: 'Large fly cup 1', species: 'drosophila-hydei', daysAgo: 7 },
] as const;

export type CupName = (typeof CUPS)[number]['name'];

export type Seen = { readonly daysAgo: number } & (
  | {
      readonly what: 'came' | 'counted';
      readonly bin: BinName;
      readonly lot: readonly [heads: number, fromMm: number, toMm: number];
      readonly dead?: number;
    }
  | {
      readonly what: 'moved';
      readonly bin: BinName;
      readonly to: BinName;
      readonly lot: readonly [heads: number, fromMm: number, toMm: number];
    }
  | { readonly what: 'looked'; readonly bin: BinName; readonly level: Level }
  | { readonly what: 'weighed'; readonly bin: BinName; readonly massMg: number }
  | { readonly what: 'discarded' | 'dead'; readonly bin: BinName; readonly heads: number }
  | {
      readonly what: 'frozen';
      readonly bin: BinName;
      readonly lot: readonly [heads: number, fromMm: number, toMm: number];
    }
  | { readonly what: 'sexed'; readonly bin: BinName; readonly females: number; readonly males: number }
  | { readonly what: 'size seen'; readonly bin: BinName; readonly fromMm: number; readonly toMm: number }
  | { readonly what: 'apart'; readonly bin: BinName; readonly days: number }
  | { readonly what: 'cup looked'; readonly bin: CupName; readonly look: CupLook }
);

/** Weekly parcels, what was moved on as it grew, and what was counted, weighed or seen in passing. */
export const SEEN: readonly Seen[] = [
  { daysAgo: 28, what: 'counted', bin: 'Dubia colony', lot: [700, 4, 42] },
  { daysAgo: 28, what: 'counted', bin: 'Runner colony', lot: [900, 3, 26] },
  { daysAgo: 28, what: 'came', bin: 'Pinhead tub', lot: [400, 2, 3], dead: 12 },
  { daysAgo: 28, what: 'came', bin: 'Small cricket box', lot: [350, 4.5, 7.5], dead: 6 },
  { daysAgo: 28, what: 'came', bin: 'Medium cricket box', lot: [150, 10.5, 15], dead: 4 },
  { daysAgo: 28, what: 'came', bin: 'Banded box', lot: [150, 9, 15], dead: 2 },
  { daysAgo: 28, what: 'came', bin: 'Black cricket box', lot: [80, 15, 20], dead: 1 },
  { daysAgo: 28, what: 'came', bin: 'Dubia tub, small', lot: [200, 7, 12], dead: 2 },
  { daysAgo: 28, what: 'came', bin: 'Dubia tub, large', lot: [145, 19, 30], dead: 1 },
  { daysAgo: 28, what: 'came', bin: 'Mealworm tray', lot: [250, 17, 22], dead: 3 },
  { daysAgo: 21, what: 'moved', bin: 'Pinhead tub', to: 'Small cricket box', lot: [60, 4, 6] },
  { daysAgo: 21, what: 'came', bin: 'Pinhead tub', lot: [400, 2, 3], dead: 9 },
  { daysAgo: 21, what: 'came', bin: 'Small cricket box', lot: [250, 4.5, 7.5], dead: 3 },
  { daysAgo: 20, what: 'cup looked', bin: 'Small fly cup 1', look: 'producing' },
  { daysAgo: 18, what: 'looked', bin: 'Medium cricket box', level: 'a quarter' },
  { daysAgo: 14, what: 'moved', bin: 'Pinhead tub', to: 'Small cricket box', lot: [50, 4, 6] },
  { daysAgo: 14, what: 'came', bin: 'Pinhead tub', lot: [400, 2, 3], dead: 15 },
  { daysAgo: 14, what: 'came', bin: 'Small cricket box', lot: [250, 4.5, 7.5], dead: 5 },
  { daysAgo: 14, what: 'came', bin: 'Medium cricket box', lot: [200, 10.5, 15], dead: 2 },
  { daysAgo: 14, what: 'came', bin: 'Dubia tub, small', lot: [150, 7, 12] },
  { daysAgo: 14, what: 'came', bin: 'Mealworm tray', lot: [200, 16, 21] },
  { daysAgo: 13, what: 'dead', bin: 'Banded box', heads: 14 },
  { daysAgo: 12, what: 'discarded', bin: 'Medium cricket box', heads: 14 },
  { daysAgo: 11, what: 'looked', bin: 'Runner colony', level: 'half' },
  { daysAgo: 9, what: 'weighed', bin: 'Dubia tub, small', massMg: 10_000 },
  { daysAgo: 8, what: 'sexed', bin: 'Dubia colony', females: 96, males: 61 },
  { daysAgo: 8, what: 'frozen', bin: 'Dubia colony', lot: [20, 40, 42] },
  { daysAgo: 8, what: 'looked', bin: 'Dubia colony', level: 'half' },
  { daysAgo: 7, what: 'counted', bin: 'Pinhead tub', lot: [24, 3.5, 5] },
  { daysAgo: 7, what: 'moved', bin: 'Pinhead tub', to: 'Small cricket box', lot: [24, 3.5, 5] },
  { daysAgo: 7, what: 'came', bin: 'Pinhead tub', lot: [250, 2, 3], dead: 38 },
  { daysAgo: 7, what: 'came', bin: 'Small cricket box', lot: [300, 4.5, 7.5], dead: 4 },
  { daysAgo: 7, what: 'came', bin: 'Banded box', lot: [120, 9, 15], dead: 1 },
  { daysAgo: 7, what: 'came', bin: 'Black cricket box', lot: [60, 15, 20] },
  { daysAgo: 7, what: 'came', bin: 'Waxworm pot', lot: [50, 15, 20] },
  { daysAgo: 6, what: 'apart', bin: 'Banded box', days: 14 },
  { daysAgo: 6, what: 'dead', bin: 'Banded box', heads: 8 },
  { daysAgo: 5, what: 'counted', bin: 'Dubia tub, large', lot: [66, 22, 38] },
  { daysAgo: 4, what: 'looked', bin: 'Mealworm tray', level: 'half' },
  { daysAgo: 3, what: 'size seen', bin: 'Medium cricket box', fromMm: 13, toMm: 17 },
  { daysAgo: 3, what: 'cup looked', bin: 'Small fly cup 1', look: 'finished' },
  { daysAgo: 1, what: 'cup looked', bin: 'Small fly cup 2', look: 'larvae' },
  { daysAgo: 2, what: 'cup looked', bin: 'Large fly cup 1', look: 'larvae' },
  { daysAgo: 2, what: 'counted', bin: 'Small cricket box', lot: [690, 4, 9] },
  { daysAgo: 1, what: 'counted', bin: 'Pinhead tub', lot: [120, 2.2, 3.6] },
];
