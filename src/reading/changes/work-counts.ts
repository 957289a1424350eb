// Corrections of what is made or broke: "I said 15 finished but it's 13", "only 2 broke not 3".

import { pattern } from '../pattern.ts';
import type { Reader, Unworded } from '../phrase.ts';
import { didWord, doneWord } from '../progress/done-words.ts';
import { lossWords } from '../progress/losses.ts';
import { ofKind } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isCount, isSingle } from '../text/token.ts';
import { inZones, type Zones } from './two-zones.ts';

const doneAfter = pattern(
  `<n:count> (of)? (them|those|these|em|the|my|our|your)? (<material>)? (<p:piece>|ones)? (were|was|are|is|have been|actually|really|properly){0,2} (${doneWord})`,
);
const doneBefore = pattern(`(${didWord}) (only|just)? <n:count>`);

const madeWord = /^(made|did|finished|completed|boxed|done)$/;
// "only 2 broke not 3"
export const brokeChange = (reader: Reader, part: Part, zones: Zones): Unworded[] | undefined => {
  const stretch = reader.tokens.slice(part.start, part.end);
  // "only made 9 not 19 and one is broken": the two numbers are of what is made.
  if (stretch.some((token) => madeWord.test(token.text))) return undefined;
  const numbers = stretch.flatMap((token, offset) => (isCount(token) ? [part.start + offset] : []));
  const [fresh, second] = numbers.filter((index) => inZones(zones.fresh, index));
  const old = numbers.find((index) => inZones(zones.old, index));
  if (!stretch.some((token) => lossWords.has(token.text)) || fresh === undefined || second !== undefined || old === undefined)
    return undefined;
  const piece = stretch.find((token) => token.means['piece'] !== undefined)?.means['piece'];
  return [
    {
      fact: 'change',
      what: 'broke',
      to: Number(reader.tokens[fresh]?.number?.amount),
      ...(isSingle(reader.tokens[old]?.number) ? { from: Number(reader.tokens[old]?.number?.amount) } : {}),
      ...ofKind(piece),
    },
  ];
};

/** Whether what is taken back is not the work: it is left to be read as it stands, or held where that is unsure. */
export const notOfWork = (reader: Reader, part: Part, zones: Zones): 'as it stands' | 'unsure' | undefined => {
  const { tokens } = reader;
  const numbers = tokens.slice(part.start, part.end).flatMap((token, offset) => (token.number === undefined ? [] : [part.start + offset]));
  const old = numbers.find((index) => inZones(zones.old, index));
  const match = doneAfter.in(tokens, part.start, part.end) ?? doneBefore.in(tokens, part.start, part.end);
  const made = match?.kept['n'] === undefined ? -1 : tokens.indexOf(match.kept['n'], match.start);
  if (made < 0 || zones.old.length === 0) return undefined;
  if (old === undefined) {
    // "12 done not the corsages tho": another kind, and no number is taken back.
    const kind = tokens.some(({ means }, index) => inZones(zones.old, index) && means['piece'] !== undefined);
    return kind ? 'as it stands' : undefined;
  }
  // "12 bouts done sorry, corsages tomorrow": no other number is given.
  if (old === made && numbers.length === 1) return 'as it stands';
  // "did 14 lapels, i start at 8 now not 9": another number stands between, or it is an hour.
  if (made >= old) return undefined;
  const between = numbers.some((index) => index > made && index < old && inZones(zones.fresh, index));
  return between || tokens[old]?.number?.form === 'time' ? 'unsure' : undefined;
};

export const madeChange = (reader: Reader, part: Part, zones: Zones): Unworded[] => {
  const match = doneAfter.in(reader.tokens, part.start, part.end) ?? doneBefore.in(reader.tokens, part.start, part.end);
  if (match?.kept['n'] === undefined) return [];
  const at = reader.tokens.indexOf(match.kept['n'], match.start);
  const numbers = reader.tokens.slice(part.start, part.end).flatMap((token, offset) => (isCount(token) ? [part.start + offset] : []));
  const fresh = numbers.find((index) => inZones(zones.fresh, index));
  const old = numbers.find((index) => inZones(zones.old, index));
  const to = reader.tokens[inZones(zones.fresh, at) ? at : (fresh ?? at)]?.number?.amount;
  const was = old === undefined ? undefined : reader.tokens[old]?.number;
  const piece = match.kept['p']?.means['piece'];
  return [
    {
      fact: 'change',
      what: 'made',
      to: Number(to),
      ...(isSingle(was) ? { from: Number(was.amount) } : {}),
      ...ofKind(piece),
    },
  ];
};
