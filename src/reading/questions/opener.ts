// Whether a word opens a question, or only stands where one could: "is tax in there" asks, "is done now" tells.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { namesTax } from '../text/of-tax.ts';
import type { Token } from '../text/token.ts';
import { openers } from './opening-words.ts';
import { tells } from './opens-and-tells.ts';

// "are prices inc gst": a plain word behind "are" is what is asked about; "is done now" and "was meant to be" tell.
const isSubject = (token: Token): boolean =>
  token.kind === 'word' &&
  !/(ed|ing|ly|en)$/.test(token.text) &&
  !/^(done|made|now|not|in|out|up|on|off|down|over|to|for|from|with|at|by|so|too|only|just|still|also|well|due|gone|late|short|ready|plus|inc|incl|ex|set|cut|put|ok|okay|fine|good|great|back|here|no|yes|as|more|less|about|around|some|loads|lots|enough|extra|spare|another|half|most|nearly|almost|meant|told|said|given|sold|sent|paid|left|lost|kept|built|bust|broke|sick|hers|his|mine|ours|theirs|and|or|but|what|your|us|him|them|me)$/.test(
    token.text,
  );

// "was vat on top, now included" puts the tax right.
const takenBack = (reader: Reader, index: number, part: Part): boolean =>
  reader.tokens.slice(index, part.end).some((token) => /^(,|now|not|should|sorry|but)$/.test(token.text));

// "wasn't it 30", "don't they want 12": the pronoun behind it makes it a question.
const doubts =
  /^(wasn't|wasnt|weren't|werent|shouldn't|shouldnt|haven't|havent|hasn't|hasnt|don't|dont|doesn't|doesnt|won't|wont|couldn't|couldnt)$/;
const pronoun = /^(it|that|they|we|there|you|she|he|i|this|these|those)$/;
// "do 40 bouts fit in one box"; "do 40 bouts" is told.
const ofThose = pattern(
  '(do|did|have|had) (the|all|those|these|my|our)? <count> (of)? (the|those)? (<material>)? <piece> (fit|need|take|last|cost|come|go|require|work|look|keep|survive|get|make|count|include|have|arrive|been|gone|ever)',
);
// "do wrist corsages need a box", "do silk ones come in white"; "do crowns first" is told.
const ofAKind = pattern(
  '(do|did|have|had) (the|all|those|these|my|our|any)? (<material>)? (<piece>|<material> ones) (also|ever|usually|always|normally|still|really|all|both)? (fit|need|cost|come|go|require|look|keep|survive|get|include|arrive|been|gone|tend|have to|hold|travel|wilt|want|count)',
);
const joins = /^(and|&|n)$/;
const theOther =
  /^(night|week|weekend|thing|minute|few|mon|tue|tues|wed|thu|thur|thurs|fri|sat|sun|monday|tuesday|wednesday|thursday|friday|saturday|sunday)$/;
// "say we did 40", "let's say they want 12"
const supposes = (reader: Reader, index: number, part: Part): boolean =>
  reader.tokens[index]?.text === 'say' &&
  /^(we|they|she|he|i|it|it's|its|the|client|bride)$/.test(reader.tokens[index + 1]?.text ?? '') &&
  /^(did|do|made|make|want|wanted|had|have|went|go|goes|drop|dropped|cut|add|added|took|take|order|ordered|only|charge|charged|was|were|upped|bumped|bride|client|couple|sold|sell)$/.test(
    reader.tokens[index + 2]?.text ?? '',
  ) &&
  reader.tokens.slice(index, part.end).some((token) => token.number !== undefined);

export const isOpener = (reader: Reader, index: number, part: Part): boolean => {
  const token = reader.tokens[index];
  if (token === undefined || token.kind !== 'word') return false;
  const next = reader.tokens[index + 1];
  if (!part.asked && tells(reader, index, part)) return false;
  const those = ofThose.at(reader.tokens, index, part.end);
  // "did 6 bouts last night" tells.
  if (those !== undefined && !(reader.tokens[those.end - 1]?.text === 'last' && theOther.test(reader.tokens[those.end]?.text ?? '')))
    return true;
  if (!/^(,|-)$/.test(next?.text ?? '') && ofAKind.at(reader.tokens, index, part.end) !== undefined) return true;
  if (doubts.test(token.text) && pronoun.test(next?.text ?? '')) return true;
  if (supposes(reader, index, part)) return true;
  if (!openers.has(token.text)) return false;
  // "we have a crew of 4 in friday" tells.
  if (!part.asked && /^(have|has|had)$/.test(token.text) && /^(we|i|they|you|she|he|it|there)$/.test(reader.tokens[index - 1]?.text ?? ''))
    return false;
  // "can you tell me how many", "do we know when": the real question comes later.
  if (
    /^(do|can|could|would)$/.test(token.text) &&
    /^(you|u|someone|anyone|somebody|anybody)$/.test(next?.text ?? '') &&
    /^(tell|remind|show|know|say|check)$/.test(reader.tokens[index + 2]?.text ?? '')
  )
    return index + 3 >= part.end;
  // "can me and jo get 30 crowns done by 4"
  if (
    /^(can|could|will|would|shall)$/.test(token.text) &&
    /^(me|us)$/.test(next?.text ?? '') &&
    joins.test(reader.tokens[index + 2]?.text ?? '')
  )
    return true;
  if (/^(do|did|have|has|is|are|was|can|could|would|will|should|shall|were|does|am|may)$/.test(token.text)) {
    if (part.asked) return true;
    if (
      next?.number !== undefined ||
      next?.means['piece'] !== undefined ||
      namesTax(next) ||
      next?.means['weekday'] !== undefined ||
      next?.means['material'] !== undefined
    )
      return (
        /^(is|are|will|can|could|does|would|should|shall)$/.test(token.text) ||
        (/^(was|were|did)$/.test(token.text) && namesTax(next) && !takenBack(reader, index, part))
      );
    return (
      next !== undefined &&
      (/^(we|i|you|u|they|it|he|she|the|this|that|there|these|those|my|our|all|anyone|any|it's|everyone|everything|anything|a|an|either|both|her|his|their|ye|yous|y'all|someone)$/.test(
        next.text,
      ) ||
        (/^(is|are|was|were|does|did)$/.test(token.text) && isSubject(next)) ||
        // "does adding 10 push us over"
        (token.text === 'does' && next.kind === 'word'))
    );
  }
  return true;
};
