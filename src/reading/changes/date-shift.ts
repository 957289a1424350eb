// The event moved by some days: "pushed back a week", "a day earlier", "they bumped it a fortnight later".

import { type Match, type Pattern, pattern } from '../pattern.ts';
import { isSingle, type Token } from '../text/token.ts';
import { anyOccasion } from '../words/occasion-words.ts';

const shiftForm = pattern(
  `(wedding's|weddings|event's|party's|do's|everything's|thing's|thing|ceremony's|gala's|they've|theyve|preponed|advanced|moved|move|pushed|push|postponed|postpone|delayed|brought|bring|shifted|shift|rescheduled|slid|slipped|bumped|bump|nudged|knocked|put|back|forward|forwards|moving|changed|is|it's|its|now|event|date|wedding|been) (it|the|date|event|wedding|their|that|date's|is|been|has|everything|put|set|back|happening|taking place)? (date|event|wedding|${anyOccasion}|service|one|back|off|forward|forwards|out|on|up|preponed|postponed|moved|pushed|put|set)? (back|off|forward|forwards|out|on|up|by|now)? (by|for|to|a further|another|about|exactly|only|just){0,2} (<d:duration>|a week|exactly a week|a day|a fortnight|a month|one week|one day|week|fortnight|day) (later|earlier|forward|forwards|back|sooner|on|out|early|late)?`,
);

// "a week later", and nothing else
const shiftAlone = pattern(
  "(they've|they have|it's|its|she's|he's|client has|we've)? (gone|moved|going|now|the event is now|the wedding is now|event is now|wedding is now|everything is now|date is now|the date is now|event|wedding|party|date|is|been){0,3} (exactly|just|about|only|to|till|until)? (<d:duration>|a week|a day|a fortnight|one week|one day|day|week|fortnight) (later|earlier|sooner|forward|back) (now|please|pls|than (i|we) (said|told you|thought|put)|than planned|sorry|then)?",
);
// "its the week after now", "moved to the week before"
const weekBeside = pattern(
  "(they've|they have|event|wedding|the event|the wedding|date|the date|it|its|it's|now|moved|pushed|has|is|now|to|for|on|been){1,5} (the)? <w:word> (after|before) (now|instead|please|pls|sorry|then)?",
);
const besideIt = (tokens: readonly Token[], index: number, end: number): Match | undefined => {
  const match = weekBeside.at(tokens, index, end);
  return match?.end === end && /^(week|day)$/.test(match.kept['w']?.text ?? '') ? match : undefined;
};
const bareShift = (tokens: readonly Token[], index: number, end: number): Match | undefined => {
  const match = shiftAlone.at(tokens, index, end);
  const before = tokens[index - 1];
  return match?.end === end &&
    (before === undefined ||
      before.kind === 'line' ||
      /^(,|now|its|it's|is|be|event|wedding|actually|sorry|wedding's|event's|party's|ceremony's|gala's|do's|date's|weddings|party|ceremony|gala|function|do|prom|been|has|was|have|got)$/.test(
        before.text,
      ))
    ? match
    : undefined;
};

const days = (match: Match, tokens: readonly Token[]): number | undefined => {
  const number = match.kept['d']?.number;
  const words = tokens.slice(match.start, match.end).map((token) => token.text);
  if (number !== undefined) {
    const unit = number.unit === 'week' ? 7 : number.unit === 'day' ? 1 : 0;
    return unit === 0 || !isSingle(number) ? undefined : Number(number.amount) * unit;
  }
  if (words.includes('month')) return undefined;
  return words.includes('fortnight') ? 14 : words.includes('week') ? 7 : 1;
};

/** Every form of a move by some days. */
export const shiftForms: readonly Pattern[] = [shiftForm, shiftAlone, weekBeside];

/** The event moved by some days. `direction` is 0 where the words do not say which way. */
export const dateShift = (
  tokens: readonly Token[],
  index: number,
  end: number,
): { match: Match; days: number; direction: -1 | 0 | 1 } | undefined => {
  const match = shiftForm.at(tokens, index, end) ?? bareShift(tokens, index, end);
  const beside = match === undefined ? besideIt(tokens, index, end) : undefined;
  if (beside !== undefined) {
    const words = tokens.slice(beside.start, beside.end).map((token) => token.text);
    return { match: beside, days: words.includes('week') ? 7 : 1, direction: words.includes('after') ? 1 : -1 };
  }
  if (match === undefined) return undefined;
  const by = days(match, tokens);
  const words = tokens.slice(match.start, match.end).map((token) => token.text);
  if (by === undefined || !Number.isInteger(by)) return undefined;
  const putOff = words.includes('put') && words.includes('off');
  // "put off for 2 weeks", "put it off by a fortnight"; "don't put it off" moves nothing.
  if (/^(don't|dont|not|never|can't|cant|won't|wont)$/.test(tokens[match.start - 1]?.text ?? '')) return undefined;
  const moving =
    putOff ||
    words.some((word) =>
      /^(preponed|advanced|moved|move|pushed|push|postponed|postpone|delayed|brought|bring|shifted|shift|slid|slipped|back|forward|forwards|later|earlier|sooner|rescheduled)$/.test(
        word,
      ),
    );
  if (!moving || /^(of|from|on|before|after)$/.test(tokens[match.end]?.text ?? '')) return undefined;
  const earlier = words.some((word) => /^(preponed|advanced|forward|forwards|earlier|brought|bring|sooner|up|early)$/.test(word));
  const later =
    words.some((word) => /^(back|later|pushed|push|postponed|postpone|delayed|slid|slipped|out|late)$/.test(word) || putOff) &&
    !words.some((word) => /^(forward|forwards|earlier|sooner)$/.test(word));
  const direction =
    later && !(earlier && words.some((word) => /^(brought|bring)$/.test(word)) && !words.includes('later')) ? 1 : earlier ? -1 : 0;
  return { match, days: by, direction };
};
