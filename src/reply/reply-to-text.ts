// A reply as plain text: what the terminal prints, what a screen reader is given, what the JSON lines carry. Says everything the reply says.

import type { Action, Block, Column, Line, Reply } from './reply.ts';

export const lineToText = (line: Line): string => line.map((span) => span.text).join('');

/** The whole reply, blocks apart by a blank line only where the eye needs one. No trailing space, no marks. */
export const replyToText = (reply: Reply): string => {
  let text = '';
  let before: Block['block'] | undefined;
  for (const block of reply.blocks) {
    const lines = blockToText(block);
    if (lines === '') continue;
    text += before === undefined ? lines : `${apart(before, block.block) ? '\n\n' : '\n'}${lines}`;
    before = block.block;
  }
  return text;
};

/** Small print keeps together and so do plain lines; tables and lists stand apart. */
const apart = (before: Block['block'], next: Block['block']): boolean =>
  [before, next].some((kind) => kind === 'table' || kind === 'list') || (next === 'next' && before !== 'next');

const blockToText = (block: Block): string => {
  switch (block.block) {
    case 'answer':
    case 'line':
    case 'assumed':
    case 'problem':
    case 'next':
      return lineToText(block.line);
    case 'caution':
      return `Take care: ${lineToText(block.line)}`;
    case 'list':
      return [...(block.title ? [lineToText(block.title)] : []), ...block.items.map((item) => `- ${lineToText(item)}`)].join('\n');
    case 'table':
      return tableToText(block.columns, block.rows);
    case 'actions':
      return choicesToText(block.actions);
    case 'file':
      return `[${block.file.name}] ${block.file.alt}`;
  }
};

/** Only choices need saying: every other button has words that can be typed, and help lists them. */
const choicesToText = (actions: readonly Action[]): string => {
  const choices = actions.filter((action) => action.action === 'choose').map((action) => action.label);
  return choices.length > 0 ? `Say: ${choices.join(' / ')}` : '';
};

const tableToText = (columns: readonly Column[], rows: readonly (readonly Line[])[]): string => {
  const titles = columns.map((column) => column.title);
  const cells = [...(titles.some((title) => title !== '') ? [titles] : []), ...rows.map((row) => row.map(lineToText))];
  const widths = columns.map((_, index) => Math.max(...cells.map((row) => (row[index] ?? '').length)));
  return cells
    .map((row) =>
      row
        .map((cell, index) => (columns[index]?.align === 'right' ? cell.padStart(widths[index] ?? 0) : cell.padEnd(widths[index] ?? 0)))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
};
