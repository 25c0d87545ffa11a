/** Kept jumping spiders and other true spiders. */
import type { Kind } from '../../husbandry/animals/index.ts';
import { memory } from '../sourced.ts';
import { type GroupTraits, kindOf } from './kind-draft.ts';
import { jumpingSpiderStages, trueSpiderStages } from './spider-rules.ts';

const spider = (group: GroupTraits['group'], cautions: GroupTraits['cautions']): GroupTraits => ({
  group,
  gauge: 'body length',
  bodyPerGauge: memory(1, '1', 'the body itself is measured'),
  bodyPerGaugeMale: null,
  massPerCubicMm: memory(0.1, 'mg per cubic mm', 'taken from tarantulas'),
  cautions,
});

const jumper = spider('jumping spider', ['live prey near a moult']);
const other = spider('true spider', ['live prey near a moult', 'escape']);
const venomous = spider('true spider', ['live prey near a moult', 'venom']);

export const spiders: readonly Kind[] = [
  kindOf(
    jumper,
    {
      code: 'jumping-spider',
      name: 'jumping spider',
      commonName: 'jumping spider',
      aliases: ['jumping spiders', 'jumper', 'phidippus'],
      habit: 'vegetation',
      adult: [10, 15],
      first: [2, 3],
      from: 'own',
    },
    jumpingSpiderStages,
  ),
  kindOf(
    jumper,
    {
      code: 'phidippus-regius',
      name: 'Phidippus regius',
      commonName: 'regal jumping spider',
      aliases: ['regal jumper'],
      habit: 'vegetation',
      adult: [12, 18],
      first: [2, 3],
      from: 'general',
      note: 'derived: females 7-22 mm, 15 on average; the middle half by us',
    },
    jumpingSpiderStages,
  ),
  kindOf(
    jumper,
    {
      code: 'phidippus-audax',
      name: 'Phidippus audax',
      commonName: 'bold jumping spider',
      aliases: ['bold jumper'],
      habit: 'vegetation',
      adult: [10, 16],
      first: [2, 3],
      from: 'general',
      note: 'derived: females 8-19 mm; the middle half by us',
    },
    jumpingSpiderStages,
  ),
  kindOf(
    other,
    {
      code: 'true-spider',
      name: 'true spider',
      commonName: 'true spider',
      aliases: ['spider', 'spiders'],
      habit: 'varied',
      adult: [18, 25],
      first: [2, 3],
      from: 'own',
    },
    trueSpiderStages('huntsman'),
  ),
  kindOf(
    other,
    {
      code: 'heteropoda-venatoria',
      name: 'Heteropoda venatoria',
      commonName: 'pantropical huntsman',
      aliases: ['huntsman', 'huntsman spider'],
      habit: 'walls',
      adult: [20, 30],
      first: [2, 3],
      from: 'general',
    },
    trueSpiderStages('huntsman'),
  ),
  kindOf(
    other,
    {
      code: 'hogna-carolinensis',
      name: 'Hogna carolinensis',
      commonName: 'Carolina wolf spider',
      aliases: ['wolf spider'],
      habit: 'terrestrial',
      adult: [22, 35],
      first: [3, 4],
      from: 'memory',
    },
    trueSpiderStages('wolf'),
  ),
  kindOf(
    venomous,
    {
      code: 'latrodectus-hesperus',
      name: 'Latrodectus hesperus',
      commonName: 'western black widow',
      aliases: ['black widow', 'widow'],
      habit: 'web',
      adult: [8, 14],
      first: [1, 1.5],
      from: 'general',
    },
    trueSpiderStages('widow'),
  ),
  kindOf(
    venomous,
    {
      code: 'loxosceles-intermedia',
      name: 'Loxosceles intermedia',
      commonName: 'Brazilian brown spider',
      aliases: ['recluse', 'recluse spider'],
      habit: 'web',
      adult: [8, 12],
      first: [1.5, 2],
      from: 'own',
      note: 'no size in the work read (Fischer and Vasconcellos-Neto 2005); our own',
    },
    trueSpiderStages('recluse'),
  ),
];
