// "20 bouts at 15 inc, 6 march, asks whether you take cards": what the client asks of other things ends the order like a full stop, and makes no
// question of it. What names pieces, numbers, tax or the order itself ("whether that includes delivery") stays with it.

import { formOf } from '../pattern.ts';
import { namesTax } from './of-tax.ts';
import { isEnd } from './sentence-end.ts';
import { changed, cut, type Token } from './token.ts';

const asker =
  "((the)? (she|he|they|client|customer|bride|groom|planner|mum|mother|couple|venue|hotel|she's|shes|he's|hes|they're|theyre|client's|bride's) (is|are|was|were|has|also|just|then|then also){0,2})";
const asks = '(asks|ask|asking|asked|wants to know|want to know|wanted to know|wonders|wondering|wondered)';
const reported = formOf(`${asker}? (also|just)? ${asks} (me|us)? (also)? (if|whether)`);
const asksAt = formOf(asks); // nobody named who asks
const joint = /^(,|-|\(|and|but|also)$/;
const ofTheOrder =
  /^(it|it's|its|that|that's|thats|this|they|they're|them|these|those|price|prices|total|cost|cheaper|less|more|deposit|discount)$/;

const isOurs = (token: Token): boolean =>
  token.number !== undefined ||
  token.means['piece'] !== undefined ||
  token.means['material'] !== undefined ||
  namesTax(token) ||
  ofTheOrder.test(token.text);
const isOrder = (stretch: readonly Token[]): boolean =>
  stretch.some(({ number }) => number !== undefined) && stretch.some(({ means }) => means['piece'] !== undefined);

// Where in the sentence the asking begins: behind a comma or "and", or at the one who asks.
const askedAt = (tokens: readonly Token[], start: number, end: number): number | undefined => {
  for (let at = start + 2; at < end - 2; at++) {
    const match = reported.at(tokens, at, end);
    if (match === undefined || (!joint.test(tokens[at - 1]?.text ?? '') && asksAt.at(tokens, at, end) !== undefined)) continue;
    return tokens.slice(match.end, end).some(isOurs) || !isOrder(tokens.slice(start, at)) ? undefined : at;
  }
  return undefined;
};

/** The tokens with a full stop before what is asked of other things. */
export const withAskedBehind = (tokens: readonly Token[]): readonly Token[] => {
  if (!tokens.some(({ text }) => text === 'if' || text === 'whether')) return tokens;
  const kept: Token[] = [];
  for (let start = 0; start < tokens.length; ) {
    let end = start;
    while (!isEnd(tokens, end)) end += 1;
    const at = askedAt(tokens, start, end);
    const before = at === undefined ? undefined : (tokens[at - 1] as Token);
    if (at === undefined || before === undefined) kept.push(...tokens.slice(start, end + 1));
    else if (joint.test(before.text))
      kept.push(...tokens.slice(start, at - 1), changed(before, { kind: 'sign', text: '.' }), ...tokens.slice(at, end + 1));
    else
      kept.push(
        ...tokens.slice(start, at),
        cut({ kind: 'sign', text: '.', start: before.end, end: before.end, glued: true }),
        ...tokens.slice(at, end + 1),
      );
    start = end + 1;
  }
  return kept;
};
