// From an answer to a reply: the answer to the question asked, or what the message changed and the figures that follow; then what was left unread;
// then at most one next step. One screen: the parts table or the calendar, with the rest in a line each.

import { isStudioFact } from '../../thread/apply-studio-facts.ts';
import type { Answer } from '../answer.ts';
import type { Block, Reply } from '../reply.ts';
import { joined, quoted, text } from '../span.ts';
import { orderWords } from '../words/order.ts';
import { askBlocks } from './ask.ts';
import { budgetBlocks } from './budget.ts';
import { calendarBlocks } from './calendar.ts';
import { changeLines } from './changes.ts';
import { type NextStep, nextStep } from './next-step.ts';
import { notedLines } from './noted.ts';
import { progressBlocks } from './progress.ts';
import { questionBlocks } from './questions/questions.ts';
import { recipeCostBlocks } from './recipe-cost.ts';
import { sharedBlocks } from './shared.ts';

export interface Composed {
  readonly reply: Reply;
  readonly asks: NextStep['open'] | undefined; // the question this reply leaves open
}

export const composeAnswer = (answer: Answer): Composed => {
  if (answer.shared) return { reply: { blocks: sharedBlocks(answer) }, asks: undefined };
  const asked = answer.questions.flatMap((question) => questionBlocks(question, answer));
  const changed = answer.stated.length > 0 || answer.how !== 'stated' ? statedBlocks(answer) : [];
  const blocks = firstIsTheAnswer([...changed, ...asked]);
  const unread: readonly Block[] =
    answer.unread.length > 0
      ? [
          {
            block: 'assumed',
            line: text`Not used: ${joined(
              answer.unread.map((words) => [quoted(words)]),
              ', ',
            )}.`,
          },
        ]
      : [];
  if (answer.ask) {
    return {
      reply: { blocks: [...blocks, ...unread, ...askBlocks(answer.ask, answer.manner)] },
      asks: { kind: 'choice', ask: answer.ask },
    };
  }
  const next =
    answer.questions.length === 0 && answer.how !== 'withdrawn' && !answer.stated.every(isStudioFact) ? nextStep(answer) : undefined;
  const step: readonly Block[] = next ? [{ block: 'next', line: text`${next.words}` }] : [];
  return { reply: { blocks: [...blocks, ...unread, ...step] }, asks: next?.open };
};

type Topic = 'money' | 'calendar' | 'progress' | 'recipe';

const topicsOf = (answer: Answer): ReadonlySet<Topic> => {
  const topics = new Set<Topic>();
  for (const fact of answer.stated) {
    if (fact.fact === 'pieces' || fact.fact === 'price' || fact.fact === 'tax' || fact.fact === 'rule') topics.add('money');
    if (fact.fact === 'date' || fact.fact === 'material') topics.add('calendar');
    if (fact.fact === 'made' || fact.fact === 'broke' || fact.fact === 'left') topics.add('progress');
    if (fact.fact === 'recipe' || fact.fact === 'pack') topics.add('recipe');
    if (fact.fact === 'change') topics.add(changeTopic(fact.what));
  }
  const { before, event } = answer;
  if (answer.how !== 'stated') {
    if (before.lines !== event.lines || before.price !== event.price) topics.add('money');
    if (before.date !== event.date || before.material !== event.material) topics.add('calendar');
  }
  if (topics.has('money') && event.date && before.date && piecesIn(before) !== piecesIn(event)) topics.add('calendar');
  return topics;
};

const piecesIn = (event: Answer['event']): string => event.lines.map((line) => `${line.count} ${line.piece}`).join(', ');

const changeTopic = (what: string): Topic =>
  what === 'made' ? 'progress' : what === 'date' || what === 'material' || what === 'time' ? 'calendar' : 'money';

const statedBlocks = (answer: Answer): readonly Block[] => {
  const topics = topicsOf(answer);
  const blocks: Block[] = takenBack(answer);
  for (const line of [...changeLines(answer), ...notedLines(answer)]) blocks.push({ block: 'line', line });
  if (topics.has('progress')) blocks.push(...progressBlocks(answer));
  if (topics.has('money')) blocks.push(...moneyBlocks(answer));
  if (topics.has('recipe')) blocks.push(...recipeCostBlocks(answer));
  if (topics.has('calendar')) blocks.push(...dateBlocks(answer));
  if (answer.how === 'edited') blocks.push({ block: 'assumed', line: text`From the edited message; the earlier one no longer counts.` });
  return blocks;
};

/** A deletion and an undo have no figures of their own to begin with. */
const takenBack = ({ how }: Answer): Block[] => {
  if (how === 'withdrawn') return [{ block: 'line', line: text`Message deleted: what it said is taken back.` }];
  if (how === 'undone') return [{ block: 'line', line: text`Taken back.` }];
  return [];
};

const moneyBlocks = (answer: Answer): readonly Block[] => {
  const { price, event, manner } = answer;
  if (price?.ok && answer.ask?.about !== 'price') return budgetBlocks(price.value, answer);
  return event.lines.length > 0 ? [{ block: 'answer', line: text`${orderWords(event.lines, manner)}: noted.` }] : [];
};

const dateBlocks = (answer: Answer): readonly Block[] => {
  const plan = answer.plan();
  if (plan) return calendarBlocks(plan, answer);
  const { event } = answer;
  if (event.date || !event.material) return [];
  return [{ block: 'answer', line: text`Noted: ${event.material}.` }];
};

/** The first block is the answer, whichever part gave it; further answers stand as lines below. */
const firstIsTheAnswer = (blocks: readonly Block[]): readonly Block[] => {
  const first = blocks.findIndex((block) => block.block === 'answer');
  return blocks.map((block, index) => (block.block === 'answer' && index !== first ? { block: 'line', line: block.line } : block));
};
