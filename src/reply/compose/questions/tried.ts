// A question of money that names another number, another price or only some of the kinds: worked out on a copy, never answered with
// what stands as if that were the answer. What cannot be worked out is said.

import { type PricedEvent, priceEvent } from '../../../pricing/price-event.ts';
import type { EventState, OrderLine } from '../../../thread/event.ts';
import { isMissing, kindInOrder } from '../../../thread/kind-in-order.ts';
import { decimal } from '../../../values/decimal.ts';
import type { Answer } from '../../answer.ts';
import type { Block, Line } from '../../reply.ts';
import { moneySpan, plainLine, strong, text } from '../../span.ts';
import { counted, plural } from '../../words/names.ts';
import { notPricedYet } from '../../words/order.ts';
import { answerLine, type Question, type Respond, storedNothing } from './respond.ts';
import { whatIfBlocks } from './what-if-price.ts';

// "What would 45 bouts come to?" in a thread of 30, "the stem budget at 18 each?" in one at 16.
const triesPrice = /\b(at|if|charge[ds]?|charging|dropp?(ed)?|sell|sold|ask|asked|quoted?|went|go|make it)\b|@/i;
// "Was the 44 a total or each?", "is it still 16?", "what did we charge for 20 last year": of what was said, nothing to try.
const ofWhatWasSaid =
  /^\W*((so|and|ok|hey|sorry|wait),? )*(is|are|was|were|did|do|does|have|has)\b|\b(did|have|has|had) (we|you|i|they|she|he)\b|\bstill\b|\b(last|previous) (year|time|month|week|bride|wedding|client|one)\b/i;

const either = new Intl.ListFormat('en-GB', { type: 'disjunction' });

const linesAsked = ({ piece }: Question, { lines }: EventState): readonly OrderLine[] =>
  piece === undefined ? lines : lines.filter((line) => line.piece === piece);

const knownAmounts = (asked: readonly OrderLine[], { event }: Answer): readonly string[] =>
  [event.price, ...asked.map((line) => line.price)].flatMap((price) =>
    price === undefined ? [] : [price.amount, price.amountMax ?? price.amount],
  );

/** One price for all of several pieces, as a price for each: what another number of them comes to goes by that. */
const pricedEach = (event: EventState): EventState => {
  const [line, another] = event.lines;
  if (line === undefined || another !== undefined || event.price?.per !== 'all' || line.price !== undefined || line.count === 0)
    return event;
  const {
    price: { amount },
    ...rest
  } = event;
  return { ...rest, lines: [{ ...line, price: { amount: decimal(amount).dividedBy(line.count).toString(), per: 'each' } }] };
};

/** Another number of the pieces. Of several kinds it must be said which. */
const anotherNumber = (question: Question, answer: Answer): readonly Block[] => {
  const { event, manner } = answer;
  const [line, another] = linesAsked(question, event);
  const { number = 0, piece } = question;
  const kinds = [...new Set(linesAsked(question, event).map((each) => each.piece))];
  // A kind in lines of their own prices: which of them grows, nobody said.
  if (another !== undefined && kinds.length === 1)
    return answerLine(
      text`The ${plural(another.piece, manner.says)} are in lines of their own, so ${strong(number)} can’t be worked out: say how many of each.`,
    );
  if (another !== undefined) {
    const ways = kinds.map((kind) => `“${counted(number, kind, manner.says)}”`);
    return [{ block: 'answer', line: text`${strong(number)} of which? Ask with the kind: ${either.format(ways)}.` }];
  }
  const kind = piece ?? line?.piece;
  return whatIfBlocks({ ...question, ...(kind === undefined ? {} : { piece: kind }) }, { ...answer, event: pricedEach(event) });
};

/** The order of only some kinds, priced on a copy; one price for all of them can't be taken apart. */
const someKinds = (kept: readonly OrderLine[], name: string, answer: Answer): readonly Block[] => {
  const { event, manner, studio, today } = answer;
  const shared = event.price?.per === 'all' && kept.some((line) => line.price === undefined);
  if (shared)
    return answerLine(
      text`${moneySpan(manner.money(event.price?.amount ?? '0'))} is one price for the whole order: nobody has said what it is ${name}.`,
    );
  const priced = priceEvent(studio.settings, { ...event, lines: kept }, today);
  if (priced === undefined) return answerLine(text`Nobody has said a price for that yet.`);
  if (!priced.ok) return [];
  return answerLine(comesTo(priced.value, name, answer));
};

const comesTo = ({ priced, unpriced }: PricedEvent, name: string, { manner }: Answer): Line => {
  const { price, tax } = priced.all.printed;
  const taxed = tax.isZero() ? [] : text`, of which ${moneySpan(manner.money(tax))} ${priced.terms.tax.name}`;
  const missing = notPricedYet(unpriced, manner);
  return text`${strong(manner.money(price))} ${name}${taxed}${missing === '' ? '' : `; ${missing}`}.`;
};

/** What a number or a price that stands nowhere in the order would have been about was not understood: said above the figures as they stand. */
const asItStands = (question: Question, answer: Answer, asked: readonly OrderLine[]): readonly Block[] => {
  const { number, amount } = question;
  const all = answer.event.lines.reduce((pieces, line) => pieces + line.count, 0);
  const counts = [0, 1, all, ...asked.flatMap((line) => [line.count, line.countMax ?? line.count])];
  const prices = knownAmounts(asked, answer).map((price) => decimal(price));
  const total = answer.price?.ok ? answer.price.value.priced.all.printed.price : undefined;
  const known = (value: string): boolean => [...prices, ...(total ? [total] : [])].some((price) => price.equals(value));
  const strange =
    amount !== undefined && !known(amount)
      ? amount
      : number !== undefined && !counts.includes(number) && !known(String(number))
        ? String(number)
        : undefined;
  return strange === undefined
    ? []
    : [{ block: 'line', line: plainLine(`I have not worked out anything with “${strange}”: these are the figures as they stand.`) }];
};

const isOfMoney = ({ asks }: Question): boolean => asks === 'price' || asks === 'total';

/** "How much for 18 bouts?" before any order. */
const triesFirst = ({ amount, number, piece, words }: Question): boolean =>
  (amount !== undefined && triesPrice.test(words)) || (number !== undefined && number >= 2 && (piece ?? amount) !== undefined);

/** Whether it names a price or a number that is not the order's. */
const anotherNamed = (
  question: Question,
  asked: readonly OrderLine[],
  answer: Answer,
): { readonly other: boolean; readonly more: boolean } => {
  const { number, amount, piece, words, differs } = question;
  const ofMoney = isOfMoney(question);
  const ordered = asked.reduce((pieces, line) => pieces + line.count, 0);
  return {
    other:
      amount !== undefined &&
      (ofMoney || triesPrice.test(words)) &&
      !knownAmounts(asked, answer).some((one) => decimal(one).equals(amount)),
    more:
      number !== undefined &&
      (differs !== undefined || (number >= 2 && number !== ordered)) &&
      (ofMoney || piece !== undefined || amount !== undefined),
  };
};

/** "How much for 30?" as the what-if that answered it, where that tried one thing on the order as it stands. */
export const questionTried = (put: Question, answer: Answer): Question | undefined => {
  const { event } = answer;
  const piece = put.piece === undefined ? undefined : kindInOrder(event.lines, put.piece);
  const question = piece === undefined ? put : { ...put, piece };
  if (!isOfMoney(question) || question.item !== undefined) return undefined;
  if (event.lines.length === 0) return triesFirst(question) ? question : undefined;
  const asked = linesAsked(question, event);
  const [line, another] = asked;
  if (line === undefined || another !== undefined || event.price?.per === 'all') return undefined;
  if (ofWhatWasSaid.test(question.words) && question.differs === undefined) return undefined;
  const { other, more } = anotherNamed(question, asked, answer);
  return more ? { ...question, piece: line.piece } : other ? question : undefined;
};

/** Tries what the question names; else its own answer, with a word where a number in it was not used. */
export const orTried =
  (respond: Respond): Respond =>
  (put, answer) => {
    const { event, manner } = answer;
    const piece = put.piece === undefined ? undefined : kindInOrder(event.lines, put.piece);
    const question = piece === undefined ? put : { ...put, piece };
    const { number, amount, words, differs } = question;
    const asked = linesAsked(question, event);
    const ofMoney = isOfMoney(question);
    if (question.item !== undefined) return respond(question, answer);
    // "How much for 18 bouts?" before any order: what is missing for it is said.
    if (event.lines.length === 0) return triesFirst(question) ? whatIfBlocks(question, answer) : respond(question, answer);
    const priced = answer.price !== undefined;
    const told = ofWhatWasSaid.test(words) && differs === undefined;
    if (!told && priced && ofMoney && piece !== undefined && number === undefined && amount === undefined) {
      const others = event.lines.filter((line) => line.piece !== piece);
      const name = plural(piece, manner.says);
      if (differs === 'without' && asked.length > 0 && others.length > 0)
        return [...someKinds(others, `without the ${name}`, answer), storedNothing];
      if (question.asks === 'total' && asked.length > 0 && others.length > 0) return someKinds(asked, `for the ${name}`, answer);
    }
    if (question.asks === 'total' && piece !== undefined && amount === undefined && number === undefined && isMissing(event.lines, piece))
      return answerLine(text`No ${plural(piece, manner.says)} are ordered here yet.`);
    const { other, more } = anotherNamed(question, asked, answer);
    if (!told && more) return anotherNumber(question, answer);
    if (!told && other && amount !== undefined && asked.length > 1 && question.per !== 'all' && ofMoney)
      return answerLine(
        text`${moneySpan(manner.money(amount))} for which? Ask with the kind: “what about ${plural(asked[0]?.piece ?? 'unspecified', manner.says)} at ${amount} each”.`,
      );
    if (!told && other) return whatIfBlocks(question, answer);
    const own = respond(question, answer);
    const [first, ...rest] = own;
    return first === undefined || !ofMoney ? own : [first, ...asItStands(question, answer, asked), ...rest];
  };
