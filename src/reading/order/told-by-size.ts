// Further ones of a kind told apart by their size or by who wears them: "crowns x4 kids 50 each, x2 adults 65 each", "1 big crown 160, 4 small 85".

import { pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';
import { isUnlisted } from '../words/other-things.ts';

const described = pattern(
  '(,|and|&|+|;|:|plus|then|-|n)? (x)? <n:count> (x)? <d:word> (ones|one|versions|size|sized)? (for (the|our|her|his)? (<role>|<owner>))? (at|@|for|-|:)? (<money>|<p:plain>)',
);
const sizes =
  /^(big|bigger|small|smaller|large|larger|chunkier|fuller|grander|showier|dearer|wider|taller|extra|medium|little|mini|tiny|regular|standard|std|normal|plain|simple|fancy|fancier|deluxe|premium|luxe|luxury|full|half|adult|adults|kid|kids|kiddie|child|children|grown up|grownup|grown-up|grown ups|double|single|special|posh|posher|basic|nicer)$/;
const otherKind = /^(pin|pins|pinned|wrist|wrists|comb|clip|hair)$/;
/** Whether a word tells some of a kind from the others: how big they are, or who wears them. */
export const describes = (token: Token | undefined, many: boolean): boolean =>
  token !== undefined &&
  (sizes.test(token.text) ||
    token.means['role'] !== undefined ||
    token.means['owner'] !== undefined ||
    (many && isUnlisted(token) && !otherKind.test(token.text) && !/s$/.test(token.text)));

const tax = ['included', 'onTop', 'taxName', 'taxWord'];

/** The count that stands here with a word that describes it and a price behind. */
export const toldBySize = (tokens: readonly Token[], from: number): { count: Token; countIndex: number; end: number } | undefined => {
  const match = described.at(tokens, from, tokens.length);
  const { n, d, p } = match?.kept ?? {};
  if (match === undefined || n === undefined || d === undefined || !describes(d, Number(n.number?.amount) > 1)) return undefined;
  const after = tokens[match.end];
  const ends = after === undefined || after.kind !== 'word' || ['each', ...tax].some((tag) => after.means[tag] !== undefined);
  if (p !== undefined && (Number(p.number?.amount) < 4 || !ends)) return undefined;
  let end = tokens.indexOf(d, from) + 1;
  while (/^(ones|one|versions|size|sized)$/.test(tokens[end]?.text ?? '')) end += 1;
  return { count: n, countIndex: tokens.indexOf(n, from), end };
};
