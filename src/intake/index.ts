/** Front door of intake: keepers' own CSV files, read without writing anything. */

export { gaugeOfStage } from './animals/assumed-size.ts';
export { type AnimalOptions, readAnimals } from './animals/read-animals.ts';
export { readCount } from './cells/count.ts';
export { DATE_ORDERS, type DateOrder } from './cells/date-order.ts';
export { LENGTH_UNITS, type LengthRead, type LengthUnit, readLength, readUnit } from './cells/length.ts';
export { readMass } from './cells/mass.ts';
export { readSpace } from './cells/space.ts';
export { OUTDOORS, readTemperature, type TemperatureUnit } from './cells/temperature.ts';
export type { ColumnMatch, Mapping } from './columns/mapping.ts';
export { ANIMAL_COLUMNS, type AnimalColumn, STOCK_COLUMNS, type StockColumn } from './columns/words.ts';
export type { AnimalEntry, ExistingAnimal, ExistingStock, StockEntry } from './entries.ts';
export { type Encoding, sizeProblem } from './file/bytes.ts';
export type { Separator } from './file/records.ts';
export { isGeneral, matchKind } from './names/kinds.ts';
export type { MatchHow, NameMatch } from './names/name-book.ts';
export { matchPrey, preyFinder } from './names/prey.ts';
export type { IntakeOptions } from './options.ts';
export {
  type Ask,
  type Change,
  type Choice,
  type Note,
  type Reading,
  type RowReading,
  tallyOf,
  type Verdict,
} from './reading.ts';
export { readStock, type StockOptions } from './stock/read-stock.ts';
export { measuredDays, withNewer } from './temperatures/days.ts';
export { readTemperatures } from './temperatures/read-temperatures.ts';
export { ANIMALS_TEMPLATE, STOCK_TEMPLATE } from './template.ts';
