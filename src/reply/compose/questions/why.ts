// "Why?": which words gave which fact, what was assumed, and what was left unread. "Why these dates?" is about the calendar instead.

import { isSaid } from '../../../thread/apply-care.ts';
import type { Standing } from '../../../thread/effective.ts';
import type { Answer } from '../../answer.ts';
import type { Block } from '../../reply.ts';
import { joined, quoted, text } from '../../span.ts';
import { factWords } from '../../words/facts.ts';
import { allAssumed } from '../assumed.ts';
import { whyDates } from '../why-dates.ts';
import { noPlan } from './no-plan.ts';
import { answerLine, type Respond } from './respond.ts';

const aboutDates = /\b(dates?|days?|early|late|soon|start|calendar|dry(ing)?|hang|order|board(ed)?)\b/i;
const mostMessages = 6;
const mostFacts = 15;

export const why: Respond = (question, answer) => {
  if (aboutDates.test(question.words)) return whyDates(answer) ?? noPlan(answer);
  const standing = answer.standing();
  // Messages nothing was kept of push none out that stated something.
  const stated = standing.filter(({ facts }) => facts.some(isSaid)).slice(-mostMessages);
  const items = stated.flatMap((message) =>
    message.facts.filter(isSaid).map((fact) => text`${quoted(fact.words)}: ${factWords(fact, answer.manner)}`),
  );
  if (items.length === 0) return answerLine(text`I have read nothing in this thread yet.`);
  return [
    ...answerLine(text`What I read, and from which words:`),
    { block: 'list', items: items.slice(-mostFacts) },
    ...assumedBlock(answer),
    ...unreadBlock(standing.slice(-mostMessages)),
  ];
};

const assumedBlock = (answer: Answer): readonly Block[] => {
  const assumed = allAssumed(answer);
  return assumed.length === 0 ? [] : [{ block: 'assumed', line: text`Assumed: ${assumed.join('; ')}.` }];
};

const unreadBlock = (messages: readonly Standing[]): readonly Block[] => {
  const parts = messages.flatMap(({ facts }) => facts.flatMap((fact) => (fact.fact === 'unread' ? fact.parts : [])));
  const shown = parts.slice(-mostFacts).map((words) => [quoted(words)]);
  return shown.length === 0 ? [] : [{ block: 'assumed', line: text`Not used: ${joined(shown, ', ')}.` }];
};
