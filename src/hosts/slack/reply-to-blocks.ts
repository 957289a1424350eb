// A reply as a Slack message: blocks for the eye, the same in plain text for screen readers and notifications, all within Slack's limits.
// What has no room is left out with a notice, and goes along as a text file.

import type { types } from '@slack/bolt';
import type { Action, Block, FileWanted, Place, Reply } from '../../reply/reply.ts';
import { fitMessage, limits, shortened } from './block-limits.ts';
import { withoutControls } from './inert.ts';
import { placeUrl } from './place-url.ts';
import { replyWords, topLevelText } from './reply-to-text.ts';
import { answerStyles, richTextBlocks, sections, type UrlOf } from './rich-text.ts';
import { inParts, tableBlocks } from './table-blocks.ts';
import { actionId, stampOf } from './tap-to-message.ts';

export interface SlackMessageParts {
  readonly text: string; // escaped, and complete where it fits
  readonly blocks: readonly types.KnownBlock[];
  readonly files: readonly FileWanted[];
  /** The whole reply in plain words, to attach: only where something had no room. */
  readonly overflow?: string;
}

const restIsAttached = 'There is more than one message holds: the whole of it is in the attached text file.';

/** `replyId`: the reply's own, which changes with each revision of it; '' for one that is not kept. `teamUrl`: the workspace's address, without which nothing is linked. */
export const replyToBlocks = (reply: Reply, replyId: string, teamUrl?: string): SlackMessageParts => {
  const urlOf = (place: Place): string | undefined => (teamUrl === undefined ? undefined : placeUrl(place, teamUrl));
  const { blocks, cut } = fitMessage(draw(reply.blocks, stampOf(replyId), urlOf), small(restIsAttached));
  const text = topLevelText(reply, restIsAttached);
  const files = reply.blocks.flatMap((block) => (block.block === 'file' ? [block.file] : []));
  const whole = replyWords(reply);
  const textIsCut = text.endsWith(restIsAttached);
  return { text, blocks, files, ...(cut || textIsCut ? { overflow: whole } : {}) };
};

/** Lines that follow each other flow into one block: that keeps a reply to one phone screen. */
const draw = (blocks: readonly Block[], stamp: string, urlOf: UrlOf): types.KnownBlock[] => {
  const drawn: types.KnownBlock[] = [];
  let flows: types.RichTextBlockElement[] = [];
  let tableFree = true;
  const add = (...more: readonly types.KnownBlock[]): void => {
    drawn.push(...richTextBlocks(flows), ...more);
    flows = [];
  };
  for (const block of blocks) {
    switch (block.block) {
      case 'answer':
        flows.push(...sections(block.line, answerStyles, urlOf));
        break;
      case 'line':
      case 'problem':
      case 'next':
        flows.push(...sections(block.line, undefined, urlOf));
        break;
      case 'caution':
        flows.push(...sections(block.line).map(({ elements }) => ({ type: 'rich_text_quote' as const, elements })));
        break;
      case 'list':
        flows.push(...(block.title ? sections(block.title) : []), ...inParts(block.items, urlOf));
        break;
      case 'table': {
        const table = tableBlocks(block, tableFree);
        tableFree &&= !table.some(({ type }) => type === 'table');
        add(...table);
        break;
      }
      case 'assumed':
        add(...smallLines(block.line.map((span) => span.text).join('')));
        break;
      case 'actions':
        add(...actionsBlocks(block.actions, stamp));
        break;
      case 'file':
        add(small(`File: ${block.file.name}`));
        break;
    }
  }
  add();
  return drawn;
};

const plainText = (text: string): types.PlainTextElement => ({ type: 'plain_text', text, emoji: false });

/** Small grey text. Plain text, so that words in it stay as they are. */
const small = (text: string): types.ContextBlock => ({
  type: 'context',
  elements: [plainText(shortened(withoutControls(text), limits.richTextCharacters))],
});

const smallLines = (text: string): types.ContextBlock[] =>
  (withoutControls(text).match(new RegExp(`[^]{1,${limits.richTextCharacters}}`, 'gu')) ?? [])
    .filter((part) => part.trim() !== '')
    .map(small);

const actionsBlocks = (actions: readonly Action[], stamp: string): types.ActionsBlock[] => {
  const elements = actions.flatMap((action, place) => element(action, place, stamp) ?? []);
  const blocks: types.ActionsBlock[] = [];
  for (let from = 0; from < elements.length; from += limits.actions) {
    blocks.push({ type: 'actions', elements: elements.slice(from, from + limits.actions) });
  }
  return blocks;
};

/** A button, or a date picker where a date is wanted. An action whose id Slack cannot carry is left out: its words can still be typed. */
const element = (action: Action, place: number, stamp: string): types.Button | types.Datepicker | undefined => {
  const label = withoutControls(action.label).trim();
  if (label === '' || action.value.length > limits.buttonValue) return undefined;
  if (action.action === 'move date') {
    const id = actionId(action.action, place, stamp, action.value);
    if (id.length > limits.id) return undefined;
    return { type: 'datepicker', action_id: id, placeholder: plainText(shortened(label, limits.placeholder)) };
  }
  return {
    type: 'button',
    text: plainText(shortened(label, limits.buttonText)),
    action_id: actionId(action.action, place, stamp),
    ...(action.value === '' ? {} : { value: action.value }),
    ...(action.style === undefined ? {} : { style: action.style === 'main' ? ('primary' as const) : ('danger' as const) }),
  };
};
