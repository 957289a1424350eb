// What a reply looks like in Slack, and that Slack would take it whatever is in it.

import { describe, expect, test } from 'vitest';
import { replyToBlocks } from '../../../src/hosts/slack/reply-to-blocks.ts';
import { stampOf } from '../../../src/hosts/slack/tap-to-message.ts';
import type { Block, Line, Meaning, Reply } from '../../../src/reply/reply.ts';
import { messageFaults } from '../../support/block-kit-limits.ts';

const line = (text: string, meaning: Meaning = 'plain'): Line => [{ text, meaning }];
const shown = (...blocks: Block[]) => {
  const parts = replyToBlocks({ blocks }, 'r1');
  expect(messageFaults(parts)).toEqual([]);
  return { ...parts, json: JSON.stringify(parts.blocks) };
};

const budget: Reply = {
  blocks: [
    {
      block: 'answer',
      line: [
        ...line('40 buttonholes at '),
        ...line('£25.00', 'money'),
        ...line(' leave '),
        ...line('£4.01', 'money'),
        ...line(' each to buy with.'),
      ],
    },
    {
      block: 'table',
      caption: 'Of the price',
      columns: [
        { title: '', align: 'left' },
        { title: 'each', align: 'right' },
        { title: 'for 40', align: 'right' },
      ],
      rows: [
        [line('VAT 20 %'), line('4.17', 'money'), line('166.67', 'money')],
        [line('Labour'), line('4.81', 'money'), line('192.31', 'money')],
        [line('Wholesale'), line('4.01', 'money'), line('160.26', 'money')],
      ],
    },
    { block: 'assumed', line: line('Tax included (your usual), labour 30 % on product.', 'assumed') },
    { block: 'next', line: line('When is the event?') },
    { block: 'actions', actions: [{ label: 'Show working', action: 'show working', value: 't1' }] },
  ],
};

test('a budget reads in one screen: the answer, aligned figures, what was assumed, one button', () => {
  const { blocks } = replyToBlocks(budget, 'r1');
  expect(messageFaults(replyToBlocks(budget, 'r1'))).toEqual([]);
  expect(blocks.map(({ type }) => type)).toEqual(['rich_text', 'rich_text', 'context', 'rich_text', 'actions']);
  const figures = JSON.stringify(blocks[1]);
  expect(figures).toContain('           each  for 40\\nVAT 20 %   4.17  166.67\\nLabour     4.81  192.31\\nWholesale  4.01  160.26');
});

test('the plain text says all of it, a row at a time, for screen readers', () => {
  expect(replyToBlocks(budget, 'r1').text).toBe(
    [
      '40 buttonholes at £25.00 leave £4.01 each to buy with.',
      'Of the price',
      '• VAT 20 %: each 4.17, for 40 166.67',
      '• Labour: each 4.81, for 40 192.31',
      '• Wholesale: each 4.01, for 40 160.26',
      'Tax included (your usual), labour 30 % on product.',
      'When is the event?',
      'Buttons: Show working',
    ].join('\n'),
  );
});

describe('a person’s words come back inert', () => {
  test.each([
    '<!channel>',
    '@here',
    '@everyone',
    '#general',
    '*bold*',
    '_it_',
    '~gone~',
    '`code`',
    '&amp;',
    '<https://example.org|here>',
    ':tulip:',
    '<@U1>',
    '> quote',
  ])('%s', (words) => {
    const blocks: Block[] = (['answer', 'line', 'problem', 'next', 'caution', 'assumed'] as const).map((block) => ({
      block,
      line: line(words, 'quoted'),
    }));
    const { json, text } = shown(...blocks, { block: 'list', title: line(words), items: [line(words, 'quoted')] });
    expect(json).not.toMatch(/mrkdwn|"link"|"user"|"broadcast"|"channel"\}|"emoji":true|"emoji","name/);
    expect(json).toContain(JSON.stringify(words).slice(1, -1));
    expect(text).not.toMatch(/[<>]/);
  });
  test('marks that turn a line’s direction are gone', () => {
    const { json, text } = shown({ block: 'line', line: line('ab\u202e\u2066c\u200f\u061cd', 'quoted') });
    expect(json).toContain('"abcd"');
    expect(text).toBe('abcd');
  });
  test('escaped once, in the top-level text only', () => {
    const { json, text } = shown({ block: 'line', line: line('pins & <tape>') });
    expect(text).toBe('pins &amp; &lt;tape&gt;');
    expect(json).toContain('pins & <tape>');
  });
});

test('a date is asked for with a date picker, which carries the id', () => {
  const { json } = shown({ block: 'actions', actions: [{ label: 'Move the date', action: 'move date', value: 'event 3' }] });
  expect(json).toContain(`"type":"datepicker","action_id":"reply|move date|0|${stampOf('r1')}|event 3"`);
});

test('buttons say by words what they are; colour only adds', () => {
  const { json } = shown({
    block: 'actions',
    actions: [
      { label: 'Made all 12', action: 'made all', value: 'd1', style: 'main' },
      { label: 'Undo', action: 'undo', value: '', style: 'careful' },
    ],
  });
  expect(json).toContain('"style":"primary"');
  expect(json).toContain('"style":"danger"');
});

test('an empty reply still has a text', () => {
  expect(shown().text).toBe('…');
  expect(shown({ block: 'list', items: [] }, { block: 'actions', actions: [] }).blocks).toEqual([]);
});
