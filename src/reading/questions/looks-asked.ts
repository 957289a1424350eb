// Whether a sentence asks: by its question mark, its first words, or a command that asks without either ("buying list").

import { quantity } from '../goods/quantity.ts';
import { anyIn, beginsAt, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { alone, commands } from './commands.ts';
import { tellsNoDay } from './no-such-day.ts';
import { asksOfCare } from './of-care.ts';
import { asksOfFlowers } from './of-flowers.ts';
import { isOpener } from './opener.ts';
import { leadIns } from './opening-words.ts';
import { heads } from './opens-and-tells.ts';
import { withoutRemark } from './remark-if.ts';
import { asksInTime, asksPeople, forLater, ordersByAsking, request } from './requested.ts';
import { shortQuestion } from './short-questions.ts';
import { toldPolitely } from './told-politely.ts';
import { headEnd } from './topic-head.ts';
import { asksForIt } from './where-to.ts';

const anyDue = pattern(
  '(any|anything) <any>{0,2} (jobs|weddings|events|orders|else|due|left|to make|to do|to go|on the bench|outstanding|still|going out|(for|on) (<weekday>|today|tomorrow|tmrw|tomoz|tmr|2moro|tonight|this week|next week|this weekend|the weekend|next weekend|<plain> <month>|<month> <plain>|the <ordinal>|<slashed>)|leaving)',
);

/** Where the telling words begin, past what leads in. */
export const openAt = (reader: Reader, part: Part): number => {
  let index = headEnd(reader, part);
  while (index < part.end && leadIns.has(reader.tokens[index]?.text ?? '') && !isOpener(reader, index, part)) index += 1;
  return index;
};

// "and if it was 18", "if we made it 50?"
const ifAt = (reader: Reader, part: Part, start: number): boolean =>
  reader.tokens[start]?.text === 'if' &&
  (part.asked || /^(and|what|so|but)$/.test(reader.tokens[start - 1]?.text ?? '')) &&
  reader.tokens.slice(start, part.end).some((token) => token.number !== undefined);

// "for 70 bouts how many hours reqd", "gst in or out of that price": the question comes after what it is about.
const inside = [
  '(how many|how much|how long|how far|what time|what date|which day|how may)',
  '(check|know|tell|confirm|see|ask|sure|wondering) (me|us)? (if|whether) <any>',
  "if <any>{1,8} (whats|what's|what|how) <any>",
  "(whats|what's|what is) (left|my|our|it|the) <any>",
  "(whats|what's|what is) (that|this|it) (come to|total|make|altogether|in (<material>)? <piece>)",
  'need to know (what|when|how|if|whether|which|who) <any>',
  '(asked|asks|asking|wants to know|want to know|wonders|wondered|querying) whether <any>',
  '(asked|asks|asking|wonders|wondered) (me|us)? if <any>{1,5} (includes|include|included|has|covers|is|are|was) <any>',
  '(what|which|how many) did (she|he|they|we|i|you|client|bride|the <any>) (say|want|order|ask|tell|agree|settle|decide|go for|end up|have)',
  '(what|how much) (would|will|does|do|is|did) (that|it|this|they|those|all that) (be|come|cost|make|total|look|work|leave|mean|run|add)',
  '<tax> (is|are)? (in|included|inc|incl|on|extra|added|charged|to add) or <any>',
  '(inc|incl|ex|plus) or (inc|ex|plus|not|excl) <tax>',
  '(<included>|in) or (<onTop>|out)',
  '<any> or (not|no) (\\?)?',
  '<any> (is|was) (that|it) (what|right|correct|still|really|too|enough|how|per)',
  "<any> (isn't|isnt|wasn't|wasnt|weren't|werent|aren't|arent|didn't|didnt|hasn't|hasnt) (it|they|we|she|he|that|there)",
  '(got|have we|we got|there|have i) (anything|owt|much|any (jobs|weddings|events|orders)) (else|more)? (on|for|booked|in|due) <any>',
  '(would|will|could) (it|that|they|this|those) (all)? (take|need) (us|me|you|<count> of us|<bench>)? (all|a|the|more|over|under|about|most|half) <any>',
  'any (hope|way|possibility|chance) (of|to|we|you|that|they|for) <any>',
  'if <any>{1,8} (would|will|can|could|do|does|are|is) (we|i|it|they|that|u|you) <any>',
].map((source) => pattern(source));

// "40 bouts at 16 is what"
// "18 crowns is it", "40 was it"
const tagged = pattern("<any> (,|-)? (is|was|were|are|isn't|isnt|wasn't|wasnt|innit) (it|that|they|he|she)");

// "just checking it's 30 bouts": whoever checks asks. "to confirm: 30 bouts" tells.
const checks = pattern(
  "(just|so|hi|hey|only|quickly|,){0,2} (double|re)? (-)? checking (,|:|-)? (that|if|whether)? (it's|its|it is|that's|thats|we|we're|they|she|he|the|is|are|we've|they've|you|<count>)",
);

// "so that's 20 bouts at 12, right", "its 6 crowns yeah"
const said = pattern(
  "(so|ok|and|,|hang on|wait){0,2} (that's|thats|that is|it's|its|it is|it was|that was|we said|you said|they said|she said|we're on|we are on)",
);
const agreed = ({ tokens }: Reader, { start, end }: Part): boolean => {
  const [last, before] = [tokens[end - 1]?.text ?? '', tokens[end - 2]?.text ?? ''];
  if (!tokens.slice(start, end).some((token) => token.number !== undefined)) return false;
  if (/^(right|correct)$/.test(last)) return !/^(all|is|was|are|were|not|the|be|been|far|put|got|exactly|quite|it|that|them)$/.test(before);
  return /^(yeah|yea|yh|aye|innit|eh|huh)$/.test(last) && said.at(tokens, start, end) !== undefined;
};
// "at 13 each what would we get": a price is tried.
const tried = pattern(
  "(so|and|ok|but|,){0,2} (at|with|@) (about|around|only|just|say)? <amount> (<each>|<piece>|<all>|a|an|per|head|piece|,|then|-){0,5} (what|what's|whats|how much|how many) <any>",
);
const asksBehind = /^(what|when|who|which)$/;
const isA = /^(is|are|equals|makes|was|comes to|costs|on|for|by|gets|wears|=)$/;

// "make it 45?" asks politely and still corrects.
const orders =
  /^(make|change|swap|add|drop|update|bump|set|cut|take|knock|remove|move|push|scrap|undo|delete|cancel|sorry|no|not|actually|oops|log|note|put|order)$/;

/** Whether its first telling word asks: what, when, can we… */
export const isOpened = (reader: Reader, part: Part): boolean =>
  isOpener(reader, openAt(reader, part), part) || ifAt(reader, part, openAt(reader, part));

const recipeHead = pattern('(recipe <any>{0,5}|<any>{1,4} recipe (:|-|=)?)');
const counts = (reader: Reader, index: number): boolean =>
  quantity(reader.tokens, index) !== undefined || reader.tokens[index]?.means['ingredient'] !== undefined;

/** Requests ("can you make it 45") are not questions. */
export const looksAsked = (reader: Reader, told: Part): boolean => {
  const part = withoutRemark(reader, told);
  if (asksOfFlowers(reader, part) || asksOfCare(reader, part) || asksForIt(reader, part)) return true;
  const asked = request.in(reader.tokens, part.start, Math.min(part.end, part.start + 6));
  // "how many bouts can you get for 500" requests nothing.
  const requested =
    /^(how|what)$/.test(reader.tokens[part.start]?.text ?? '') && asked !== undefined && asked.start > part.start + 1 ? undefined : asked;
  // "can you check how many are left" asks all the same.
  if (
    requested !== undefined &&
    !asksInTime(reader, part) &&
    !/^(how|what|whats|what's|if|when|whether|who|which)$/.test(reader.tokens[requested.end]?.text ?? '')
  )
    return false;
  if (heads(reader, part)) return false;
  if (ordersByAsking(reader, part) || toldPolitely(reader, part)) return false;
  if (asksPeople(reader, part) || forLater.at(reader.tokens, part.start, part.end) !== undefined) return false;
  // "recipe" or "wearers" above a list heads it; so does "recipe per bout" above its stems.
  if (reader.tokens[part.end]?.kind === 'line' && part.end + 1 < reader.tokens.length)
    if (
      part.end === part.start + 1 ||
      (!part.asked && recipeHead.at(reader.tokens, part.start, part.end)?.end === part.end && counts(reader, part.end + 1))
    )
      return false;
  const start = openAt(reader, part);
  if (
    isOpener(reader, start, part) &&
    (!/^(any|anything|may)$/.test(reader.tokens[start]?.text ?? '') ||
      part.asked ||
      anyDue.at(reader.tokens, start, part.end) !== undefined)
  )
    return true;
  if (ifAt(reader, part, start)) return true;
  if (tried.at(reader.tokens, part.start, part.end) !== undefined) return true;
  if (anyIn(inside, reader.tokens, part.start, part.end)) return true;
  const [last, before] = [reader.tokens[part.end - 1]?.text ?? '', reader.tokens[part.end - 2]?.text ?? ''];
  if (/^(possible|poss|doable|feasible|manageable)$/.test(last) && !/^(if|as|asap|where|when|not|is|be|was|all|any|totally)$/.test(before))
    return part.end - start > 2;
  if (checks.at(reader.tokens, part.start, part.end) !== undefined || agreed(reader, part)) return true;
  if (part.end - start > 2 && tagged.at(reader.tokens, part.end - 3, part.end)?.end === part.end) return true;
  if (asksBehind.test(reader.tokens[part.end - 1]?.text ?? '') && part.end - start > 2 && isA.test(reader.tokens[part.end - 2]?.text ?? ''))
    return true;
  if (shortQuestion(reader, part, start) !== undefined || shortQuestion(reader, part, part.start) !== undefined) return true;
  if (part.asked && tellsNoDay(reader, part)) return false;
  if (part.asked && !orders.test(reader.tokens[part.start]?.text ?? '')) return true;
  if (part.end === part.start + 1 && alone.test(reader.tokens[part.start]?.text ?? '')) return true;
  const whole = (from: number): boolean =>
    beginsAt(commands, reader.tokens, from) &&
    commands.some((command) => {
      const match = command.at(reader.tokens, from, part.end);
      if (match === undefined || part.asked || match.end >= part.end) return match !== undefined;
      // "total R5 600" tells.
      return match.end >= part.end - 2 && !reader.tokens.slice(match.end, part.end).some((token) => token.number !== undefined);
    });
  return whole(start) || (start > part.start && whole(part.start));
};
