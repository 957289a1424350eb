// An invented day of messages in a few threads, some of them edited soon after, for tests that interrupt the work on it.

import type { IncomingMessage, OutgoingReply } from '../../src/assistant/ports.ts';
import type { Fact } from '../../src/reading/fact.ts';
import { buttonholes, message, reply } from '../store/builders.ts';

const isEdit = (n: number): boolean => n % 4 === 3;

/** Every fourth delivery is an edit of the message before it. */
export const deliveryNumber = (n: number): IncomingMessage => {
  const about = isEdit(n) ? n - 1 : n;
  const thread = `t${about % 3}`;
  return isEdit(n)
    ? message(`m${about}`, { thread, kind: 'edit', revision: '2', text: `${about + 1001} lapel pieces` })
    : message(`m${about}`, { thread, text: `${about + 1} lapel pieces` });
};

export const factsOf = ({ text }: IncomingMessage): readonly Fact[] => [buttonholes(Number.parseInt(text, 10))];
export const replyTo = ({ id, text }: IncomingMessage): OutgoingReply[] => [reply(id, text)];

/** What must be stored and shown in the end: for each message its newest wording, once. */
export const expectedOf = (deliveries: number): ReadonlyMap<string, string> => {
  const shown = new Map<string, string>();
  for (let n = 0; n < deliveries; n += 1) shown.set(deliveryNumber(n).id, deliveryNumber(n).text);
  return shown;
};
