// The form of the global shortcut: where the event's thread should be, and what the client wants.

import type { types } from '@slack/bolt';
import { z } from 'zod';

export const newEvent = 'new_event';
const where = 'where';
const what = 'what';

export const newEventForm: types.ModalView = {
  type: 'modal',
  callback_id: newEvent,
  title: { type: 'plain_text', text: 'New event' },
  submit: { type: 'plain_text', text: 'Open its thread' },
  close: { type: 'plain_text', text: 'Cancel' },
  blocks: [
    {
      type: 'input',
      block_id: where,
      label: { type: 'plain_text', text: 'In the channel' },
      element: {
        type: 'conversations_select',
        action_id: where,
        default_to_current_conversation: true,
        filter: { include: ['public', 'private'], exclude_external_shared_channels: true, exclude_bot_users: true },
      },
    },
    {
      type: 'input',
      block_id: what,
      label: { type: 'plain_text', text: 'What does the client want?' },
      hint: { type: 'plain_text', text: 'Like: 40 buttonholes at 25 inc tax, dried, event 14 March' },
      element: { type: 'plain_text_input', action_id: what, multiline: true, max_length: 2_000 },
    },
  ],
};

const state = z.object({
  where: z.object({ where: z.object({ selected_conversation: z.string().nullish() }) }),
  what: z.object({ what: z.object({ value: z.string().nullish() }) }),
});

/** `values`: view.state.values of the submission. */
export const readNewEventForm = (values: unknown): { channel: string; words: string } | { errors: Record<string, string> } => {
  const read = state.safeParse(values).data;
  const channel = read?.where.where.selected_conversation ?? '';
  const words = read?.what.what.value?.trim() ?? '';
  if (channel === '') return { errors: { [where]: 'Choose a channel.' } };
  return words === '' ? { errors: { [what]: 'Say what the client wants.' } } : { channel, words };
};
