// A kind of which none are wanted any more, told under its name: "flower crowns: 0, cancel both, the girls are wearing bows", "crowns: cancelled",
// "cancel both crowns".

import { firstAt, pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { pieceIn } from '../progress/made-facts.ts';
import type { Part } from '../text/message.ts';
import { isSingle } from '../text/token.ts';
import { onlyTalk } from './talk-behind.ts';

const lead = '(ok|so|and|also|sorry|,|please|pls|the|our|her){0,3}';
const off = '(cancel|scrap|drop|ditch|remove|take off|lose|delete|nix|axe|take out)';
const gone =
  '(cancelled|canceled|scrapped|dropped|ditched|removed|deleted|axed|off the order|out|not needed|not wanted|no longer needed|no longer wanted)';
const them = '(all <n:count> (of them)?|<two:word> (of them)?)';
const zero = '(0|zero|nil|none|no more)';
const tail = '(now|please|pls|altogether|completely|entirely|after all|any more|anymore){0,2}';
const forms = [
  `${lead} <p:piece> (:|,|-){1,2} ((down)? (to)? ${zero} (now|,|-|;){0,2})? ${off} ${them} ${tail}`,
  `${lead} <p:piece> (:|,|-){1,2} (all|both|now|are|is){0,2} ${gone} ${tail}`,
  `${lead} ${off} ${them} (the|her|our|of the)? <p:piece> ${tail}`,
].map((source) => pattern(source));
const whole = /^(both|all|them|everything)$/;

export const kindCancelled = (reader: Reader, { start, end, asked }: Part): Finding | undefined => {
  const { tokens } = reader;
  const match = asked ? undefined : firstAt(forms, tokens, start, end);
  if (match === undefined || !onlyTalk(tokens, match.end, end)) return undefined;
  const { n, two, p } = match.kept;
  const { piece } = pieceIn(match);
  if (piece === undefined || (two !== undefined && !whole.test(two.text)) || (n !== undefined && !isSingle(n.number))) return undefined;
  // "cancel both": there were two of them.
  const from = two?.text === 'both' ? 2 : n === undefined ? undefined : Number(n.number?.amount);
  const several = /[^s]s$/.test(p?.text ?? '') || from !== undefined;
  if (!several) return undefined; // "crown: cancelled" may be one of several
  return found(reader, start, end, [{ fact: 'change', what: 'count', to: 0, ...(from === undefined ? {} : { from }), piece }]);
};
