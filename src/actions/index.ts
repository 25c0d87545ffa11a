/** The actions' front door: one verb of the keeper each, and the reading of a snapshot. */
export { addAnimal } from './add-animal.ts';
export { addBin } from './add-bin.ts';
export { addKind } from './add-kind.ts';
export { addRoom } from './add-room.ts';
export { arrangeShelf } from './arrange-shelf.ts';
export { arrangeShelves } from './arrange-shelves.ts';
export { askBin } from './ask-bin.ts';
export { askColony, askHarvests, keptColony } from './ask-colony.ts';
export { askPlan, keptPlan, lastPlan, planName } from './ask-plan.ts';
export { askCover, askSunday, type Cover } from './ask-sunday.ts';
export { askWeeks } from './ask-weeks.ts';
export { bringBack } from './bring-back.ts';
export { cameBack } from './came-back.ts';
export { cancelChange } from './cancel-change.ts';
export { cancelDelivery } from './cancel-delivery.ts';
export { cleanOut } from './clean-out.ts';
export { nowIn } from './clock.ts';
export { closeBin } from './close-bin.ts';
export { coldStore } from './cold-store.ts';
export type { Context, Now } from './context.ts';
export { countBin } from './count-bin.ts';
export { cull } from './cull.ts';
export { deliveryCame } from './delivery-came.ts';
export { dieOff } from './die-off.ts';
export { discard } from './discard.ts';
export { editAnimal } from './edit-animal.ts';
export { editAnimals } from './edit-animals.ts';
export { editBin } from './edit-bin.ts';
export { editChange } from './edit-change.ts';
export { editKind } from './edit-kind.ts';
export { editNumbers } from './edit-numbers.ts';
export { editRoom } from './edit-room.ts';
export { editRule } from './edit-rule.ts';
export { editSettings } from './edit-settings.ts';
export { emptyDemo } from './empty-demo.ts';
export { endSac } from './end-sac.ts';
export { expectDelivery } from './expect-delivery.ts';
export { factsNow } from './facts-now.ts';
export { firstRoom } from './first-room.ts';
export { foundDead } from './found-dead.ts';
export { harvest } from './harvest.ts';
export { hatchSac } from './hatch-sac.ts';
export { importAnimals } from './import-animals.ts';
export type { Imported, ListGiven } from './import-list.ts';
export { importRows } from './import-rows.ts';
export { importStock } from './import-stock.ts';
export { lastLook } from './last-look.ts';
export { lend } from './lend.ts';
export { type LifeRecord, loadLife } from './load-life.ts';
export { loadSnapshot } from './load-snapshot.ts';
export { lookBin } from './look-bin.ts';
export { mergeBins } from './merge-bins.ts';
export { move } from './move.ts';
export { noteSac } from './note-sac.ts';
export type { Done } from './perform.ts';
export { placeBin } from './place-bin.ts';
export { planChange } from './plan-change.ts';
export { pullSac } from './pull-sac.ts';
export { quarantine } from './quarantine.ts';
export {
  type Answering,
  type Answers,
  answerHere,
  answerTo,
  type Question,
  type Subject,
  type UnderWay,
} from './questions.ts';
export { readTemperatures } from './read-temperatures.ts';
export { recordDied } from './record-died.ts';
export { recordEvening } from './record-evening.ts';
export { recordMatured } from './record-matured.ts';
export { recordMeasure } from './record-measure.ts';
export { recordMorning } from './record-morning.ts';
export { recordMoult } from './record-moult.ts';
export { recordPremoult } from './record-premoult.ts';
export { removeKind } from './remove-kind.ts';
export { removeRoom } from './remove-room.ts';
export { renameKind } from './rename-kind.ts';
export { resetNumbers } from './reset-numbers.ts';
export { resetRule } from './reset-rule.ts';
export { retire } from './retire.ts';
export { seeAdults } from './see-adults.ts';
export { seeCup } from './see-cup.ts';
export { seeSize } from './see-size.ts';
export { settleSac } from './settle-sac.ts';
export { sexAdults } from './sex-adults.ts';
export { splitBin } from './split-bin.ts';
export { splitGroup } from './split-group.ts';
export { startCup } from './start-cup.ts';
export { eveningOfAct, stepWords } from './step-words.ts';
export { takeAway } from './take-away.ts';
export { takeIn } from './take-in.ts';
export { type Tried, tryKind, tryRule } from './try-book.ts';
export { undo } from './undo.ts';
export { undoMany } from './undo-many.ts';
export { weighBin } from './weigh-bin.ts';
