// Questions: "when do we start?", "what's left to make", "try 20 to 30". The whole sentence is taken, so that no number in it is ever stored.

import { dateAt } from '../dates/date-forms.ts';
import { dayToCome } from '../dates/day-to-come.ts';
import type { Asked } from '../fact.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader, type Unworded } from '../phrase.ts';
import { askedOfOthers } from '../questions/asked-of-others.ts';
import { asking, defined } from '../questions/asking.ts';
import { behindRemark } from '../questions/behind-remark.ts';
import { asksDayOfOccasion } from '../questions/day-of-occasion.ts';
import { isOpened, looksAsked, openAt } from '../questions/looks-asked.ts';
import { asksOfCare } from '../questions/of-care.ts';
import { asksOfFlowers } from '../questions/of-flowers.ts';
import { asksOfPaper } from '../questions/of-papers.ts';
import { asksOfRivals } from '../questions/of-rivals.ts';
import { ofSeveral } from '../questions/of-several.ts';
import { oneTried } from '../questions/one-tried.ts';
import { priceTried } from '../questions/price-tried.ts';
import { details } from '../questions/question-details.ts';
import { questionForms } from '../questions/question-forms.ts';
import { beforeReason } from '../questions/remark-if.ts';
import { shaped } from '../questions/shape.ts';
import { shortQuestion } from '../questions/short-questions.ts';
import { countsNothing, everydayAsked, smallTalk, speaksOfTrade } from '../questions/small-talk.ts';
import { topicOf } from '../questions/topics.ts';
import { namesWhere } from '../questions/where-to.ts';
import type { Part } from '../text/message.ts';
import { namesTax } from '../text/of-tax.ts';
import { firstWhere, textOf } from '../text/token.ts';
import { taxAt } from './tax-basis.ts';

const longest = 40;

// Forms that hold for many a question give way to what its words tell of.
const givesWay: Readonly<Partial<Record<Asked, readonly Asked[]>>> = {
  eventDate: ['taxStatus', 'labourTime'],
  whatIf: ['stemOrder', 'labourTime', 'margin', 'stemBudget'],
  count: ['stemOrder', 'labourTime', 'remaining'],
  remaining: ['stemOrder'],
  stemOrder: ['stemBudget'],
  total: ['margin'],
  price: ['total'],
  countFor: ['stemOrder'],
};
// These are asked of nobody else, whatever else is named.
const ofTheBench = new Set<Asked>(['margin', 'stemBudget', 'start', 'latestStart', 'drying', 'hands']);
const ofGoods = new Set<Asked>(['stemOrder', 'prices', 'drying', 'orderBy']);
const ofTheReply = new Set<Asked>(['working', 'client']);
const hoursOfThat = /\bhow (many (hrs|hours|hr)|long) (is|are|would|will|does|do|'?s) (that|it|they|this|those|these)\b/;
const unopened = /\b(if|how much|how many)\b/;

const pricesSomething = (reader: Reader, start: number, end: number): boolean =>
  reader.tokens.slice(start, end).some((token) => token.number?.form === 'money' || token.means['each'] !== undefined);

// The words with the kinds of things that topics go by in place of their names.
const inKinds = (reader: Reader, start: number, end: number): string =>
  reader.tokens
    .slice(start, end)
    .map((token) => {
      const { means, text, number } = token;
      if (namesTax(token)) return '<tax>';
      if (means['piece'] !== undefined) return '<piece>';
      if (means['ingredient'] !== undefined) return '<ingredient>';
      if (means['weekday'] !== undefined) return '<weekday>';
      return number?.form === 'plain' || number?.form === 'money' ? '<number>' : text;
    })
    .join(' ');

const ofADay =
  /\b(wedding|event|gala|party|function|do|ball|dinner|lunch|formal|job|one|ceremony|handover|pickup|pick up|collection|delivery|date|day|time|when|order)\b/;
// "can you fetch 7 bags": nothing that is priced or planned.
const didAnother = pattern(
  '(can|could|would|will) (you|u|ya|ye|someone) (please|pls|just|also){0,2} (fetch|pick|load|unload|carry|collect|buy|water|feed|sweep|wash|mop|clean|stack|lift|sign|post|send|print|ring|phone|call|text|email|meet|lend|cover|park|drive|borrow|keep|bring|grab|get|pass|hold|save|leave|wake|watch|mind|empty|fill|open|lock)',
);

const pricesWhatIf = pattern(
  '(what)? if <any>{1,5} (cost|costs|costed|went up to|go up to|were|was) (us|me)? (about|only|up to|<upTo>)? <amount>',
);

const totalWhatIf = pattern("(what)? if (it|it's|its|they|they're|we|i|she|that)? <any>{0,3} <amount> <all>");

// "anything due sunday or can i head off": what is due is asked, whatever else is.
const dueFirst = /^(so |and |ok |hey |is |are )*(anything|any|much|what's|whats) (else )?due\b/;

// The forms that may stand in the message at all, looked for once.
let [lookedAt, likely]: [Reader['tokens'], typeof questionForms] = [[], []];
const likelyForms = ({ tokens }: Reader): typeof questionForms => {
  if (tokens !== lookedAt) [lookedAt, likely] = [tokens, questionForms.filter(({ pattern }) => pattern.might(tokens))];
  return likely;
};

const readQuestion = (reader: Reader, whole: Part): Finding => {
  const part = { ...whole, end: beforeReason(reader, whole) };
  const from = Math.max(part.start, part.end - longest);
  const said = textOf(reader.tokens, from, part.end);
  if (asksOfPaper(reader, from, part.end)) return found(reader, whole.start, whole.end, [{ fact: 'question', asks: 'other' }]);
  const form = likelyForms(reader).find(
    (each) => each.pattern.in(reader.tokens, from, part.end) !== undefined && each.unless?.test(said) !== true,
  );
  const short = shortQuestion(reader, part, from) ?? shortQuestion(reader, part, openAt(reader, part));
  if (short !== undefined) {
    return asking(reader, whole, short, shaped(reader, from, part.end, short, details(reader, from, part.end)));
  }
  if (asksOfRivals(reader, from, part.end)) {
    const { piece, item } = details(reader, from, part.end);
    return found(reader, whole.start, whole.end, [{ fact: 'question', asks: 'other', ...defined({ piece, item }) } as Unworded]);
  }
  const plants = asksOfCare(reader, part) || (form?.asks === 'other' && (asksOfFlowers(reader, part) || namesWhere(reader, part)));
  const trade = plants || speaksOfTrade(reader, from, part.end) || (form?.asks === 'whatIf' && pricesSomething(reader, from, part.end));
  const opened = isOpened(reader, part);
  const topic = topicOf(inKinds(reader, from, part.end));
  const known = form !== undefined || (opened && topic !== undefined && ofTheBench.has(topic));
  // "any eucalyptus left in the cold room": where the goods are says nothing of what is asked.
  const goods =
    form !== undefined &&
    ofGoods.has(form.asks) &&
    reader.tokens.slice(from, part.end).some(({ means, number }) => means['ingredient'] !== undefined && number === undefined);
  const occasion = form?.asks === 'eventDate' && asksDayOfOccasion(reader, from, part.end);
  // "who has the crown st keys"
  if (!plants && !occasion && smallTalk(reader, from, part.end) && countsNothing(said)) return { start: whole.start, end: whole.end };
  if (
    !trade &&
    !occasion &&
    (!known ||
      (form?.asks !== 'events' && smallTalk(reader, from, part.end)) ||
      ((form?.asks !== 'eventDate' || !ofADay.test(said)) &&
        !goods &&
        !ofTheReply.has(form?.asks ?? 'other') &&
        everydayAsked(reader, from, part.end)) ||
      (form?.asks === 'whatIf' && didAnother.in(reader.tokens, from, part.end) !== undefined) ||
      (!goods && !dueFirst.test(said) && askedOfOthers(reader, from, part.end)) ||
      (form?.asks === 'whatIf' && !opened && !unopened.test(said)))
  )
    return { start: whole.start, end: whole.end };
  const yields = form === undefined || (form.decides !== true && topic !== undefined && givesWay[form.asks]?.includes(topic));
  // "have we time for 60 lapels or not, how many hrs is that": the hours answer both.
  const hours = form?.asks === 'fits' && hoursOfThat.test(said);
  const asked = hours ? 'labourTime' : yields ? (topic ?? 'other') : form.asks;
  // "what if the roses cost 2 each": a price is tried.
  const supposed = /^(and |so |ok |but )?(what )?if\b/.test(said);
  const tried =
    supposed &&
    ((asked === 'price' && pricesWhatIf.in(reader.tokens, from, part.end) !== undefined) ||
      (asked === 'total' && totalWhatIf.in(reader.tokens, from, part.end) !== undefined));
  if (tried) {
    return asking(reader, whole, 'whatIf', shaped(reader, from, part.end, 'whatIf', details(reader, from, part.end)));
  }
  const asks = asked === 'price' && ofSeveral(reader, from, part.end) ? 'total' : asked;
  const basis = asks === 'taxStatus' ? undefined : basisIn(reader, from, part.end);
  const told = details(reader, from, part.end);
  const fields = shaped(reader, from, part.end, asks, told);
  const one = asks === 'ladder' && fields !== undefined ? oneTried(reader, from, part.end, fields, told) : undefined;
  if (one !== undefined) return asking(reader, whole, 'whatIf', { ...one, basis });
  return asking(reader, whole, asks, fields && { ...fields, basis });
};

const basisIn = (reader: Reader, start: number, end: number): string | undefined => {
  for (let index = start; index < end; index++) {
    const read = taxAt(reader, index);
    if (read !== undefined) return read.fact.basis;
  }
  return undefined;
};

// "kids are home sick, how many left?": the question behind a remark, and the remark with it.
const readApart = (reader: Reader, part: Part, loosely: boolean): Finding | undefined => {
  const apart = behindRemark(reader, part, loosely);
  const read = apart !== undefined && looksAsked(reader, apart) ? readQuestion(reader, apart) : undefined;
  if (apart === undefined || read?.facts === undefined) return undefined;
  const aside = firstWhere(reader.tokens, part.start, apart.start, ({ means }) => means['piece'] !== undefined);
  return { ...read, start: aside < 0 ? part.start : apart.start };
};

// A month, or "victoria day long weekend", ahead of when the day itself will be told.
const tellsSpan = ({ tokens, context }: Reader, { start, end, asked }: Part): boolean => {
  const later = asked ? undefined : dayToCome(tokens, start, end);
  if (later?.end !== end) return false;
  return tokens
    .slice(start, later.start)
    .some(({ means }, at) => means['month'] !== undefined || dateAt(tokens, start + at, context)?.why === 'which day');
};

const find = (reader: Reader): Finding[] => {
  const findings: Finding[] = [];
  for (const part of reader.untouched()) {
    if (findings.length >= 8) break;
    // "early may, not sure which day yet" tells the month.
    if (tellsSpan(reader, part)) continue;
    const read =
      priceTried(reader, part) ?? readApart(reader, part, false) ?? (looksAsked(reader, part) ? readQuestion(reader, part) : undefined);
    const finding = read?.facts === undefined ? (readApart(reader, part, true) ?? read) : read;
    if (finding !== undefined) findings.push(finding);
  }
  return findings;
};

export const question: Phrase = {
  name: 'question',
  examples: [
    'when do we start?',
    'what do I spend?',
    "what's left to make",
    'try 20 to 30',
    'can we do 22?',
    "who's on Friday?",
    'show working',
    'buying list',
  ],
  find,
};
