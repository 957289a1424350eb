// The last ones and what they make up: "finished the last three hair flowers, so all eight are packed". Eight are made in all, not eleven.

import type { Unworded } from '../phrase.ts';
import type { Token } from '../text/token.ts';
import type { Group } from './work-together.ts';

const lastWord = /^(last|final|remaining)$/;
type Made = Extract<Unworded, { fact: 'made' }>;

const plain = ({ facts: [fact, second] }: Group): Made | undefined =>
  second === undefined &&
  fact?.fact === 'made' &&
  fact.count !== undefined &&
  fact.of === undefined &&
  fact.stage === undefined &&
  fact.remade !== true
    ? fact
    : undefined;

/** The groups without the last ones where the whole they belong to stands behind them. */
export const withWholeOfLast = (tokens: readonly Token[], groups: readonly Group[]): readonly Group[] => {
  const says = ({ start, end }: Group, word: RegExp): boolean => tokens.slice(start, end).some(({ text }) => word.test(text));
  for (const [at, group] of groups.entries()) {
    const [last, next] = [plain(group), groups[at + 1]];
    const whole = next === undefined ? undefined : plain(next);
    if (last === undefined || next === undefined || whole === undefined || !says(group, lastWord) || says(next, lastWord)) continue;
    const all = whole.all === true || (next.reach === true && says(next, /^all$/));
    const others = whole.piece !== undefined && last.piece !== undefined && whole.piece !== last.piece;
    if (!all || others || (whole.count ?? 0) < (last.count ?? 0)) continue;
    const piece = whole.piece ?? last.piece;
    const fact: Unworded = { ...whole, total: true, all: true, ...(piece === undefined ? {} : { piece }) };
    return [...groups.slice(0, at), { ...next, start: group.start, facts: [fact] }, ...groups.slice(at + 2)];
  }
  return groups;
};
