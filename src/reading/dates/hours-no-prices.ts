// Numbers behind "at" that are the hour of a day or of an occasion, and no price.

import { firstWhere, type Token } from '../text/token.ts';
import { isOccasion } from '../words/occasion-words.ts';
import { hourOf, ofADay } from './clock-time.ts';

// "finish at 5 not 6 tonight", "i'll be in at 8 not 9": when somebody comes or goes; "crowns came in at 65" prices them.
const comes =
  /^(finish|finishing|finishes|knock off|knocking off|off|leave|leaving|in|home|out|back|here|there|open|opens|close|closes|closing|shut|arrive|arriving|coming|meet|meeting|awake|starting|starts|start|working|free)$/;
const isComing = (tokens: readonly Token[], index: number): boolean =>
  comes.test(tokens[index - 2]?.text ?? '') &&
  tokens[index + 1]?.means['each'] === undefined &&
  !/^(come|comes|came|works|worked|working|quote|price|priced|prices)$/.test(tokens[index - 3]?.text ?? '') &&
  !tokens.slice(Math.max(0, index - 10), index).some(({ means }) => means['piece'] !== undefined);

/** "on thursday at 11": the number here is the hour of a day, and no price. */
export const isHourBehindDay = (tokens: readonly Token[], index: number): boolean => {
  const day = tokens[index - 2];
  return (
    (ofADay(day) || /^(today|tomorrow)$/.test(day?.text ?? '') || isComing(tokens, index)) &&
    /^(at|@)$/.test(tokens[index - 1]?.text ?? '') &&
    tokens[index]?.number?.form === 'plain' &&
    hourOf(tokens[index]) !== undefined
  );
};

/** "at 4 today", "by 10 tomorrow": the number before the day is its hour. */
export const isHourBeforeDay = (tokens: readonly Token[], index: number): boolean =>
  /^(at|@|by|before)$/.test(tokens[index - 1]?.text ?? '') &&
  /^(today|tomorrow|tonight|tmrw|tmr|tomoz|this)$/.test(tokens[index + 1]?.text ?? '') &&
  (tokens[index + 1]?.text !== 'this' || /^(arvo|afternoon|evening|morning)$/.test(tokens[index + 2]?.text ?? '')) &&
  tokens[index]?.number?.form === 'plain' &&
  hourOf(tokens[index]) !== undefined;

// "6 bouts for the first dance at 7": what comes in the course of it. Above twelve a number behind it is more likely a price.
const course =
  /^(dance|dances|speeches|speech|toast|toasts|cutting|photos|photo|photographs|pics|evening|morning|afternoon|brunch|breakfast|lunch|dinner|exit|send off|send-off|drinks|disco|band|buffet|rehearsal|tea|processional|procession|blessing|cocktails|entrance|arrivals|shoot)$/;
// "20 bouts, 10 first thing at 8, 10 after at 2"
const isThing = (tokens: readonly Token[], index: number): boolean =>
  tokens[index]?.text === 'thing' && /^(first|1st)$/.test(tokens[index - 1]?.text ?? '');
const isInCourse = (tokens: readonly Token[], index: number): boolean => {
  if (Number(tokens[index]?.number?.amount) > 12) return false;
  const ahead = tokens[index - 2]?.text ?? '';
  if (course.test(ahead) || isThing(tokens, index - 2)) return true;
  return /^(after|afterwards|later|then)$/.test(ahead) && firstWhere(tokens, 0, index - 2, (_, at) => isThing(tokens, at)) >= 0;
};

/** "wedding at 4, 20 bouts": the hour of an occasion, and no price. */
export const isHourOfOccasion = (tokens: readonly Token[], index: number): boolean =>
  tokens[index]?.number?.form === 'plain' &&
  /^(at|@)$/.test(tokens[index - 1]?.text ?? '') &&
  (isOccasion(tokens[index - 2]?.text ?? '') || /^(service|vows|mass)$/.test(tokens[index - 2]?.text ?? '') || isInCourse(tokens, index)) &&
  hourOf(tokens[index]) !== undefined &&
  tokens[index + 1]?.means['each'] === undefined;

// "the meal afterwards in the boat shed from about five", "drinks from six": what begins at an hour of the day.
const begins =
  /^(meal|meals|food|drinks|drink|doors|door|guests|everyone|everybody|people|folk|band|bar|music|disco|dj|canapes|canapés|buffet|dinner|lunch|breakfast|supper|tea|brunch|speeches|dancing|photos|photographer|photography|photographs|hair|makeup|make-up|ceilidh|fizz|bubbles|prosecco|champagne|cocktails|arrivals|arriving|arrive|reception|evening|afternoon|open|opens|opening|venue|church|service|nibbles|cake|bbq|barbecue|braai|hangi|party|ball|celebrations|festivities|access|setup|set-up|caterers|coffee|mingling)$/;
const about = /^(about|around|roughly|approx|approximately|maybe|say|like)$/;
const furthest = 9; // words between what begins and its hour
const breaks = /^(,|;|:|\(|\)|-|and|with|then|&|plus)$/;
const saysFrom = (token: Token | undefined): boolean =>
  /^(from|starting from|starting|starts|starts from|start|onwards|on from)$/.test(token?.text ?? '');

/** "12 buttonholes, drinks from six": the number behind "from" is when they begin; "from six each" prices. */
export const isHourItBegins = (tokens: readonly Token[], index: number): boolean => {
  const number = tokens[index]?.number;
  if (number?.form !== 'plain' || hourOf(tokens[index]) === undefined) return false;
  const next = tokens[index + 1];
  if (next?.means['each'] !== undefined || next?.means['piece'] !== undefined || /^(a|per|\/|for|quid|plus|inc)$/.test(next?.text ?? ''))
    return false;
  let at = index - 1;
  while (about.test(tokens[at]?.text ?? '')) at -= 1;
  const behind = next?.text === 'onwards' && !saysFrom(tokens[at]);
  if (!behind && !saysFrom(tokens[at])) return false;
  for (let back = behind ? at : at - 1; back >= Math.max(0, at - furthest); back--) {
    const token = tokens[back];
    if (token === undefined || token.kind !== 'word' || token.means['piece'] !== undefined || breaks.test(token.text)) return false;
    if (begins.test(token.text) || isOccasion(token.text)) {
      // "buttonholes for the guests from six" may price them.
      const before = firstBreak(tokens, back);
      return firstWhere(tokens, before, back, ({ means }) => means['piece'] !== undefined) < 0;
    }
  }
  return false;
};
const firstBreak = (tokens: readonly Token[], from: number): number => {
  let at = from;
  while (at > 0 && tokens[at - 1]?.kind === 'word' && !breaks.test(tokens[at - 1]?.text ?? '')) at -= 1;
  return at;
};
