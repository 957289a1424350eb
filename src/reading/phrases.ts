// The ordered list of phrases: the one place a phrase is registered. An earlier phrase takes its words first.

import type { Phrase } from './phrase.ts';
import { afterwards } from './phrases/afterwards.ts';
import { allToldNow } from './phrases/all-told-now.ts';
import { anotherLot } from './phrases/another-lot.ts';
import { arrivedShort } from './phrases/arrived-short.ts';
import { behindBuying } from './phrases/behind-buying.ts';
import { boundedWork } from './phrases/bounded-work.ts';
import { tablesOf } from './phrases/by-the-table.ts';
import { changeTold } from './phrases/change-told.ts';
import { correction } from './phrases/correction.ts';
import { couldOnly } from './phrases/could-only.ts';
import { countToday } from './phrases/count-today.ts';
import { crew } from './phrases/crew.ts';
import { eventDate } from './phrases/event-date.ts';
import { eventTitle } from './phrases/event-title.ts';
import { finishedAlone } from './phrases/finished-alone.ts';
import { freeOfCharge } from './phrases/free-of-charge.ts';
import { everydayTalk, heldBack } from './phrases/held-back.ts';
import { heldGoods } from './phrases/held-goods.ts';
import { honouredWearers } from './phrases/honoured-wearers.ts';
import { hourAlone } from './phrases/hour-alone.ts';
import { itemisedOrder } from './phrases/itemised-order.ts';
import { keeping } from './phrases/keeping.ts';
import { kindShares } from './phrases/kind-shares.ts';
import { madeBehind } from './phrases/made-behind.ts';
import { madeByDays } from './phrases/made-by-days.ts';
import { materialLeft } from './phrases/material-left.ts';
import { materialSaid } from './phrases/material-said.ts';
import { moreBesideWork } from './phrases/more-beside-work.ts';
import { moreInAMaterial } from './phrases/more-in-a-material.ts';
import { moreThenHome } from './phrases/more-then-home.ts';
import { noneFinished } from './phrases/none-finished.ts';
import { notKept } from './phrases/not-kept.ts';
import { numberExplained } from './phrases/number-explained.ts';
import { oneAtHand } from './phrases/one-at-hand.ts';
import { onlyMade } from './phrases/only-made.ts';
import { order } from './phrases/order.ts';
import { otherWork } from './phrases/other-work.ts';
import { ownRule } from './phrases/own-rule.ts';
import { packTold } from './phrases/pack-told.ts';
import { paidForFewer } from './phrases/paid-for-fewer.ts';
import { perhapsWanted } from './phrases/perhaps-wanted.ts';
import { piecesThere } from './phrases/pieces-there.ts';
import { piecesUnnamed } from './phrases/pieces-unnamed.ts';
import { priceLacking } from './phrases/price-lacking.ts';
import { priceList } from './phrases/price-list.ts';
import { priceVersions } from './phrases/price-versions.ts';
import { pricedRows } from './phrases/priced-rows.ts';
import { pricedWearers } from './phrases/priced-wearers.ts';
import { pricesAnswered } from './phrases/prices-answered.ts';
import { progress } from './phrases/progress.ts';
import { question } from './phrases/question.ts';
import { recipe } from './phrases/recipe.ts';
import { recipeChanged } from './phrases/recipe-change.ts';
import { recountedWork } from './phrases/recounted.ts';
import { sameAgain } from './phrases/same-again.ts';
import { someInAMaterial } from './phrases/some-in-a-material.ts';
import { someOfAKind, someOfAMaterial } from './phrases/some-of-a-kind.ts';
import { sortsTold } from './phrases/sorts-told.ts';
import { spareTold } from './phrases/spare-told.ts';
import { taxBasis } from './phrases/tax-basis.ts';
import { taxLeftOpen } from './phrases/tax-left-open.ts';
import { ticked } from './phrases/ticked.ts';
import { totalTold } from './phrases/total-told.ts';
import { undo } from './phrases/undo.ts';
import { upToNow } from './phrases/up-to-now.ts';
import { wearerCare } from './phrases/wearer-care.ts';
import { wearersAside } from './phrases/wearers-aside.ts';
import { wearersByName } from './phrases/wearers-by-name.ts';
import { wearersList } from './phrases/wearers-list.ts';
import { workDoubted } from './phrases/work-doubted.ts';
import { workPutRight } from './phrases/work-put-right.ts';
import { toldOfWork } from './phrases/work-told.ts';

export const phrases: readonly Phrase[] = [
  // What was asked for comes first.
  behindBuying,
  pricesAnswered,
  priceLacking,
  finishedAlone,
  itemisedOrder,
  pricedRows,
  wearersByName,
  // Then whole sentences: what they are about decides what their numbers mean.
  sortsTold,
  keeping,
  undo,
  recipeChanged,
  taxLeftOpen,
  couldOnly,
  workPutRight,
  recountedWork,
  workDoubted,
  onlyMade,
  noneFinished,
  moreThenHome,
  madeByDays,
  moreInAMaterial,
  someInAMaterial,
  notKept,
  numberExplained,
  question,
  paidForFewer,
  madeBehind,
  boundedWork,
  moreBesideWork,
  upToNow,
  oneAtHand,
  allToldNow,
  countToday,
  ticked,
  spareTold,
  arrivedShort,
  everydayTalk,
  perhapsWanted,
  anotherLot,
  // Every word of it is understood, so nothing in it can be another's.
  changeTold,
  tablesOf,
  toldOfWork,
  ownRule,
  afterwards,
  heldGoods,
  packTold,
  priceList,
  recipe,
  crew,
  honouredWearers,
  hourAlone,
  // What is not meant for this order goes before what would be stored.
  heldBack,
  piecesThere,
  materialLeft,
  sameAgain,
  correction,
  wearersAside,
  pricedWearers,
  wearersList,
  someOfAMaterial,
  progress,
  someOfAKind,
  // Then the parts of an order, in any sequence. Other people's numbers go before ours.
  otherWork,
  eventTitle,
  eventDate,
  freeOfCharge,
  priceVersions,
  kindShares,
  piecesUnnamed,
  order,
  totalTold,
  taxBasis,
  materialSaid,
  wearerCare,
];
