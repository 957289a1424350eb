// Block Kit's limits for a message, and the one function that holds a message inside them.
// Figures: docs.slack.dev/reference/block-kit, read 2026-09; the size of the whole is Slack's unpublished 13,200 characters with room to spare.

import type { types } from '@slack/bolt';

export const limits = {
  blocks: 50,
  messageCharacters: 12_000,
  text: 4_000, // above this an update is refused
  textObject: 3_000,
  richTextCharacters: 2_500, // ours: keeps every block small enough to leave out alone
  actions: 25,
  buttonText: 75,
  privateMetadata: 3_000,
  buttonValue: 2_000,
  placeholder: 150,
  id: 255,
  tableRows: 100, // with the header
  tableColumns: 20,
  tableCharacters: 10_000,
} as const;

export interface Fitted {
  readonly blocks: readonly types.KnownBlock[];
  readonly cut: boolean; // something was left out, and the notice says so
}

/** All blocks where they fit; otherwise the first that do, then the notice, then the buttons. At most one table is allowed and must be settled before. */
export const fitMessage = (blocks: readonly types.KnownBlock[], notice: types.KnownBlock): Fitted => {
  if (fits(blocks)) return { blocks, cut: false };
  const kept: types.KnownBlock[] = [];
  const end: types.KnownBlock[] = [notice];
  for (const block of blocks) if (block.type === 'actions' && fits([...end, block])) end.push(block);
  for (const block of blocks) {
    if (block.type === 'actions') continue;
    if (!fits([...kept, block, ...end])) break;
    kept.push(block);
  }
  return { blocks: [...kept, ...end], cut: true };
};

const fits = (blocks: readonly types.KnownBlock[]): boolean =>
  blocks.length <= limits.blocks && JSON.stringify(blocks).length <= limits.messageCharacters;

/** At most this many characters, the last an ellipsis where something was cut. */
export const shortened = (text: string, most: number): string => {
  const characters = Array.from(text);
  if (text.length <= most) return text;
  let short = '';
  for (const character of characters) {
    if (short.length + character.length > most - 1) break;
    short += character;
  }
  return `${short}…`;
};
