// The whole reply as plain words: what a screen reader reads out, what a notification shows, and what is posted should Slack refuse the blocks.

import type { Block, Reply } from '../../reply/reply.ts';
import { limits } from './block-limits.ts';
import { escaped } from './inert.ts';
import { lineWords } from './rich-text.ts';
import { rowLine } from './table-blocks.ts';

/** Complete, unescaped and of any length. */
export const replyWords = (reply: Reply): string =>
  reply.blocks
    .map(words)
    .filter((part) => part !== '')
    .join('\n');

const words = (block: Block): string => {
  switch (block.block) {
    case 'list':
      return [...(block.title ? [lineWords(block.title)] : []), ...block.items.map((item) => `• ${lineWords(item)}`)].join('\n');
    case 'table':
      return [`${block.caption}`, ...block.rows.map((row) => `• ${lineWords(rowLine(block, row))}`)].join('\n');
    case 'actions':
      return block.actions.length === 0 ? '' : `Buttons: ${block.actions.map((action) => action.label).join(', ')}`;
    case 'file':
      return `${block.file.name}: ${block.file.alt}`;
    default:
      return lineWords(block.line);
  }
};

/** Escaped for the top-level `text`, and within its limit: whole lines while they fit, then the sentence that says where the rest is. */
export const topLevelText = (reply: Reply, rest: string): string => {
  const whole = escaped(replyWords(reply));
  if (whole.length <= limits.text) return whole === '' ? '…' : whole;
  const end = `\n${escaped(rest)}`;
  const room = limits.text - end.length;
  const within = whole.slice(0, room);
  const lineEnd = within.lastIndexOf('\n');
  // A line too long to end within is cut inside, but never inside an escape or a pair.
  const start = lineEnd > 0 ? within.slice(0, lineEnd) : within.replace(/&[a-z]*$|[\ud800-\udbff]$/, '');
  return `${start}${end}`;
};
