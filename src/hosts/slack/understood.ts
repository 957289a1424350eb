// What a delivery of any kind says to the assistant: a message or a tap, and the lists dropped with it, each with who may change what, and who reads along.

import type { IncomingMessage } from '../../assistant/ports.ts';
import { readTick } from '../../reply/tick.ts';
import type { ChannelSharing } from './channel-sharing.ts';
import { askerOf, asMessageDelivery, asTapDelivery, type MessageDelivery } from './delivery.ts';
import { deliveryToMessage, isOnlyFiles, type KnownThreads, type WhoWeAre } from './delivery-to-message.ts';
import { filesOf, looksLikeList } from './dropped-file.ts';
import { homeTapToMessage } from './home-taps.ts';
import { readNumberForm } from './number-form.ts';
import { shortcutToMessage } from './shortcut-to-message.ts';
import { tapToMessage } from './tap-to-message.ts';
import type { Workspace } from './workspaces.ts';

interface Ears {
  readonly threads: KnownThreads;
  readonly sharing: ChannelSharing;
  readonly now: () => number;
}

export interface Understood {
  readonly message: { readonly message: IncomingMessage; readonly delivery: string } | undefined;
  readonly files: readonly { readonly message: IncomingMessage; readonly delivery: string; readonly file: string }[];
}

const nothing: Understood = { message: undefined, files: [] };

export const understood = async (here: Workspace, body: unknown, { threads, sharing, now }: Ears): Promise<Understood> => {
  const said = asMessageDelivery(body);
  if (said) {
    sharing.heard(here.us.team, said.event.channel, said.is_ext_shared_channel === true);
    const heard = deliveryToMessage(said, here.us, threads);
    if (!heard) return nothing;
    const message = { ...heard, ...(await standingOf(here, heard.author, heard.kind)) };
    return { message: isOnlyFiles(message, said) ? undefined : { message, delivery: said.event_id }, files: filesIn(said, message) };
  }
  const message = asked(body, here.us, now());
  if (!message) return nothing;
  // A tick on a list of the bench is answered in its event's own thread, so what counts is who reads along there.
  const answeredIn = (message.tap && readTick(message.tap.value)?.channel) ?? message.channel;
  const shared = await sharing.isShared(here, answeredIn);
  const guest = await standingOf(here, askerOf(body) ?? message.author, message.kind);
  const delivery = [message.channel, message.id, message.revision].join(' ');
  return { message: { message: { ...message, shared, ...guest }, delivery }, files: [] };
};

/** What was tapped, entered in a form, or chosen from a message's menu. */
const asked = (body: unknown, us: WhoWeAre, at: number): IncomingMessage | undefined => {
  const tapped = asTapDelivery(body);
  if (tapped) return tapToMessage(tapped, us);
  const entered = readNumberForm(body, us, at);
  if (entered) return 'message' in entered ? entered.message : undefined;
  return homeTapToMessage(body, us) ?? shortcutToMessage(body, us);
};

const patience = 1_000; // of the three seconds Slack gives us

/** Somebody Slack will not tell us about in time counts as a guest: their orders are taken, the studio's prices are left alone. */
const standingOf = async (here: Workspace, person: string, kind: IncomingMessage['kind']): Promise<{ readonly guest?: true }> => {
  if (kind === 'delete') return {};
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<boolean>((resolve) => {
    timer = setTimeout(() => resolve(false), patience);
  });
  const member = await Promise.race([here.isMember(person), late]);
  clearTimeout(timer);
  return member ? {} : { guest: true };
};

/** Price lists dropped with a new message: kept by name now, fetched later. */
const filesIn = ({ event }: MessageDelivery, message: IncomingMessage): Understood['files'] =>
  message.kind === 'new'
    ? filesOf(event.files)
        .filter(looksLikeList)
        .map((list) => ({
          message: { ...message, kind: 'file' as const, id: `${message.id}/${list.id}`, revision: '', text: '', addressed: true },
          delivery: `file ${list.id}`,
          file: JSON.stringify(list),
        }))
    : [];
