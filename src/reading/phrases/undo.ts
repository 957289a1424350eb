// Taking back the last message: "undo", "scrap that", "ignore the last one"; and asking for help.

import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';

const wholeUndo = pattern(
  "(sorry|oops|no|nah|nope|nvm|nevermind|never mind|hmm|ok|pls|please|actually|ah|wait|,|-|no wait|whoops|eish|argh|ugh|oh|can you){0,5} (undo|scrap|scratch|ignore|forget|disregard|delete|cancel|strike|bin|drop|remove|take back|never|nevermind|nvm|revert|reverse|take|retract) (those|them|that last msg|the last msg|my last msg|that last one|that last bit|that last message|that last thing|that last line|the last one|the last message|the last bit|that|this|it|last|the last|the last one|the last message|my last|my last message|last one|last message|last bit|that last one|that last bit|all that|what i said|what i just said|that one|the last bit|that back|mind|previous|last entry|the last entry|last thing|the last thing|i said that|me|what i just (put|sent|wrote|typed) (in)?|what i (put|sent|wrote|typed) (in)?|(that|the)? last (one|message|thing|bit) i (sent|put|wrote|typed) (in)?)? (back)? (please|pls|sorry|one|last|msg|message|bit|lot|of|mine|,|entry|update|post|plz|ta|thanks|i said that|wrong|thread|wrong thread|number|was|wedding|event|job|chat|channel|that's|thats|for|meant|different|another|it|the|a|i|sent|put|in|typed|wrote|just){0,8}",
);
const wrongThread = pattern(
  '(sorry|oops|,|ignore|that was|whoops|ah|this is|posted in){0,3} (wrong|the wrong) (thread|event|wedding|chat|channel|job|one) (sorry|,|ignore|that|please|delete|scrap|undo|remove|bin|it){0,4}',
);
const byMistake = pattern(
  '((that|the|my) (last)? (message|one|line|bit|entry|post)? (was|is) (a|an|my|all)? (mistake|error|wrong|mistyped|accident|slip)|(sent|posted|typed|put|wrote|entered) (that|it|this|the last one|that last one|that in|it in) (here)? (by (mistake|accident)|in (error|the wrong (thread|place|chat|channel))|accidentally)|(roll|wind|take|put) (that|it|the last one|that last one) back|(that|this|it) (was|is) (meant)? for (another|a different|the other|some other) (event|wedding|job|party|thread|client|one)|go back (one|a step)) (sorry|,|-|ignore|it|that|please|undo|delete|scrap|pls|me){0,4}',
);
// "didnt mean to log that", "oops logged that twice": one of the two comes off.
const notMeant = pattern(
  "(sorry|oops|whoops|ooops|ah|ugh|oh|,|-|ok){0,3} ((i|we)? (didn't|didnt|did not|never) (mean|meant) to (log|send|post|put|type|enter|add|say|write|record) (that|it|this|the last one|that last one|that last bit) (in|there|here)?|(i|i've|ive|we|think i)? (sent|posted|logged|entered|typed) (that|it|the last one|that last one) twice (by mistake|by accident|accidentally|there)?|(put|set|change|turn) (it|that|everything) back (to)? (how|as|the way|like|what) it was (before)?) (sorry|oops|lol|please|pls|,){0,2}",
);
const wholeHelp = pattern('(help|commands|options|menu) (me|please|pls)?');
const afterGreeting = pattern('(what can you do|what can i say|what can i ask|how do you work|how does this work|how do i use (you|this))');

// "undo that last one pls": the word itself is plain enough, if no new value follows.
const plainUndo = (reader: Reader, start: number, end: number): boolean =>
  reader.tokens[start]?.text === 'undo' && end - start <= 7 && !reader.tokens.slice(start, end).some((token) => token.number !== undefined);

// "ignore my last one i counted wrong": a reason tells of no other number, day or kind.
const reason = pattern(
  "(,|-)? (sorry|soz|oops|it|it's|its|that|that's|thats|cos|because|coz|cause|as|since|,|-){0,3} (i|i'd|i've|ive|id|we|we'd|was|were|is|had|miscounted|misread|mistyped|counted|typed|wrong|fat|got|looking|looked|someone|my|not)",
);
const lastOne = /^(last|previous|that|what)$/;
const opensReason = /^(i|i'd|i've|ive|id|it|it's|its|was|cos|because|coz|as|since|,|-|miscounted|misread|mistyped|that's|thats|sorry)$/;
const withReason = ({ tokens }: Reader, { start, end }: { readonly start: number; readonly end: number }): boolean => {
  const match = end - start > 20 ? undefined : wholeUndo.at(tokens, start, end);
  if (match === undefined) return false;
  // What the undoing swallowed of the reason ("i", "it") is no part of what is undone.
  const part = tokens.slice(start, end);
  const undone = part.findIndex(({ text }, at) => at < 8 && lastOne.test(text));
  const from = start + part.findIndex(({ text }, at) => at > Math.max(1, undone) && opensReason.test(text));
  if (undone < 0 || from < start || from > match.end || reason.at(tokens, from, end) === undefined) return false;
  return tokens
    .slice(from, end)
    .every(
      ({ number, means, text }) =>
        number === undefined &&
        means['piece'] === undefined &&
        means['weekday'] === undefined &&
        means['month'] === undefined &&
        !/^(for|should|not|meant|but|tomorrow|today|instead|make)$/.test(text),
    );
};

const otherMatter = pattern(
  "(sorry|oops|,|please|pls|ok){0,2} (ignore|disregard|scrap|forget|delete|scratch|undo) (my|the|that)? last (one|message|msg|post|line|bit)? (,|-)? (it's|its|it was|it|was|that's|thats|that was|is){1,2} (for|meant for|about|from) <any>{0,8}",
);

// "20 done, undo that", "20 bouts at 12. undo that": what is taken back is what was just said, so none of it is read.
const takenBack = pattern(
  '(,|-|\\.)? (sorry|oops|no|nah|nope|ok|actually|ah|wait|,|-|no wait|whoops|argh|ugh){0,3} ((undo|scrap|scratch|ignore|forget|disregard|delete|strike) (what i just said|all that|that|this|it)|take (that|it|this) back|undo) (pls|please|sorry|,|lol){0,3}',
);
const longestTakenBack = 16; // tokens
const excuse = /^(wrong|wrongly|mistake|miscounted|mistyped|cancelled|changed|meant|not|should|instead|was|were|last|previous)$/;
const undoFirst = pattern(
  '(sorry|oops|no|ok|pls|please){0,2} undo (that last one|that|this|it|the last one|last one|the last|last) (pls|please|sorry)? (,|-|then|and)',
);
const takenBackAtOnce = (reader: Reader): Finding | undefined => {
  const { tokens } = reader;
  const end = tokens.length;
  for (
    let index = takenBack.next(tokens, Math.max(1, end - longestTakenBack), end);
    index < end;
    index = takenBack.next(tokens, index + 1, end)
  ) {
    if (takenBack.at(tokens, index, end)?.end !== end) continue;
    const before = tokens.slice(0, index);
    return before.some(({ number }) => number?.form === 'plain' || number?.form === 'slashed') &&
      !before.some(({ text }) => excuse.test(text))
      ? { start: 0, end, held: true }
      : undefined;
  }
  return undefined;
};

const find = (reader: Reader): Finding[] => {
  const atOnce = takenBackAtOnce(reader);
  if (atOnce !== undefined) return [atOnce];
  const findings: Finding[] = [];
  // "undo that, 20 done": the message before, and then what is new.
  const first = undoFirst.at(reader.tokens, 0, reader.tokens.length);
  if (first !== undefined && first.end < reader.tokens.length) findings.push(found(reader, 0, first.end, [{ fact: 'undo' }]));
  for (const part of first === undefined ? reader.untouched() : []) {
    for (const form of [wholeUndo, wrongThread, byMistake, notMeant]) {
      const match = form.at(reader.tokens, part.start, part.end);
      const why = form === wholeUndo && withReason(reader, part);
      if ((match?.end !== part.end && !why && !plainUndo(reader, part.start, part.end)) || findings.length > 0) continue;
      const words = reader.tokens.slice(part.start, part.end).map((token) => token.text);
      if ((words.length === 1 && !/^(undo|nevermind|nvm|revert|scratch|disregard)$/.test(words[0] ?? '')) || words.join(' ') === 'take it')
        continue;
      if (/^(cancel|delete|bin|drop|remove)$/.test(words[0] ?? '') && !words.some((word) => /^(that|last|previous|what)$/.test(word)))
        continue;
      if (words[0] === 'take' && !words.includes('back')) continue;
      if (words[0] === 'never' && words[1] !== 'mind') continue;
      findings.push(found(reader, part.start, part.end, [{ fact: 'undo' }]));
    }
    // "ignore my last one its for tomorrow": the day is none of this event's.
    const other = findings.length === 0 ? otherMatter.at(reader.tokens, part.start, part.end) : undefined;
    if (other !== undefined) findings.push({ start: part.start, end: part.end, held: true });
    const help = wholeHelp.at(reader.tokens, part.start, part.end);
    const asked = afterGreeting.in(reader.tokens, part.start, part.end);
    if (help?.end === part.end || asked !== undefined)
      findings.push(found(reader, part.start, part.end, [{ fact: 'question', asks: 'help' }]));
  }
  return findings;
};

export const undo: Phrase = { name: 'undo', examples: ['undo', 'scrap that', 'help'], find };
