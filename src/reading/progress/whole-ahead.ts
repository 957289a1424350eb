// How many there are to be, ahead of those that are finished: "total 50, 42 ready". "total 50, 8 today" tells what there is by now.

import type { Fact, FactOf } from '../fact.ts';
import { firstAt, type Match, pattern } from '../pattern.ts';
import type { Finding, Reader } from '../phrase.ts';
import { isSingle, type Token } from '../text/token.ts';
import { amountOf, pieceIn } from './made-facts.ts';

const some = '(nos|pcs|pieces|<p:piece>)?';
const whole = '(total|<all>)';
const then = '(,|:|;|-|of which|of these|of those|and|&){0,2}';
export const wholeOpens = [
  pattern(`(full|grand)? total (order|of|is|:|=|-|qty){0,2} <m:count> ${some} ${then}`),
  pattern(`<m:count> ${some} ${whole} ${then}`),
];
const finished = pattern(
  '(made|did|done|finished|completed)? <n:count> (nos|pcs|pieces|of them|<piece>)? (are|is)? (done|made|finished|ready|completed|complete)',
);
const newly = /^(today|tonight|just|more|another|extra|new|since|again|yesterday|morning|afternoon|lunch)$/;

/** The whole that begins here, where a count that is finished, no greater and not newly made, stands right behind it. */
export const wholeAhead = (tokens: readonly Token[], index: number, end: number): Match | undefined => {
  const match = firstAt(wholeOpens, tokens, index, end);
  const number = match === undefined ? undefined : finished.at(tokens, match.end, end)?.kept['n']?.number;
  if (match === undefined || !isSingle(number) || Number(number.amount) > Number(match.kept['m']?.number?.amount)) return undefined;
  return tokens.slice(match.end, end).some(({ text }) => newly.test(text)) ? undefined : match;
};

const behind = pattern(
  `<n:count> ${some} (are|is)? (done|made|finished|ready|completed|complete) (so far|already|now)? ${then} ((full|grand)? total (order|of|is|:|=|-|qty){0,2} <m:count> ${some}|<m:count> ${some} ${whole})`,
);
/** "42 done, total 50", where the second is what there is to be or what there is by now. */
export const wholeBehind = (tokens: readonly Token[], start: number, end: number): Match | undefined => {
  const match = behind.in(tokens, start, end);
  const [part, all] = [match?.kept['n']?.number, match?.kept['m']?.number];
  if (match?.end !== end || !isSingle(part) || !isSingle(all) || Number(part.amount) >= Number(all.amount)) return undefined;
  return tokens.slice(start, end).some(({ text }) => newly.test(text)) ? undefined : match;
};

/** Which of the two it is, asked. */
export const askWhichWhole = ({ words }: Reader, match: Match): Finding => {
  const { start, end, kept } = match;
  const said = words(start, end);
  const [count, of] = [amountOf(kept['n'] as Token), amountOf(kept['m'] as Token)];
  const made = (fact: Partial<FactOf<'made'>>): Fact => ({ fact: 'made', total: true, ...pieceIn(match), ...fact, words: said });
  return {
    start,
    end,
    asks: [
      {
        about: 'made',
        why: 'low or high',
        words: said,
        choices: [
          { words: `${count} of ${of} made`, facts: [made({ count, of })] },
          { words: `${of} made`, facts: [made({ count: of })] },
        ],
      },
    ],
  };
};
