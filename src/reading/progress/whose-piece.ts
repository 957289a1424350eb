// "groom's bout done", "the bride's crown snapped, remade it": the one piece of one wearer, and not all of its kind.

import { firstAt, type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import { kindOf } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isPlural } from '../wearers/role-counts.ts';
import { doneWord } from './done-words.ts';
import { goneWrong, lossDone } from './losses.ts';

const opens = '(ok|right|so|and|update|oh|no|ugh|argh|damn|sorry|just|we|i|,|-){0,3}';
const whose = "(the|my|our)? (<o:owner>|<o:role> ('s|s)?|<w:word>) (<material>)? <p:piece>";
const be = "(is|'s|are|has|has been|been|all|now|just|got|was|have){0,2}";
const ends = '(now|today|too|already|at last|finally|yay|as well|,|!){0,2}';
const made = pattern(`${opens} ${whose} ${be} (${doneWord}) ${ends}`);
const broke = [`${opens} ${whose} ${be} (${goneWrong}) (in the <word>|overnight)?`, `${opens} (${lossDone}) ${whose}`].map((source) =>
  pattern(source),
);
const again = pattern(
  '(,|-|but|and|so|now){0,3} (i|we)? (have|just)? (remade|redid|rebuilt|fixed|redone|rewired|remaking|replaced|mended) (it|that|one|another)?',
);

// "groom's bout done, bride's crown left": with more pieces behind it, the sentence is left alone.
const beside = ({ tokens }: Reader, from: number, end: number): Finding[] | undefined =>
  tokens.slice(from, end).some(({ means, text }) => means['piece'] !== undefined || /^(others|more|rest)$/.test(text))
    ? [{ start: from, end, held: true }]
    : undefined;

const one = ({ kept: { o, p, w } }: Match): boolean => {
  // "mums corsages": how many is not said; "crown's done" has no owner.
  if (p === undefined || /[^s]s$/.test(p.text)) return false;
  return o === undefined ? /[a-z]'s$/.test(w?.text ?? '') : o.means['owner'] !== undefined || !isPlural(o.text);
};

const findIn = (reader: Reader, { start, end, asked }: Part): Finding[] => {
  const { tokens } = reader;
  if (asked) return [];
  const done = made.at(tokens, start, end);
  if (done !== undefined && one(done))
    return (beside(reader, done.end, end) ?? [found(reader, start, done.end, [{ fact: 'made', count: 1, ...kindOf(done.kept['p']) }])]).map(
      (finding) => (finding.held === true ? { ...finding, start } : finding),
    );
  const lost = firstAt(broke, tokens, start, end);
  if (lost === undefined || !one(lost)) return [];
  const kind = kindOf(lost.kept['p']);
  const facts: Unworded[] = [{ fact: 'broke', count: 1, ...kind }];
  const remade = again.at(tokens, lost.end, end);
  if (remade?.end === end) facts.push({ fact: 'made', count: 1, remade: true, ...kind });
  const read = remade?.end === end ? end : lost.end;
  return (beside(reader, read, end) ?? [found(reader, start, read, facts)]).map((finding) =>
    finding.held === true ? { ...finding, start } : finding,
  );
};

export const whosePiece = (reader: Reader): Finding[] =>
  made.might(reader.tokens) || broke.some((form) => form.might(reader.tokens))
    ? reader.untouched().flatMap((part) => findIn(reader, part))
    : [];
