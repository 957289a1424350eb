// The small form behind "made some" and "set price": one number, with the tap it belongs to carried along. Its answer is kept like a tap.

import type { types } from '@slack/bolt';
import { z } from 'zod';
import type { IncomingMessage } from '../../assistant/ports.ts';
import { pieceKinds } from '../../handbook/pieces.ts';
import { limits } from './block-limits.ts';
import type { WhoWeAre } from './delivery-to-message.ts';
import { withoutControls } from './inert.ts';
import { parsedJson } from './parsed-json.ts';
import { type Tap, type TapPlace, tapMessage } from './tap-to-message.ts';

export const numberFormId = 'number_form';
const block = 'number';

const words = {
  'made some': { title: 'Made some', label: 'How many are made?', whole: true },
  'set price': { title: 'Set the price', label: 'Price of one piece', whole: false },
} as const;
export type AskedNumber = keyof typeof words;
export const asksNumber = (action: string): action is AskedNumber => action in words;

const carried = z.object({
  action: z.enum(['made some', 'set price']),
  stamp: z.string(),
  value: z.string(),
  place: z.object({ workspace: z.string(), channel: z.string(), message: z.string(), thread: z.string(), author: z.string() }),
});

/** `button`: its own words, which say what the number is for where an order has several kinds. undefined where the tap is too long to carry. */
export const numberForm = (
  tap: Tap & { readonly action: AskedNumber },
  place: Omit<TapPlace, 'at'>,
  button?: string,
): types.ModalView | undefined => {
  const { title, whole } = words[tap.action];
  const ofOneKind = pieceKinds.some((kind) => kind === tap.value);
  const label = ofOneKind && button ? withoutControls(button) : words[tap.action].label;
  const kept: z.infer<typeof carried> = {
    action: tap.action,
    stamp: tap.stamp,
    value: tap.value,
    place: { workspace: place.workspace, channel: place.channel, message: place.message, thread: place.thread, author: place.author },
  };
  const private_metadata = JSON.stringify(kept);
  if (private_metadata.length > limits.privateMetadata) return undefined;
  return {
    type: 'modal',
    callback_id: numberFormId,
    private_metadata,
    title: { type: 'plain_text', text: title },
    submit: { type: 'plain_text', text: 'Save' },
    close: { type: 'plain_text', text: 'Cancel' },
    blocks: [
      {
        type: 'input',
        block_id: block,
        label: { type: 'plain_text', text: label },
        element: {
          type: 'number_input',
          action_id: block,
          is_decimal_allowed: !whole,
          min_value: whole ? '1' : '0.01',
          focus_on_load: true,
        },
      },
    ],
  };
};

const submission = z.object({
  type: z.literal('view_submission'),
  user: z.object({ id: z.string(), team_id: z.string().optional() }),
  view: z.object({
    id: z.string(),
    callback_id: z.literal(numberFormId),
    private_metadata: z.string(),
    state: z.object({ values: z.record(z.string(), z.record(z.string(), z.object({ value: z.string().nullish() }))) }),
  }),
});

export type NumberEntered = { readonly message: IncomingMessage } | { readonly errors: Readonly<Record<string, string>> };

/** What a submitted form says, or what is wrong with it by field; undefined when it is another form. `at`: epoch milliseconds. */
export const readNumberForm = (body: unknown, us: WhoWeAre, at: number): NumberEntered | undefined => {
  const sent = submission.safeParse(body).data;
  const kept = sent && carried.safeParse(parsedJson(sent.view.private_metadata)).data;
  if (!kept) return undefined;
  const { action, stamp, value, place } = kept;
  if (sent.user.team_id !== undefined && sent.user.team_id !== us.team)
    return { errors: { [block]: 'Only members of the studio can change this.' } };
  const entry = sent.view.state.values[block]?.[block]?.value?.trim() ?? '';
  const whole = words[action].whole;
  if (!(whole ? /^[1-9]\d{0,5}$/ : /^\d{1,7}(\.\d{1,4})?$/).test(entry) || Number(entry) === 0) {
    return { errors: { [block]: whole ? 'A whole number from 1 to 999999, please.' : 'A price above 0, please, like 24.50.' } };
  }
  const message = tapMessage({ action, stamp, value, entry }, { ...place, author: sent.user.id, at: String(at / 1000) });
  // Each opened form counts once: the same number may be said again tomorrow.
  return { message: { ...message, id: `${message.id} ${sent.view.id}` } };
};
