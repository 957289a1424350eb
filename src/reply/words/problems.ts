// One clear sentence for each problem: what is wrong, what stays as it was, what to do. A code without a sentence does not compile.

import { kindWords } from '../../reading/words/kind-words.ts';
import { capital } from '../../values/capital.ts';
import { parseDay } from '../../values/day.ts';
import type { Problem, ProblemCode, ProblemData } from '../../values/problem.ts';
import type { Line } from '../reply.ts';
import { joined, moneySpan, ownWords, plainLine, quoted, strong, text } from '../span.ts';
import { type DateStyle, fullDate } from './dates.ts';
import { rowFaultWords } from './row-faults.ts';

type Sentences = { readonly [C in ProblemCode]: (data: ProblemData[C], money: (amount: string) => string, style: DateStyle) => Line };

const list = (words: readonly string[]): Line =>
  joined(
    words.map((word) => [ownWords(word)]),
    ', ',
  );

const shownDay = (date: string, style: DateStyle): string => {
  const day = parseDay(date);
  return day ? fullDate(day, style) : date;
};

const unreadableFile = {
  'too large': 'That file is too large for a price list: I read up to 1 MB.',
  'not a list': 'That file is not plain text. Save the price list as CSV (UTF-8) and send it again.',
  unavailable: 'I could not fetch that file. Please send it again.',
} as const;

const sentences: Sentences = {
  'message-empty': () => text`There was nothing in that message.`,
  'message-too-long': ({ characters, most }) =>
    text`That message is ${characters} characters long; I read up to ${most}. Send a long price list as a CSV file instead.`,
  'date-does-not-exist': ({ words }) => text`There is no ${quoted(words)}. Which day do you mean?`,
  'date-is-past': ({ date, words }, _money, style) =>
    words === undefined
      ? text`${shownDay(date, style)} is past. Which date is the event?`
      : text`${quoted(words)} is ${shownDay(date, style)}, which is past. Which date is the event?`,
  'another-event': ({ date, words }, _money, style) =>
    text`${quoted(words)} sounds like a second event. Give it a thread of its own and say its order there. If this one moves, say “moved to ${shownDay(date, style)}”.`,
  'count-not-positive': ({ words }) => text`${quoted(words)}: a number of pieces has to be 1 or more.`,
  'count-too-large': ({ count, most }) => text`${count} pieces is more than I plan for (${most} at most). Is that the right number?`,
  'other-currency': ({ said, studio }) =>
    text`That price is in ${said}; the studio works in ${studio}, and I never convert. What is it in ${studio}?`,
  'price-not-positive': ({ amount }, money) => text`A price of ${moneySpan(money(amount))} can't be right: it has to be above zero.`,
  'price-too-large': () => text`That price is too large to be one. Please check the number.`,
  'price-below-smallest-coin': ({ smallest }) => text`That price is below the smallest coin, ${smallest}. Please check the number.`,
  'rate-out-of-range': ({ what, rate }) =>
    text`A ${what}${what === 'spare' ? '' : ' rate'} of ${rate} % can't be worked with. Please check the number.`,
  'multiple-not-positive': ({ what, multiple }) =>
    text`A multiple of ${multiple} on ${what} can't be worked with: it has to be above zero.`,
  'sundries-use-up-price': ({ sundries, room, piece }, money) =>
    text`Sundries alone use up that price: they cost ${moneySpan(money(sundries))} for a ${piece} and the price leaves ${moneySpan(money(room))}. Nothing would be left for stems.`,
  'nothing-to-price': () => text`There is nothing to price yet. How many pieces, and at what price?`,
  'price-missing': ({ pieces }) => text`No price yet for: ${list(pieces)}.`,
  'price-finer-than-coin': ({ amount, smallest }) => text`${amount} is finer than the smallest coin, ${smallest}. Please check the number.`,
  'total-below-line-prices': ({ total, lines }, money) =>
    text`The pieces with a price of their own already come to ${moneySpan(money(lines))}, more than the total of ${moneySpan(money(total))}.`,
  'budget-below-one-piece': ({ budget, each }, money) =>
    text`${moneySpan(money(budget))} does not pay for one piece at ${moneySpan(money(each))}.`,
  'currency-unknown': ({ currency }) => text`${ownWords(currency)} is not a currency code I know. Use three capitals, like GBP.`,
  'tax-rate-unknown': ({ region }) =>
    text`I don't know the tax rate to take out of that price (${region}). Set your rate in the studio settings, or say “inc tax 8.25%”; check it with your accountant.`,
  'tax-depends-on-material': ({ mixed, rates }) =>
    text`The tax rate depends on the material here: ${joined(
      rates.map((rate) => text`${rate.material} ${rate.rate} %`),
      ', ',
    )}. ${mixed ? 'For mixed pieces, ask your accountant which holds' : 'Which are these'}?`,
  'rule-not-understood': ({ what, to }) => text`I can't set ${what} to ${quoted(to)}.`,
  'ladder-not-a-range': ({ from, to, step }) => text`I can't step from ${from} to ${to} by ${step}. Try “try 20 to 30”.`,
  'pack-size-not-positive': ({ item, size }) =>
    text`A pack of ${size} ${ownWords(item)} can't be bought: the pack size has to be above zero.`,
  'pack-price-negative': ({ item, price }) => text`${ownWords(item)} at ${price}: a pack price can't be below zero.`,
  'pack-price-uneven': ({ item, price, packs, per }, money) =>
    text`${ownWords(capital(item))}: ${moneySpan(money(price))} for ${packs} does not come out even for one. What does one ${per} cost?`,
  'price-list-empty': () => text`That price list has no rows. Nothing was imported.`,
  'price-list-not-text': () =>
    text`That file is not plain text. Save the price list as CSV (UTF-8) and send it again. Nothing was imported.`,
  'price-list-quote-open': ({ line }) => text`A quotation mark opened on line ${line} is never closed. Nothing was imported.`,
  'price-list-columns-missing': ({ missing, seen }) =>
    text`That price list lacks ${list(missing)}. The headings I found: ${list(seen)}. Nothing was imported.`,
  'price-list-column-twice': ({ column, headings }) =>
    text`Two headings mean ${column}: ${list(headings)}. Keep one. Nothing was imported.`,
  'price-list-rows-wrong': ({ rows, faults }) =>
    text`${strong(String(new Set(faults.map(({ line }) => line)).size))} of ${rows} ${rows === 1 ? 'row' : 'rows'} can't be read, so nothing was imported. ${joined(faults.slice(0, 10).map(rowFaultWords), '; ')}${faults.length > 10 ? `; and ${faults.length - 10} more` : ''}.`,
  'recipe-not-known': ({ name, nearest }) =>
    text`I have no recipe called ${quoted(name)}.${nearest.length > 0 ? text` Nearest: ${list(nearest)}.` : []}`,
  'no-recipe-yet': () => text`There is no recipe in this thread yet. Say “3 bunny tails, 1 statice each”.`,
  'not-in-recipe': ({ ingredient, known }) => text`${ownWords(capital(ingredient))} is not in the recipe. It has: ${list(known)}.`,
  'recipe-scale-not-positive': ({ by }) => text`A recipe times ${by} leaves nothing. Please check the number.`,
  'pack-without-price': ({ item, size, per }) =>
    text`${ownWords(capital(item))} has no price yet. Say “${item} 4.80 a ${per ?? 'bunch'} of ${size}”.`,
  'item-priced-twice': ({ item, prices }, money) =>
    text`There are two prices for ${ownWords(item)}: ${joined(
      prices.map((price) => [moneySpan(money(price))]),
      ' and ',
    )}. Which is right?`,
  'nothing-fits': ({ least, budget }, money) =>
    text`Nothing on the price list fits ${moneySpan(money(budget))} a piece.${least ? text` The cheapest recipe needs ${moneySpan(money(least))}.` : []}`,
  'too-few-ingredients': ({ listed, wanted }) =>
    text`The price list has ${listed === 0 ? 'none' : `only ${listed}`} sold by the stem with a role (focal, line, texture, foliage or filler); a recipe wants ${wanted}. Say the role behind the price: “bunny tails 14.50 a bunch of 50, focal”.`,
  'file-unreadable': ({ why }) => text`${unreadableFile[why]} Nothing was imported.`,
  'members-only': () =>
    text`Only full members of the studio can change its prices, its crew, its drying days and its saved recipes, or have an event forgotten or handed out. If you are one, send it again in a minute.`,
  'nothing-to-undo': () => text`There is nothing to take back in this thread.`,
  'nothing-ordered': () => text`There are no pieces in this thread yet. Say how many first.`,
  'only-so-many': ({ count, piece, ordered }) =>
    text`There ${ordered === 1 ? 'is 1' : `are ${ordered}`} ${kindWords(piece, ordered)}, not ${count}.`,
  'no-such-piece': ({ piece, known }) => text`There is no ${piece} in this order. It has: ${list(known)}.`,
  'no-such-wearer': ({ wearer, known }) =>
    known.length === 0
      ? text`Nobody is on the list of wearers yet, so no ${ownWords(wearer)} can come off it.`
      : text`The list of wearers has no ${ownWords(wearer)}. It has: ${list(known)}.`,
  'review-before-event': ({ date }, _money, style) => text`The event is on ${shownDay(date, style)}; look back once it is over.`,
  'nothing-recorded': () => text`Nothing real is recorded yet. Say “spent 182.40”, “took 9 hours” or “3 unused”, and I can compare.`,
};

/** `style`: how the studio writes dates, where the sentence may hold one. */
export const problemLine = (problem: Problem, money: (amount: string) => string, style: DateStyle = { dayFirst: true }): Line =>
  (sentences[problem.code] as (data: unknown, money: (amount: string) => string, style: DateStyle) => Line)(problem.data, money, style);

/** Said after a refusal, so that nobody wonders what was kept. */
export const nothingKept = plainLine('Nothing of that message is kept; edit it or send it again.');
export const earlierStands = plainLine('What the message said before the edit still stands.');
