// The steps of the work as headings, each with its count: "wired: 20 taped: 12 boxed: 8". The number belongs to the word before it.

import { pattern } from '../pattern.ts';
import type { Unworded } from '../phrase.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { kindOf } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice } from '../text/token.ts';
import { doneWord, stageOf, stageWord } from './done-words.ts';
import { stillToDo } from './losses.ts';
import { amountOf } from './made-facts.ts';

const head = pattern('(ok|so|update|,|the|our){0,2} <p:piece> (:|-|,)?');
const item = pattern(`(,|and|-|&)? (<w:word>) (:|=) (x)? <n:count>`);
const wordsOf = (list: string): ReadonlySet<string> => new Set(list.split('|'));
const [stages, done, left] = [wordsOf(stageWord), wordsOf(doneWord), wordsOf(stillToDo)];

const listIn = (reader: Reader, { start, end, asked }: Part): Finding | undefined => {
  const { tokens } = reader;
  if (asked) return undefined;
  const kind = head.at(tokens, start, end);
  const facts: Unworded[] = [];
  let index = kind?.end ?? start;
  const piece = kindOf(kind?.kept['p']);
  for (let match = item.at(tokens, index, end); match !== undefined; match = item.at(tokens, index, end)) {
    const { w, n } = match.kept;
    const word = w?.text ?? '';
    if (isRangeOrChoice(n?.number)) return undefined;
    const count = amountOf(n);
    if (stages.has(word)) facts.push({ fact: 'made', count, stage: stageOf(word), ...piece });
    else if (done.has(word)) facts.push({ fact: 'made', count, ...piece });
    else if (left.has(word)) facts.push({ fact: 'left', count, ...piece });
    else return undefined;
    index = match.end;
  }
  return index === end && facts.length > 1 && facts.some((fact) => fact.fact === 'made') ? found(reader, start, end, facts) : undefined;
};

export const stagesListed = (reader: Reader): Finding[] =>
  item.might(reader.tokens) ? reader.untouched().flatMap((part) => listIn(reader, part) ?? []) : [];
