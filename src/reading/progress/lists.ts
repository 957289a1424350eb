// Several kinds in one breath: "7 bouts + both corsages are boxed", "made 12 bouts and 3 corsages".

import { type Match, pattern } from '../pattern.ts';
import type { Reader, Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import type { Token } from '../text/token.ts';
import { listEnd } from './counted-forms.ts';
import { amountOf, pieceIn } from './made-facts.ts';

const item = pattern('(and|+|&|,|n|all|the|plus|both|our)? (all|the)? <n:count> (<material>)? <p:piece>');
const bothItem = pattern('(and|+|&|,|n|plus)? both (the)? <p:piece>');
const further = pattern('(,)? (and|+|&|,|n|plus) (the|all|another)? (<n:count>|both|a|all) (more)? (<material>|the)? <p:piece>');

const later = pattern(
  '(and|+|&|,|n|plus|then) (another|then)? <n:count> (more)? (this|after|in the|yesterday|today|before|since|last|tonight|now|over|on|by)',
);

// "completed 7 crowns 9 corsages today": nothing joins them, so only what closes a list may follow.
const unjoined = pattern('<n:count> (<material>)? <p:piece>');
const closes = /^(done|today|now|so|this|and|&|\+|n|ready|boxed|made|finished|tonight|yesterday)$/;

const stillThere = pattern('(on|in) (the|my|our) (bench|benches|go|table|pipeline|works|vice|making)');
const through = /^(through|thru|into|halfway|half)$/;

export interface DoneList {
  readonly match: Match;
  readonly facts: readonly Unworded[];
}

/** Every counted piece before the word that says they are finished; two at least. */
export const listBeforeDone = (reader: Reader, part: Part, free: (index: number) => boolean): DoneList | undefined => {
  const facts: Unworded[] = [];
  let start = part.start;
  let index = part.start;
  while (index < part.end) {
    const match = item.at(reader.tokens, index, part.end) ?? bothItem.at(reader.tokens, index, part.end);
    if (match === undefined || !free(match.end - 1)) {
      if (facts.length > 0) break;
      index += 1;
      continue;
    }
    if (facts.length === 0) start = match.start;
    facts.push({ fact: 'made', count: match.kept['n'] === undefined ? 2 : amountOf(match.kept['n']), ...pieceIn(match) });
    index = match.end;
  }
  // "halfway through 13 crowns, 12 bouts done"
  if (through.test(reader.tokens[start - 1]?.text ?? '') || through.test(reader.tokens[start - 2]?.text ?? '')) return undefined;
  const close = listEnd.at(reader.tokens, index, part.end);
  return facts.length >= 2 && close !== undefined ? { match: { start, end: close.end, kept: {} }, facts } : undefined;
};

const isWhole = (tokens: readonly Token[], match: Match | undefined): boolean =>
  match !== undefined && tokens[match.end - 1]?.text === 'now' && tokens[match.end - 2]?.number !== undefined;

/** What follows a finished count: "… and 3 corsages". */
export const listAfter = (reader: Reader, from: number, end: number): DoneList[] => {
  const lists: DoneList[] = [];
  for (let index = from; index < end; ) {
    const beside = unjoined.at(reader.tokens, index, end);
    const behind = reader.tokens[beside?.end ?? end];
    const plain = beside !== undefined && (beside.end === end || behind?.kind !== 'word' || closes.test(behind.text));
    const match =
      further.at(reader.tokens, index, end) ??
      (plain && reader.tokens[index - 1]?.means['piece'] !== undefined ? beside : undefined) ??
      (lists.length === 0 ? later.in(reader.tokens, index, Math.min(end, index + 6)) : undefined);
    const next = reader.tokens[match?.end ?? end]?.text;
    // "another batch of 6 done, 18 now" is the whole.
    if (match?.kept['p'] === undefined && reader.tokens[match?.start ?? end]?.text === ',' && isWhole(reader.tokens, match)) break;
    // "9 done, 3 on the bench half wired"
    if (stillThere.at(reader.tokens, (match?.end ?? end) - 1, end) !== undefined) break;
    if (match === undefined || /^(left|to|balance|baki|pending|remaining|outstanding)$/.test(next ?? '')) break;
    const words = reader.tokens.slice(match.start, match.end).map((token) => token.text);
    const count = match.kept['n'] === undefined ? (words.includes('both') ? 2 : 1) : amountOf(match.kept['n']);
    lists.push({
      match,
      facts: [words.includes('all') ? { fact: 'made', all: true, ...pieceIn(match) } : { fact: 'made', count, ...pieceIn(match) }],
    });
    index = match.end;
  }
  return lists;
};
