// Lines as rich text. Its text elements are literal, so mentions, links, marks and codes in them stay as typed: no escaping to forget.

import type { types } from '@slack/bolt';
import type { Line, Meaning, Place, Span } from '../../reply/reply.ts';
import { limits } from './block-limits.ts';
import { withoutControls } from './inert.ts';

type Style = { readonly bold?: true; readonly italic?: true };

const plain: Style = {};
const styles: Record<Meaning, Style> = {
  plain,
  strong: { bold: true },
  money: plain,
  date: plain,
  piece: plain,
  count: plain,
  assumed: { italic: true },
  problem: { bold: true },
  quoted: plain,
};
/** In the first line the figures and dates are the answer. */
export const answerStyles: Record<Meaning, Style> = { ...styles, money: { bold: true }, date: { bold: true } };

/** The address of a place a span leads to; undefined where it is not known. */
export type UrlOf = (place: Place) => string | undefined;
const noUrl: UrlOf = () => undefined;

/** One line as sections, more than one only where it is too long for a block. */
export const sections = (line: Line, look: Record<Meaning, Style> = styles, urlOf: UrlOf = noUrl): types.RichTextSection[] => {
  const result: types.RichTextSection[] = [];
  let elements: (types.RichTextText | types.RichTextLink)[] = [];
  let room: number = limits.richTextCharacters;
  const close = (): void => {
    if (elements.length > 0) result.push({ type: 'rich_text_section', elements });
    elements = [];
    room = limits.richTextCharacters;
  };
  for (const span of line) {
    const url = span.link && urlOf(span.link);
    for (let text = withoutControls(span.text); text !== ''; ) {
      if (room < 2) close();
      const part = startOf(text, room);
      const style = styled(look[span.meaning]);
      elements.push(url === undefined ? { type: 'text', text: part, ...style } : { type: 'link', url, text: part, ...style });
      room -= part.length;
      text = text.slice(part.length);
    }
  }
  close();
  return result;
};

const styled = (style: Style): { style?: Style } => (style === plain ? {} : { style });

/** The first characters, never half of a pair. */
const startOf = (text: string, most: number): string => {
  const part = text.slice(0, most);
  return part.length < text.length && /[\ud800-\udbff]$/.test(part) ? part.slice(0, -1) : part;
};

type Flow = types.RichTextBlockElement;

/** Flows one under the other in as few blocks as their size allows. */
export const richTextBlocks = (flows: readonly Flow[]): types.RichTextBlock[] => {
  const blocks: types.RichTextBlock[] = [];
  let elements: Flow[] = [];
  let size = 0;
  for (const flow of flows) {
    const more = JSON.stringify(flow).length;
    if (elements.length > 0 && size + more > limits.richTextCharacters) {
      blocks.push({ type: 'rich_text', elements });
      elements = [];
      size = 0;
    }
    elements.push(flow);
    size += more;
  }
  if (elements.length > 0) blocks.push({ type: 'rich_text', elements });
  return blocks;
};

/** The words of a line, without their meanings. */
export const lineWords = (line: Line): string => withoutControls(line.map((span: Span) => span.text).join(''));
