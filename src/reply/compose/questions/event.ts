// Questions about the event itself: when it is, what is in it and what is open.

import { parseDay } from '../../../values/day.ts';
import type { Block, Span } from '../../reply.ts';
import { dateSpan, ownWords, strong, text } from '../../span.ts';
import { fullDate, shortDate } from '../../words/dates.ts';
import { plural } from '../../words/names.ts';
import { orderWords } from '../../words/order.ts';
import { summaryBlocks } from '../summary.ts';
import { answerLine, type Respond } from './respond.ts';
import { why } from './why.ts';

// "Is the 27th of feb a saturday?": of the day itself, whenever the event is.
const ofWeekday = /\ban? (mon|tues?|wed(nes)?|thu(rs?)?|fri|sat(ur)?|sun)(day)?\b/i;

const eventDate: Respond = ({ words, date }, { event, manner }) => {
  const day = date !== undefined && ofWeekday.test(words) ? parseDay(date) : undefined;
  if (day !== undefined) return answerLine(text`It is ${strong(fullDate(day, manner))}.`);
  if (!event.date) return answerLine(text`Nobody has said when the event is.`);
  const time = event.time ? ` at ${event.time}` : '';
  const over = event.handOver?.date ? text` Hand over ${dateSpan(fullDate(event.handOver.date, manner))}.` : [];
  const unknown = time === '' && /\btime\b/i.test(words) ? ' Nobody has said at what time.' : '';
  return answerLine(text`The event is on ${strong(fullDate(event.date, manner))}${time}.${unknown}${over}`);
};

const material: Respond = (_question, { event, manner }) => {
  const own = event.lines.flatMap((line) => (line.material ? [`${plural(line.piece, manner.says)} ${line.material}`] : []));
  if (!event.material && own.length === 0) return answerLine(text`Nobody has said what they are made of.`);
  return answerLine(text`${strong(event.material ?? '')}${own.length > 0 ? ` ${own.join(', ')}` : ''}.`);
};

const summary: Respond = (_question, answer) => {
  const kept = answer.summaryAt?.();
  const where: readonly Block[] = kept
    ? [{ block: 'line', line: text`Kept up to date: ${{ text: 'its summary message', meaning: 'plain', link: kept }}.` }]
    : [];
  return [...summaryBlocks(answer), ...where];
};

const events: Respond = (_question, answer) => {
  const { manner } = answer;
  const open = answer.openEvents();
  if (open.length === 0) return answerLine(text`No events are open.`);
  return [
    ...answerLine(text`${strong(open.length === 1 ? '1 event' : `${open.length} events`)} open.`),
    {
      block: 'list',
      items: open.slice(0, 20).map(({ title, state, in: place }) => {
        const when: Span = { ...dateSpan(state.date ? shortDate(state.date, manner) : 'no date'), ...(place ? { link: place } : {}) };
        const order = orderWords(state.lines, manner);
        return state.title ? text`${when}, ${strong(ownWords(title).text)}: ${order}` : text`${when}: ${order}`;
      }),
    },
    ...(open.length > 20 ? [{ block: 'line' as const, line: text`And ${open.length - 20} more.` }] : []),
  ];
};

const unable: Respond = () => answerLine(text`I can't answer that one. Say “help” for what I can do.`);

export const eventQuestions = {
  eventDate,
  material,
  summary,
  events,
  why,
  other: unable,
} satisfies Readonly<Record<string, Respond>>;
