// A tick on Home stands for a tap in the event's own thread, kept like any other message before Slack is told.

import { z } from 'zod';
import type { IncomingMessage } from '../../assistant/ports.ts';
import type { WhoWeAre } from './delivery-to-message.ts';
import { homeIds } from './home-view.ts';
import { parsedJson } from './parsed-json.ts';
import { tapMessage } from './tap-to-message.ts';

const homeTap = z.object({
  type: z.literal('block_actions'),
  team: z.object({ id: z.string() }),
  user: z.object({ id: z.string(), team_id: z.string().optional() }),
  view: z.object({ type: z.literal('home') }),
  actions: z.array(z.object({ action_id: z.string(), action_ts: z.string(), value: z.string().optional() })).min(1),
});

const tickValue = z.tuple([z.string(), z.string(), z.string()]);

/** The message of a tick button; undefined for anything else on Home or elsewhere. */
export const homeTapToMessage = (body: unknown, us: WhoWeAre): IncomingMessage | undefined => {
  const delivery = homeTap.safeParse(body).data;
  const action = delivery?.actions[0];
  if (!delivery || !action?.action_id.startsWith(`${homeIds.tick}|`) || action.value === undefined) return undefined;
  if (delivery.user.team_id !== undefined && delivery.user.team_id !== us.team) return undefined;
  const value = tickValue.safeParse(parsedJson(action.value)).data;
  if (!value) return undefined;
  const [channel, thread, id] = value;
  const place = { workspace: delivery.team.id, channel, thread, message: 'home', author: delivery.user.id, at: action.action_ts };
  return tapMessage({ action: 'made all', stamp: thread, value: id }, place);
};
