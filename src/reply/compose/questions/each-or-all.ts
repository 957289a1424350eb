// "Can I do 20 for 13?" at 15 each, "for 400?": whether the sum tried is for each of them or for all. What the order tells is taken, the rest is asked.

import type { EventState } from '../../../thread/event.ts';
import { type Decimal, decimal } from '../../../values/decimal.ts';
import type { Answer } from '../../answer.ts';
import type { Line } from '../../reply.ts';
import { moneySpan, text } from '../../span.ts';
import { counted, plural } from '../../words/names.ts';
import type { Question } from './respond.ts';

export const saysEach = /\b(each|ea|apiece|per|a (piece|pop|head|bout|lapel|buttonhole|corsage|crown|comb))\b/i;

/** "20 for 13" at 15 each, "20 for 400": what each costs or what all of them do, whichever the price there is comes near to. */
const forSum = /\bfor (about |around |only |just |say |like )?[^a-z\s]*\d/i;
const near = 2.5;
export const forEachOrAll = (question: Question, event: EventState): Question => {
  const { number, amount, per, words, piece } = question;
  if (number === undefined || number < 1 || amount === undefined || per !== undefined || saysEach.test(words) || !forSum.test(words))
    return question;
  const each = eachNow(event, piece);
  if (each === undefined) return question;
  const [asEach, asAll] = [away(decimal(amount), each), away(decimal(amount), each.times(number))];
  if (Math.min(asEach, asAll) > near) return question;
  return asAll < asEach ? { ...question, per: 'all' } : question;
};

/** Whether nothing tells which of the two "20 for 60" is. */
export const eitherSum = (question: Question, { event, manner }: Answer): Line | undefined => {
  const { number, amount, per, words, piece } = question;
  if (number === undefined || number < 2 || amount === undefined || per !== undefined || saysEach.test(words) || !forSum.test(words))
    return undefined;
  const each = eachNow(event, piece);
  if (each !== undefined && away(decimal(amount), each) <= near) return undefined;
  const pieces = counted(number, piece ?? event.lines[0]?.piece ?? 'unspecified', manner.says);
  return text`Is ${moneySpan(manner.money(amount))} for each, or for all of them? Ask “what about ${pieces} at ${amount} each” or “what about ${pieces} for ${amount} all in”.`;
};

/** What one of them costs now; undefined where several kinds cost different sums. */
const eachNow = ({ lines, price: shared }: EventState, piece: string | undefined): Decimal | undefined => {
  const [line, another] = piece === undefined ? lines : lines.filter((one) => one.piece === piece);
  const price = line?.price ?? shared;
  if (line === undefined || another !== undefined || price === undefined) return undefined;
  return price.per === 'all' ? (line.count > 0 ? decimal(price.amount).dividedBy(line.count) : undefined) : decimal(price.amount);
};
const away = (one: Decimal, other: Decimal): number => (one.greaterThan(other) ? one.dividedBy(other) : other.dividedBy(one)).toNumber();

/** "Try 13" of bouts and corsages: nobody said which of them, and no price is for both. */
export const whichKind = ({ amount, number, piece, per, words }: Question, { event, manner }: Answer): Line | undefined => {
  if (amount === undefined || number !== undefined || piece !== undefined || per !== undefined) return undefined;
  if (/\b(all|everything|both|each|ea|apiece)\b/i.test(words)) return undefined;
  const kinds = [...new Set(event.lines.map((line) => line.piece))];
  const prices = new Set(event.lines.map(({ price }) => price?.amount));
  if (kinds.length < 2 || prices.size < 2) return undefined;
  const ways = kinds.map((kind) => `“what about ${plural(kind, manner.says)} at ${amount} each”`);
  return text`${moneySpan(manner.money(amount))} for which? Ask with the kind: ${either.format(ways)}.`;
};
const either = new Intl.ListFormat('en-GB', { type: 'disjunction' });
