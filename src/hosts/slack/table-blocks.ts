// A table for a phone: aligned in fixed-width text while it fits its width; wider, figures become Slack's own table and words a list,
// as does whatever that table has no room for.

import type { types } from '@slack/bolt';
import type { Block, Line } from '../../reply/reply.ts';
import { limits } from './block-limits.ts';
import { lineWords, richTextBlocks, sections, type UrlOf } from './rich-text.ts';

export type Table = Extract<Block, { block: 'table' }>;

/** Characters of fixed-width text across a phone held upright: common practice, no source. */
export const phoneWidth = 36;
const rowsTogether = 40;

/** `tableFree`: whether the message has no table block yet, as it may hold only one. */
export const tableBlocks = (table: Table, tableFree: boolean): types.KnownBlock[] => {
  const rows = table.rows.map((row) => table.columns.map((_column, place) => lineWords(row[place] ?? [])));
  const titles = table.columns.map((column) => column.title);
  const caption = sections([{ text: table.caption, meaning: 'strong' }]);
  const widths = titles.map((title, place) => Math.max(...[title, ...rows.map((row) => row[place] ?? '')].map(width)));
  const across = widths.reduce((sum, each) => sum + each + 2, -2);
  const oneLine = rows.every((row) => row.every((cell) => !cell.includes('\n')));
  // Beside its figures a narrow table needs no caption; the plain text keeps it for those who hear the reply.
  if (across <= phoneWidth && oneLine) return richTextBlocks(aligned(table, titles, rows, widths));
  const hasFigures = table.columns.some(({ align }) => align === 'right');
  const wide = tableFree && hasFigures ? tableBlock(table, titles, rows) : undefined;
  return wide ? [...richTextBlocks(caption), wide] : richTextBlocks([...caption, ...listed(table)]);
};

/** Terminal columns, near enough: one for each character. */
const width = (text: string): number => Array.from(text).length;

const aligned = (
  table: Table,
  titles: readonly string[],
  rows: readonly (readonly string[])[],
  widths: readonly number[],
): types.RichTextPreformatted[] => {
  const drawn = [...(titles.some((title) => title !== '') ? [titles] : []), ...rows].map((row) =>
    row
      .map((cell, place) => {
        const space = ' '.repeat(Math.max(0, (widths[place] ?? 0) - width(cell)));
        return table.columns[place]?.align === 'right' ? space + cell : cell + space;
      })
      .join('  ')
      .trimEnd(),
  );
  const parts: types.RichTextPreformatted[] = [];
  for (let from = 0; from < drawn.length; from += rowsTogether) {
    const text = drawn.slice(from, from + rowsTogether).join('\n');
    if (text !== '') parts.push({ type: 'rich_text_preformatted', elements: [{ type: 'text', text }] });
  }
  return parts;
};

/** Slack's table; undefined where it would break one of its limits. */
const tableBlock = (table: Table, titles: readonly string[], rows: readonly (readonly string[])[]): types.TableBlock | undefined => {
  const all = titles.every((title) => title === '') ? rows : [titles, ...rows];
  const characters = all.flat().reduce((sum, cell) => sum + Math.max(1, cell.length), 0);
  if (all.length === 0 || all.length > limits.tableRows || titles.length > limits.tableColumns || characters > limits.tableCharacters)
    return undefined;
  const block: types.TableBlock = {
    type: 'table',
    column_settings: table.columns.map(({ align }) => ({ align, is_wrapped: true })),
    rows: all.map((row) => row.map((cell) => ({ type: 'raw_text', text: cell === '' ? '–' : cell }))),
  };
  return JSON.stringify(block).length > limits.messageCharacters - 2_000 ? undefined : block;
};

const listed = (table: Table): types.RichTextList[] => inParts(table.rows.map((row) => rowLine(table, row)));

/** A row as a sentence: "buttonhole: price 25.00, wholesale 4.01". */
export const rowLine = (table: Table, row: readonly Line[]): Line => {
  const [first = [], ...others] = row;
  const named = others.map((cell, place): Line => {
    const title = table.columns[place + 1]?.title ?? '';
    return title === '' || lineWords(cell) === '' ? cell : [{ text: `${title} `, meaning: 'plain' }, ...cell];
  });
  const said = named.filter((cell) => lineWords(cell) !== '');
  const rest = said.flatMap((cell, place): Line => (place === 0 ? cell : [{ text: ', ', meaning: 'plain' }, ...cell]));
  return lineWords(first) === '' ? rest : rest.length === 0 ? first : [...first, { text: ': ', meaning: 'plain' }, ...rest];
};

/** Items as bullet lists, each small enough to be left out alone. */
export const inParts = (items: readonly Line[], urlOf?: UrlOf): types.RichTextList[] => {
  const parts: types.RichTextList[] = [];
  let elements: types.RichTextSection[] = [];
  let size = 0;
  const close = (): void => {
    if (elements.length > 0) parts.push({ type: 'rich_text_list', style: 'bullet', elements });
    elements = [];
    size = 0;
  };
  for (const section of items.flatMap((item) => sections(item, undefined, urlOf))) {
    const more = JSON.stringify(section).length;
    if (size + more > limits.richTextCharacters) close();
    elements.push(section);
    size += more;
  }
  close();
  return parts;
};
