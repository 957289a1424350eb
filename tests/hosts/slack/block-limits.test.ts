// Whatever a reply holds, the message stays within Block Kit's limits, and what has no room goes along as a file.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { replyToBlocks } from '../../../src/hosts/slack/reply-to-blocks.ts';
import type { Action, Block, Line, Meaning } from '../../../src/reply/reply.ts';
import { messageFaults } from '../../support/block-kit-limits.ts';

const line = (text: string, meaning: Meaning = 'plain'): Line => [{ text, meaning }];
const shown = (...blocks: Block[]) => {
  const parts = replyToBlocks({ blocks }, 'r1');
  expect(messageFaults(parts)).toEqual([]);
  return { ...parts, json: JSON.stringify(parts.blocks) };
};

const table = (rows: number, columns: number, cell: (row: number, column: number) => string, align: 'left' | 'right' = 'right'): Block => ({
  block: 'table',
  caption: 'All of them',
  columns: Array.from({ length: columns }, (_each, place) => ({ title: `Column ${place + 1}`, align })),
  rows: Array.from({ length: rows }, (_row, row) => Array.from({ length: columns }, (_cell, column) => line(cell(row, column)))),
});

describe('too much for one message', () => {
  test('51 blocks', () => {
    const many = Array.from({ length: 51 }, (_each, place): Block[] => [
      { block: 'line', line: line(`line ${place}`) },
      { block: 'assumed', line: line(`note ${place}`) },
    ]).flat();
    const { blocks, overflow, json } = shown(...many, { block: 'actions', actions: [{ label: 'Undo', action: 'undo', value: 'm1' }] });
    expect(blocks).toHaveLength(50);
    expect(json).toContain('attached text file');
    expect(blocks.at(-1)?.type).toBe('actions');
    expect(overflow).toContain('note 50');
  });

  test('a wide table is Slack’s own, a second one is a list', () => {
    const wide = table(5, 6, (row, column) => `cell ${row} ${column} with words`);
    const { blocks, overflow } = shown(wide, wide);
    expect(blocks.filter(({ type }) => type === 'table')).toHaveLength(1);
    expect(overflow).toBeUndefined();
  });

  test('a wide table of words is a list: it wraps where a phone ends', () => {
    const { blocks, json } = shown(table(3, 3, (row, column) => `words that take room ${row} ${column}`, 'left'));
    expect(blocks.map(({ type }) => type)).toEqual(['rich_text']);
    expect(json).toContain('rich_text_list');
  });

  test.each([
    ['200 narrow rows', table(200, 2, (row, column) => `${row} ${column}`)],
    ['120 wide rows', table(120, 8, (row, column) => `row ${row} column ${column}`)],
    ['10,001 characters', table(10, 5, () => 'x'.repeat(201))],
    ['25 columns', table(3, 25, (row, column) => `${row}.${column}`)],
    ['a cell of 9,000', table(1, 2, () => 'y'.repeat(9_000))],
    ['cells with line breaks', table(2, 2, () => 'a\nb')],
    ['empty cells', table(3, 9, (row) => (row === 0 ? 'some words here' : ''))],
    ['no rows', table(0, 3, () => '')],
  ])('a table of %s', (_what, block) => {
    const { text, overflow, blocks } = shown(block);
    expect(text).not.toBe('');
    if (overflow === undefined) expect(JSON.stringify(blocks).length).toBeLessThan(12_100);
  });

  test('a line of 40 kB, without a space in it', () => {
    const { overflow, text } = shown({ block: 'line', line: line('&'.repeat(40_000)) });
    expect(overflow).toHaveLength(40_000);
    expect(text).toMatch(/^(&amp;)+\nThere is more/);
  });

  test('sixty choices, long labels, ids Slack cannot carry', () => {
    const actions: Action[] = Array.from({ length: 60 }, (_each, place) => ({
      label: `${place} ${'long '.repeat(30)}`,
      action: 'choose',
      value: `c${place}`,
    }));
    const { blocks } = shown(
      { block: 'actions', actions },
      { block: 'actions', actions: [{ label: 'No', action: 'undo', value: 'v'.repeat(2_001) }] },
    );
    expect(blocks.filter(({ type }) => type === 'actions')).toHaveLength(3);
  });
});

const anyLine = fc.array(
  fc.record({
    text: fc.string({ unit: 'binary', maxLength: 60 }),
    meaning: fc.constantFrom<Meaning>('plain', 'strong', 'money', 'assumed', 'quoted'),
  }),
  { maxLength: 4 },
);
const anyBlock: fc.Arbitrary<Block> = fc.oneof(
  anyLine.map((words): Block => ({ block: 'answer', line: words })),
  anyLine.map((words): Block => ({ block: 'assumed', line: words })),
  anyLine.map((words): Block => ({ block: 'caution', line: words })),
  fc.array(anyLine, { maxLength: 30 }).map((items): Block => ({ block: 'list', items })),
  fc
    .tuple(fc.nat(30), fc.nat(22), fc.string({ unit: 'binary', maxLength: 30 }))
    .map(([rows, columns, cell]) => table(rows, columns, () => cell)),
  fc
    .array(fc.string({ maxLength: 100 }), { maxLength: 30 })
    .map((labels): Block => ({ block: 'actions', actions: labels.map((label) => ({ label, action: 'choose', value: label })) })),
);

test('whatever a reply holds, Slack would take it', () => {
  fc.assert(
    fc.property(fc.array(anyBlock, { maxLength: 40 }), (blocks) => {
      expect(messageFaults(replyToBlocks({ blocks }, 'r1'))).toEqual([]);
    }),
    { numRuns: 150 },
  );
});
