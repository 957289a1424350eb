// From an answer to a reply: the answer to the question asked, or what the message changed and the figures that follow; then what was left unread;
// then at most one next step. One screen: the parts table or the calendar, with the rest in a line each.

import type { OpenQuestion } from '../../reading/reading.ts';
import { isStudioFact } from '../../thread/apply-studio-facts.ts';
import type { Answer } from '../answer.ts';
import type { Block, Reply } from '../reply.ts';
import { joined, quoted, text } from '../span.ts';
import { materialsWords, orderWords } from '../words/order.ts';
import { problemLine } from '../words/problems.ts';
import { askBlocks } from './ask.ts';
import { budgetBlocks } from './budget.ts';
import { type Topic, withButtons } from './buttons.ts';
import { type CalendarForm, calendarBlocks } from './calendar.ts';
import { unheard, withCautions } from './cautions.ts';
import { changeLines } from './changes.ts';
import { magnetClash } from './magnet-clash.ts';
import { movedDates } from './moved-dates.ts';
import { nextStep } from './next-step.ts';
import { notedLines } from './noted.ts';
import { paceOffer } from './pace-offer.ts';
import { isPriceNews } from './price-before.ts';
import { isUsedHere, packAsked, priceListBlocks } from './price-list.ts';
import { priceWanted } from './price-wanted.ts';
import { progressBlocks } from './progress.ts';
import { offeredToKeep } from './questions/offered-to-keep.ts';
import { questionBlocks } from './questions/questions.ts';
import { recipeCostBlocks } from './recipe-cost.ts';
import { reviewOffer } from './review-offer.ts';
import { toldNow } from './review-told.ts';
import { sharedBlocks } from './shared.ts';
import { notKeptBlocks, stillOpen } from './still-open.ts';
import { takenBackLine } from './taken-back.ts';
import { kindWithoutOrder } from './uncounted-kind.ts';
import { wearersBlocks } from './wearers.ts';
import { fitAsk } from './what-fits.ts';

export interface Composed {
  readonly reply: Reply;
  readonly asks: OpenQuestion | undefined; // the question this reply leaves open
  readonly cautioned: readonly string[]; // ids of the cautions it shows for the first time here
}

export const composeAnswer = (answer: Answer): Composed => {
  if (answer.shared) return { reply: { blocks: sharedBlocks(answer) }, asks: undefined, cautioned: [] };
  const asked = answer.questions.flatMap((question) => questionBlocks(question, answer));
  const changed = answer.stated.length > 0 || answer.how !== 'stated' || answer.listRead !== undefined ? statedBlocks(answer) : [];
  const { blocks, cautioned } = withCautions(answer, firstIsTheAnswer([...changed, ...asked]), magnetClash(answer));
  // What a question names is not lost.
  const leftOver = answer.ask?.why === 'part left' || kindWithoutOrder(answer) !== undefined ? [] : unheard(answer);
  const notUsed = joined(
    leftOver.map((words) => [quoted(words)]),
    ', ',
  );
  const unread: readonly Block[] = [
    ...notKeptBlocks(answer),
    ...(leftOver.length > 0 ? [{ block: 'assumed' as const, line: text`Not used: ${notUsed}.` }] : []),
  ];
  const again = stillOpen(answer);
  // Put again behind a question: it waits as it did, and nothing is stored.
  if (again && answer.stated.length === 0)
    return { reply: { blocks: [...blocks, ...unread, ...askBlocks(again, answer.manner)] }, asks: undefined, cautioned };
  const ask = answer.ask ?? again ?? fitAsk(answer) ?? reviewOffer(answer) ?? paceOffer(answer);
  if (ask) return { reply: { blocks: [...blocks, ...unread, ...askBlocks(ask, answer.manner)] }, asks: { kind: 'choice', ask }, cautioned };
  const next =
    answer.questions.length === 0 &&
    answer.how !== 'withdrawn' &&
    !answer.stated.every((fact) => isStudioFact(fact) || fact.fact === 'actual') &&
    !isOnlyProgress(answer)
      ? nextStep(answer)
      : undefined;
  const step: readonly Block[] = next ? [{ block: 'next', line: text`${next.words}` }] : [];
  const shown = answer.stated.length > 0 || answer.how !== 'stated' ? topicsOf(answer) : new Set<Topic>();
  return {
    reply: { blocks: withButtons([...blocks, ...unread, ...step], answer, shown) },
    asks: next?.open ?? packAsked(answer) ?? priceWanted(answer) ?? topicAsked(answer),
    cautioned,
  };
};

const ofBuying = /^(buying|allBought|leftOver)$/;
/** "Is that everything" behind a buying list asks of the list, "yes do that" takes what was worked out: both are kept with the question that still waits. */
const topicAsked = (answer: Answer): OpenQuestion | undefined => {
  const { questions, stated, event } = answer;
  if (questions.length === 0 || stated.length > 0 || event.open?.kind === 'choice') return undefined;
  const { askedAt: _, topic, tried: before, ...open } = event.open ?? { kind: 'topic', askedAt: 0 };
  const now = questions.some(({ asks }) => ofBuying.test(asks)) ? 'buying' : undefined;
  const tried = offeredToKeep(answer);
  if (now === topic && tried === undefined && before === undefined) return undefined;
  return { ...open, ...(now === undefined ? {} : { topic: now }), ...(tried === undefined ? {} : { tried }) };
};

/** Whoever counts pieces at the bench is not asked for a price; only for the date, without which there is no plan. */
const isOnlyProgress = ({ stated, event }: Answer): boolean =>
  event.date !== undefined && stated.length > 0 && stated.every(({ fact }) => fact === 'made' || fact === 'broke' || fact === 'left');

const topicsOf = (answer: Answer): ReadonlySet<Topic> => {
  const topics = new Set<Topic>();
  for (const fact of answer.stated) {
    if (fact.fact === 'pieces' && justNamed(answer)) continue;
    if (fact.fact === 'pieces' || fact.fact === 'price' || fact.fact === 'tax') topics.add('money');
    if (fact.fact === 'rule' && fact.what !== 'spare') topics.add('money');
    if (fact.fact === 'date' || fact.fact === 'material') topics.add('calendar');
    if (fact.fact === 'made' || fact.fact === 'broke' || fact.fact === 'left') topics.add('progress');
    if (fact.fact === 'recipe' || (fact.fact === 'pack' && answer.listRead === undefined && isUsedHere(fact, answer))) topics.add('recipe');
    if (fact.fact === 'change') topics.add(changeTopic(fact.what));
  }
  if (isPriceNews(answer)) topics.add('money');
  const { before, event } = answer;
  if (answer.how !== 'stated') {
    if (differ(before.lines, event.lines) || differ(before.price, event.price)) topics.add('money');
    if (before.date !== event.date || before.material !== event.material) topics.add('calendar');
    if (differ(before.recipes, event.recipes)) topics.add('recipe');
  }
  if (topics.has('money') && event.date && before.date && piecesIn(before) !== piecesIn(event)) topics.add('calendar');
  return topics;
};

/** By content: a refold makes everything anew. */
const differ = (a: unknown, b: unknown): boolean => JSON.stringify(a) !== JSON.stringify(b);

/** Pieces said with their wearers that the order holds already: the list is the news, the price is not. */
const justNamed = ({ before, event, stated }: Answer): boolean =>
  stated.some(({ fact }) => fact === 'wearers') && piecesIn(before) === piecesIn(event);

const piecesIn = (event: Answer['event']): string => event.lines.map((line) => `${line.count} ${line.piece}`).join(', ');

const changeTopic = (what: string): Topic =>
  what === 'made' || what === 'broke' ? 'progress' : what === 'date' || what === 'material' || what === 'time' ? 'calendar' : 'money';

const statedBlocks = (answer: Answer): readonly Block[] => {
  const topics = topicsOf(answer);
  const blocks: Block[] = [...takenBack(answer), ...priceListBlocks(answer)];
  for (const line of [...changeLines(answer), ...notedLines(answer)]) blocks.push({ block: 'line', line });
  if (answer.stated.some(({ fact }) => fact === 'wearers')) blocks.push(...wearersBlocks(answer));
  blocks.push(...toldNow(answer));
  if (topics.has('progress')) blocks.push(...progressBlocks(answer));
  if (topics.has('money')) blocks.push(...moneyBlocks(answer));
  if (topics.has('recipe')) blocks.push(...recipeCostBlocks(answer));
  if (topics.has('recipe') && !topics.has('calendar')) blocks.push(...movedDates(answer));
  if (topics.has('calendar')) blocks.push(...dateBlocks(answer, topics.has('money') ? 'key dates' : 'whole'));
  if (answer.how === 'edited') blocks.push({ block: 'assumed', line: text`From the edited message; the earlier one no longer counts.` });
  return blocks;
};

/** A deletion and an undo have no figures of their own to begin with. */
const takenBack = ({ how, takenBack: facts, before, manner }: Answer): Block[] => {
  if (how === 'withdrawn') return [{ block: 'line', line: text`Message deleted: what it said is taken back.` }];
  if (how === 'undone' && facts.length === 0 && before.open?.kind === 'choice') {
    return [{ block: 'line', line: text`Taken back: “${before.open.ask.words}”, which I had only asked about. Nothing else has changed.` }];
  }
  if (how === 'undone') return [{ block: 'line', line: takenBackLine(facts, manner) }];
  return [];
};

const moneyBlocks = (answer: Answer): readonly Block[] => {
  const { price, event, manner } = answer;
  if (price?.ok && answer.ask?.about !== 'price') return budgetBlocks(price.value, answer);
  const noted = text`${orderWords(event.lines, manner)}: noted`;
  if (price && !price.ok && event.lines.length > 0) {
    return answer.ask
      ? [{ block: 'answer', line: text`${noted}. I can price it once the tax rate is known.` }]
      : [
          { block: 'answer', line: text`${noted}, not priced.` },
          { block: 'problem', line: problemLine(price.problem, manner.money) },
        ];
  }
  return event.lines.length > 0 ? [{ block: 'answer', line: text`${noted}.` }] : [];
};

const dateBlocks = (answer: Answer, form: CalendarForm): readonly Block[] => {
  const plan = answer.plan();
  if (plan) return calendarBlocks(plan, answer, form);
  const { event } = answer;
  if (event.date || !event.material || materialsWords(event, answer.manner) !== event.material) return [];
  return [{ block: 'answer', line: text`Noted: ${event.material}.` }];
};

/** The first block is the answer, whichever part gave it; further answers stand as lines below. */
const firstIsTheAnswer = (blocks: readonly Block[]): readonly Block[] => {
  const first = blocks.findIndex((block) => block.block === 'answer');
  return blocks.map((block, index) => (block.block === 'answer' && index !== first ? { block: 'line', line: block.line } : block));
};
