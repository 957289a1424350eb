// What the facts of one message do to the event. They are applied together, because "2 corsages at 35, 4 crowns, all inc" belongs together.

import type { PieceKind } from '../handbook/pieces.ts';
import type { Fact, FactName, FactOf } from '../reading/fact.ts';
import { parseDay } from '../values/day.ts';
import { applyCalendar } from './apply-calendar.ts';
import { applyCare } from './apply-care.ts';
import { applyChange } from './apply-change.ts';
import {
  applyKindPrice,
  applyPieces,
  applyPriceEach,
  applyTotal,
  bindTold,
  bindWaitingPrice,
  isSumOf,
  withPriceBeside,
} from './apply-order.ts';
import { applyBroke, applyLeft, applyMade } from './apply-progress.ts';
import { applyQuoted } from './apply-quoted.ts';
import { applyRecipe } from './apply-recipe.ts';
import { applyWearers } from './apply-wearers.ts';
import type { EventState } from './event.ts';
import { onDay } from './event-day.ts';
import { inPriceEach } from './in-price-each.ts';
import { joinedLines, withoutMaterials } from './joined-lines.ts';
import { withPricedWearers } from './priced-wearers.ts';

type Apply<N extends FactName> = (state: EventState, fact: FactOf<N>) => EventState;
const nothing = (state: EventState): EventState => state;

const others: { readonly [N in Exclude<FactName, 'pieces' | 'price' | 'material'>]: Apply<N> } = {
  tax: (state, { basis, name, rate }) => ({
    ...state,
    tax: { ...state.tax, ...(basis ? { basis } : {}), ...(name ? { name } : {}), ...(rate ? { rate } : {}) },
  }),
  date: (state, { date, time, of }) => {
    const day = parseDay(date);
    if (!day || of === 'photos') return state;
    if (of === 'hand over') return { ...state, handOver: { ...state.handOver, date: day, ...(time ? { time } : {}) } };
    return { ...onDay(state, day), ...(time ? { time } : {}) };
  },
  made: applyMade,
  broke: applyBroke,
  left: applyLeft,
  change: applyChange,
  undo: nothing,
  question: nothing,
  recipe: applyRecipe,
  quoted: applyQuoted,
  pack: nothing,
  packed: nothing,
  crew: nothing,
  drying: nothing,
  wearers: applyWearers,
  title: (state, { title }) => ({ ...state, title }),
  rule: (state, fact) => ({
    ...state,
    rules: [...state.rules.filter((rule) => rule.what !== fact.what || rule.piece !== fact.piece || rule.item !== fact.item), fact],
  }),
  actual: (state, fact) => ({ ...state, actuals: [...state.actuals, fact] }),
  step: (state, fact) => (fact.step === 'cancelled' ? { ...state, cancelled: true } : { ...state, steps: [...state.steps, fact] }),
  care: applyCare,
  calendar: applyCalendar,
  unread: nothing,
};

export const applyFacts = (before: EventState, facts: readonly Fact[]): EventState => {
  const pieces = facts.filter((fact): fact is FactOf<'pieces'> => fact.fact === 'pieces');
  const prices = facts.filter((fact): fact is FactOf<'price'> => fact.fact === 'price');
  const each = prices.find((price) => price.per === 'each' && price.piece === undefined);
  const total = prices.find((price) => price.per === 'all');
  const priced = pieces.some(({ sameEach }) => sameEach) ? inPriceEach(before) : before;
  let state = bindWaitingPrice(bindTold(applyPieces(priced, withPriceBeside(pieces, each))));
  // A care noted of one of them is no list.
  if (!facts.some((fact) => fact.fact === 'wearers' && !fact.notes)) state = withPricedWearers(state, pieces);
  if (each && pieces.length === 0) state = applyPriceEach(state, each);
  for (const named of prices) {
    if (named.per === 'each' && named.piece && named.piece !== 'unspecified') state = applyKindPrice(state, named.piece, named);
  }
  // "9 bouts $12, 4 corsages $28, total $220" says what they come to; each keeps its price.
  if (total && !isSumOf(total, pieces)) state = applyTotal(state, total, new Set(pieces.map((fact): PieceKind => fact.piece)));
  for (const fact of facts) {
    if (fact.fact === 'material') state = applyMaterial(state, fact, kindsBeside(before, pieces));
    else if (fact.fact !== 'pieces' && fact.fact !== 'price') state = (others[fact.fact] as Apply<FactName>)(state, fact);
  }
  // A correction may have brought the first line: left waiting, the price would go to it with the next facts, whatever they are.
  return bindWaitingPrice(bindTold(state));
};

/** "10 crowns at 120 fresh" in an order that holds other kinds says what the crowns are made of, and nothing about the others. */
const kindsBeside = (before: EventState, pieces: readonly FactOf<'pieces'>[]): ReadonlySet<PieceKind> => {
  const said = new Set(pieces.map((fact): PieceKind => fact.piece));
  return before.lines.some(({ piece }) => piece !== 'unspecified' && !said.has(piece)) ? said : new Set();
};

const ofAll = /\b(all|everything|every one|the lot)\b/i;
const applyMaterial = (state: EventState, { material, piece, words }: FactOf<'material'>, beside: ReadonlySet<PieceKind>): EventState => {
  const kinds = piece ? new Set([piece]) : beside;
  // "all dried" after "5 of them preserved"
  if (kinds.size === 0) return { ...state, material, lines: ofAll.test(words) ? withoutMaterials(state.lines) : state.lines };
  return { ...state, lines: joinedLines(state.lines.map((line) => (kinds.has(line.piece) ? { ...line, material } : line))) };
};
