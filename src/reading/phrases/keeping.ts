// What is kept of an event: having it forgotten, or handed out as a file. The words name the event, so that "forget that" stays an undo.

import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';

const polite = '(please|pls|can you|could you){0,2}';
const event = '(this|the) (whole)? (event|wedding|party|thread|job|conversation)';
const forget = pattern(`${polite} (forget|erase|wipe) (all of|everything about|everything in)? ${event} (please|pls)?`);
const forgetNow = pattern(`${polite} (forget|erase|wipe) (it|${event}) (for good|forever) (please|pls)?`);
const handOut = pattern(`${polite} export (all of|everything about|everything in)? ${event} (please|pls)?`);

const find = (reader: Reader): Finding[] => {
  const [part, another] = reader.untouched();
  if (!part || another) return [];
  const whole = (form: typeof forget): boolean => form.at(reader.tokens, part.start, part.end)?.end === part.end;
  const asks = (fact: { readonly asks: 'forget' | 'export'; readonly all?: true }): Finding[] => [
    found(reader, part.start, part.end, [{ fact: 'question', ...fact }]),
  ];
  if (whole(forgetNow)) return asks({ asks: 'forget', all: true });
  if (whole(forget)) return asks({ asks: 'forget' });
  return whole(handOut) ? asks({ asks: 'export' }) : [];
};

export const keeping: Phrase = { name: 'keeping', examples: ['forget this event', 'export this event'], find };
