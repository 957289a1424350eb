// Our reader beside what general-purpose libraries find in the same messages: time for a message, and the share of dates, prices and counts found.
// The libraries are judged kindly: a figure counts as found when it is anywhere among what they return, for they don't say whose it is.

import recognizers from '@microsoft/recognizers-text-suite';
import { en } from 'chrono-node';
import type { FactName, FactOf } from '../../src/reading/fact.ts';
import { readMessage } from '../../src/reading/read-message.ts';
import { context } from '../reading/support/context.ts';
import { corpusLines } from '../reading/support/corpus-files.ts';
import { median, ms, type Row, timed } from './measure.ts';

interface Line {
  readonly text: string;
  readonly expect: {
    readonly date?: string | null;
    readonly unitPrice?: number;
    readonly totalPrice?: number;
    readonly pieces?: readonly { readonly count: number | null }[];
  };
}

interface Found {
  readonly dates: readonly string[];
  readonly prices?: readonly number[];
  readonly counts?: readonly number[];
}

const corpus = ['sample.jsonl', 'more.jsonl'].flatMap((name) => corpusLines<Line>(name));

const culture = 'en-gb';
const today = new Date(2027, 0, 20, 12);

const withChrono = (text: string): Found => ({
  dates: en.GB.parse(text, today, { forwardDate: true }).map(({ start }) =>
    [start.get('year'), start.get('month'), start.get('day')].map((part) => String(part).padStart(2, '0')).join('-'),
  ),
});

const figures = (found: readonly { readonly resolution: Record<string, unknown> | null }[]): number[] =>
  found.map(({ resolution }) => Number(resolution?.['value']));

const withRecogniser = (text: string): Found => ({
  dates: recognizers
    .recognizeDateTime(text, culture, recognizers.DateTimeOptions.None, today)
    .flatMap(({ resolution }) =>
      ((resolution?.['values'] ?? []) as { value?: string }[]).flatMap(({ value }) => (value === undefined ? [] : [value.slice(0, 10)])),
    ),
  prices: figures(recognizers.recognizeCurrency(text, culture)),
  counts: figures(recognizers.recognizeNumber(text, culture)),
});

const withOurs = (text: string): Found => {
  const { facts } = readMessage(text, context);
  const of = <N extends FactName>(name: N): FactOf<N>[] => facts.filter((fact): fact is FactOf<N> => fact.fact === name);
  const [pieces, changes] = [of('pieces'), of('change')];
  const to = (what: FactOf<'change'>['what']): string[] => changes.flatMap((change) => (change.what === what ? [String(change.to)] : []));
  return {
    dates: [
      ...of('date').map(({ date }) => date),
      ...of('crew').flatMap(({ date }) => date ?? []),
      ...of('question').flatMap(({ date }) => date ?? []),
      ...to('date'),
    ],
    prices: [
      ...of('price').map(({ amount }) => Number(amount)),
      ...pieces.flatMap(({ price }) => (price === undefined ? [] : [Number(price.amount)])),
      ...to('price').map(Number),
    ],
    counts: [...pieces.map(({ count }) => count), ...to('count').map(Number)],
  };
};

const wanted: Readonly<Record<'dates' | 'prices' | 'counts', (line: Line) => readonly (string | number)[]>> = {
  dates: ({ expect }) => (expect.date ? [expect.date] : []),
  prices: ({ expect }) => [expect.unitPrice ?? expect.totalPrice ?? []].flat(),
  counts: ({ expect }) => (expect.pieces ?? []).flatMap(({ count }) => (count ? [count] : [])),
};

const share = (read: (text: string) => Found, what: 'dates' | 'prices' | 'counts'): string => {
  const lines = corpus.filter((line) => wanted[what](line).length > 0);
  const right = lines.filter((line) => {
    const found: readonly (string | number)[] = read(line.text)[what] ?? [];
    return wanted[what](line).every((value) => found.includes(value));
  });
  return `${right.length} of ${lines.length} ${what}`;
};

const measure = (name: string, read: (text: string) => Found, whats: readonly ('dates' | 'prices' | 'counts')[]): readonly Row[] => {
  for (const { text } of corpus) read(text);
  const { clock } = timed(corpus.length, (n) => void read(corpus[n]?.text ?? ''));
  return [
    { what: `reading a message: ${name}`, measured: ms(median(clock)) },
    { what: `found in ${corpus.length} messages: ${name}`, measured: whats.map((what) => share(read, what)).join(', ') },
  ];
};

export const reading = (): readonly Row[] => [
  ...measure('ours', withOurs, ['dates', 'prices', 'counts']),
  ...measure('chrono-node alone', withChrono, ['dates']),
  ...measure('a general-purpose recogniser', withRecogniser, ['dates', 'prices', 'counts']),
];
