// The slash command answers its asker alone and keeps nothing, until they put it in a thread. The global shortcut opens a thread straight away.

import type { types } from '@slack/bolt';
import type { Reply } from '../../reply/reply.ts';
import { limits } from './block-limits.ts';
import { type Host, hostSays, listeningIn } from './listening.ts';
import { newEvent, newEventForm, readNewEventForm } from './new-event-form.ts';
import { openThread } from './open-thread.ts';
import { openView } from './open-view.ts';
import { plainWords } from './plain-words.ts';
import { replyToBlocks } from './reply-to-blocks.ts';
import { setupForm } from './setup-form.ts';

const intoThread = 'check|thread';

export const listenCommand = (host: Host): void => {
  const { app, desk, log } = host;

  app.command('/benchbell', async ({ ack, command }) => {
    const words = plainWords(command.text ?? '');
    const tell = (text: string) => ack({ response_type: 'ephemeral', text });
    const here = await listeningIn(host, command);
    if (!here) return tell(hostSays.membersOnly);
    const { us } = here;
    if (/^set ?up$|^settings$/i.test(words)) {
      if (!(await here.isMember(command.user_id))) return tell(hostSays.membersOnly);
      const said = await openView(here, command.trigger_id, setupForm(desk.settings(us.team).settings));
      return said === 'opened' ? ack() : tell(said);
    }
    try {
      const { text, blocks } = replyToBlocks(forAsker(desk.check(us.team, command.user_id, words || 'help')), '');
      await ack({ response_type: 'ephemeral', text, blocks: [...blocks, ...threadButton(words)] });
    } catch (error) {
      await tell(hostSays.failed);
      throw error;
    }
  });

  app.action(intoThread, async ({ ack, body, action, respond }) => {
    await ack();
    const channel = body.channel?.id;
    if (channel === undefined || !('value' in action) || typeof action.value !== 'string') return;
    const here = await listeningIn(host, body);
    if (!here) return;
    const said = await openThread(here, channel, body.user.id, action.value);
    await respond(
      said === 'opened'
        ? { text: hostSays.threadOpened, response_type: 'ephemeral', replace_original: true }
        : { text: said, response_type: 'ephemeral', replace_original: false },
    );
  });

  app.shortcut(newEvent, async ({ ack, shortcut }) => {
    await ack();
    const here = await listeningIn(host, shortcut);
    const said = here && (await openView(here, shortcut.trigger_id, newEventForm));
    if (said !== 'opened') log.info({ from: 'slack' }, 'A form came too late to be opened.');
  });

  app.view(newEvent, async ({ ack, body, view }) => {
    const refuse = (errors: Record<string, string>) => ack({ response_action: 'errors', errors });
    const read = readNewEventForm(view.state.values);
    if ('errors' in read) return refuse(read.errors);
    const here = await listeningIn(host, body);
    if (!here) return refuse({ where: hostSays.membersOnly });
    const said = await openThread(here, read.channel, body.user.id, read.words);
    return said === 'opened' ? ack() : refuse({ where: said });
  });
};

/** Buttons belong to a thread, and files need one. */
const forAsker = (reply: Reply): Reply => ({ blocks: reply.blocks.filter(({ block }) => block !== 'actions' && block !== 'file') });

const threadButton = (words: string): types.ActionsBlock[] =>
  words === '' || words.length > limits.buttonValue
    ? []
    : [
        {
          type: 'actions',
          elements: [
            { type: 'button', action_id: intoThread, value: words, text: { type: 'plain_text', text: 'Put it in a thread', emoji: false } },
          ],
        },
      ];
