// The sample corpus and a second one like it, claim by claim. Every message must be right; a wrong number is never allowed.
// common practice, no source: what each message means is how florists in the named countries write.

import { describe, expect, it } from 'vitest';
import { readMessage } from '../../src/reading/read-message.ts';
import { context } from './support/context.ts';
import { corpusLines } from './support/corpus-files.ts';
import { type CorpusLine, type FieldVerdict, judge, overall, type Verdict } from './support/expectation.ts';

interface Judged {
  readonly line: CorpusLine;
  readonly verdicts: readonly FieldVerdict[];
  readonly verdict: Verdict;
}

const judged = (file: string): Judged[] =>
  corpusLines<CorpusLine>(file).map((line) => {
    const verdicts = judge(line, readMessage(line.text, context));
    return { line, verdicts, verdict: overall(verdicts) };
  });

const columns: readonly Verdict[] = ['right', 'asked', 'missed', 'wrong'];

const report = (file: string, all: readonly Judged[]): string => {
  const rows = new Map<string, Record<Verdict, number>>();
  for (const { verdict, line } of all) {
    const intent = String(line.expect['intent']);
    const row = rows.get(intent) ?? { right: 0, asked: 0, missed: 0, wrong: 0 };
    row[verdict] += 1;
    rows.set(intent, row);
  }
  const lines = [...rows].map(
    ([intent, row]) => `${intent.padEnd(12)}${columns.map((column) => String(row[column]).padStart(8)).join('')}`,
  );
  const share = (100 * all.filter((each) => each.verdict === 'right').length) / all.length;
  return [
    `${file}: ${all.length} messages, ${share.toFixed(1)} % right`,
    `${''.padEnd(12)}${columns.map((column) => column.padStart(8)).join('')}`,
    ...lines,
  ].join('\n');
};

describe.each(['sample.jsonl', 'more.jsonl'])('%s', (file) => {
  const all = judged(file);
  console.log(report(file, all));

  it.each(all.map((each) => [each.line.text, each] as const))('%s', (_, { verdicts }) => {
    expect(verdicts.filter((each) => each.verdict !== 'right')).toEqual([]);
  });

  it('reads no number wrong', () => {
    expect(all.filter((each) => each.verdict === 'wrong').map((each) => each.line.text)).toEqual([]);
  });
});
