// Sentences that open as a question does and tell all the same.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

// "do the 20 bouts at 14", "what a day", "which makes 22", "isn't dried, it's fresh": they open as a question does, and tell.
const verbs =
  /^(need|needs|come|have|go|fit|take|look|get|cost|include|want|pay|charge|start|last|keep|work|count|require|make|still|both|all|ever|add|add up|leave|match|suit|owe|arrive|know|use|match|cover|allow|agree)$/;
const negated = /^(isnt|isn't|arent|aren't|didnt|didn't|wouldnt|wouldn't|cant)$/;
const notDone =
  /^(get|manage|touch|finish|make|do|have|go|start|even|quite|reach|hit|sleep|eat|bother|end|need|want|like|see|hear|know|realise|realize|think|mean)$/;
const cannot = /^(cant|can't|cannot|couldnt|couldn't|wont|won't)$/;
const isDay = ({ tokens }: Reader, index: number): boolean => {
  const at = /^(it|on|this|next|in)$/.test(tokens[index]?.text ?? '') ? index + 1 : index;
  return tokens[at]?.means['weekday'] !== undefined || /^(today|tomorrow|tonight|tmrw|tmr|tomoz)$/.test(tokens[at]?.text ?? '');
};
const didLast = pattern(
  'did (the|my|our) (last|first|final|remaining|other|next) (of)? (the)? <count> (of)? (the|them)? (<material>)? (<piece>)?',
);
const didSome = pattern(
  'did (another|a|quite a|some|just a|only a) (few|couple|handful|bunch|load|bit|lot|more|batch) (more|extra|of)? (<material>)? (<piece>)?',
);
// "did it last tuesday and had a bit of statice left over"; "did it last" asks.
const didThen = pattern(
  'did (it|them|this|that|these|those) (one|ones|lot|batch|all)? (last|on|this)? (<weekday>|week|month|night|yesterday|today) (and|,|so|but|with|-)',
);
const goesOn = /^(,|-|so|and|now|that's|thats|this|today|yesterday|last night|just|then|myself|before|after|but)$/;
export const tells = (reader: Reader, index: number, part: Part): boolean => {
  const [first, second, third] = reader.tokens.slice(index, index + 3).map(({ text }) => text);
  // "didn't finish the crowns, did 4"
  if (!part.asked && /^didn'?t$/.test(first ?? '') && notDone.test(second ?? '')) return true;
  const rest = reader.tokens.slice(index + 2, part.end);
  if (first === 'do' && /^(it|them)$/.test(second ?? '')) return true;
  if (first === 'do' && /^(the|these|those|this)$/.test(second ?? '')) return !rest.some(({ text }) => verbs.test(text));
  if (first === 'what' && /^(a|an)$/.test(second ?? ''))
    return reader.tokens[index + 2]?.means['piece'] === undefined && third !== 'single';
  if (first === 'how' && /^(lovely|nice|great|sweet|exciting|annoying|wonderful|brilliant|funny)$/.test(second ?? '')) return true;
  if (first === 'which' && /^(means|makes|leaves|gives|brings)$/.test(second ?? '')) return true;
  // "we are 4, five hours each on friday"
  if (!part.asked && first === 'are' && /^(we|they|there|you)$/.test(reader.tokens[index - 1]?.text ?? '')) return true;
  // "cant do friday, can do 4 hrs sat"
  if (!part.asked && cannot.test(first ?? '') && /^(do|make|come|work|cover|be)$/.test(second ?? '') && isDay(reader, index + 2))
    return true;
  // "just did my 12th bout", "did all 8 crowns, that's the lot"
  const named = reader.tokens.slice(index + 1, index + 4);
  if (!part.asked && first === 'did' && /^(my|another|our|a|all)$/.test(second ?? '') && !rest.some(({ text }) => verbs.test(text)))
    if (
      second === 'all'
        ? named[1]?.number?.form === 'plain'
        : named.some(({ number, text }) => number?.form === 'ordinal' || /^(first|last)$/.test(text))
    )
      return true;
  // "did a few more after you left so we're on 36"
  if (!part.asked && didThen.at(reader.tokens, index, part.end) !== undefined) return true;
  if (!part.asked && didSome.at(reader.tokens, index, part.end) !== undefined) return true;
  // "did the mums' corsages, 2 of them"
  if (
    !part.asked &&
    first === 'did' &&
    /^(the|our|my|all)$/.test(second ?? '') &&
    rest.some(({ text }, at) => text === 'of' && /^(them|those|em)$/.test(rest[at + 1]?.text ?? ''))
  )
    return true;
  // "did the last 2 corsages so all 12 are done"
  const some = part.asked ? undefined : didLast.at(reader.tokens, index, part.end);
  if (some !== undefined && (some.end === part.end || goesOn.test(reader.tokens[some.end]?.text ?? ''))) return true;
  if (first === 'would' && second === 'you' && third === 'believe') return true;
  const [next] = reader.tokens.slice(index + 1, index + 2);
  return (
    negated.test(first ?? '') && (next?.means['material'] !== undefined || (next?.number !== undefined && !/^would/.test(first ?? '')))
  );
};
// "what's left: 8 bouts", "when: 14 march": what stands before the colon heads what is told.
const headed = pattern(
  "(so|ok|and)? (what|what's|whats|how|when|where|who|who's|whos|which|wearers|wearing|list) <any>{0,4} (:|-|=) <any>",
);
// "who's wearing - groom, best man, 2 ushers"
const whoWears = pattern(
  "(so|ok|and)? (who|who's|whos|who is) (wearing|to wear|wears|getting|gets|having) (what|one|flowers|them|a flower|it|<piece>)? (:|-|=|,) <any>",
);
export const heads = (reader: Reader, part: Part): boolean => {
  const { tokens } = reader;
  const worn = part.asked ? undefined : whoWears.at(tokens, part.start, part.end);
  if (worn !== undefined && tokens.slice(worn.end - 1, part.end).some(({ means }) => means['role'] !== undefined))
    return !tokens.slice(worn.end, part.end).some(({ text }) => text === 'or');
  const match = part.asked ? undefined : headed.at(reader.tokens, part.start, part.end);
  return (
    match !== undefined &&
    reader.tokens
      .slice(match.end - 1, part.end)
      .some((token) => token.number !== undefined || token.means['material'] !== undefined || token.means['role'] !== undefined)
  );
};
