// Buttons that ask for more before they count, and the forms they open: some made, a price, the studio.

import type { RespondFn } from '@slack/bolt';
import { asTapDelivery } from './delivery.ts';
import { publishHome } from './listen-home.ts';
import { type Host, hostSays, listeningIn } from './listening.ts';
import { asksNumber, numberForm, numberFormId, readNumberForm } from './number-form.ts';
import { openView } from './open-view.ts';
import { readSetupForm } from './read-setup-form.ts';
import { setupForm, setupFormId } from './setup-form.ts';
import { fromOurTeam, ourActions, placeOf, readTap } from './tap-to-message.ts';

export const listenForms = (host: Host): void => {
  const { app, desk, now } = host;

  // Taps that count by themselves are kept by now; here they are only acknowledged.
  app.action(ourActions, async ({ ack, body, respond }) => {
    await ack();
    const tapped = asTapDelivery(body);
    const action = tapped?.actions[0];
    const tap = action && readTap(action.action_id, action.value);
    const here = tap && (await listeningIn(host, body));
    if (!tapped || !here || !fromOurTeam(tapped, here.us) || !('trigger_id' in body)) return;
    if (asksNumber(tap.action)) {
      const form = numberForm({ ...tap, action: tap.action }, placeOf(tapped, action.action_ts), action.text?.text);
      if (form) await sayUnlessOpened(respond, await openView(here, body.trigger_id, form));
    } else if (tap.action === 'set up') {
      const said = (await here.isMember(body.user.id))
        ? await openView(here, body.trigger_id, setupForm(desk.settings(here.us.team).settings))
        : hostSays.membersOnly;
      await sayUnlessOpened(respond, said);
    }
  });

  app.view(numberFormId, async ({ ack, body }) => {
    const here = await listeningIn(host, body);
    const read = here && readNumberForm(body, here.us, now());
    await (read && 'errors' in read ? ack({ response_action: 'errors', errors: { ...read.errors } }) : ack());
  });

  app.view(setupFormId, async ({ ack, body, view }) => {
    const refuse = (errors: Readonly<Record<string, string>>) => ack({ response_action: 'errors', errors: { ...errors } });
    const here = await listeningIn(host, body);
    if (!here || !(await here.isMember(body.user.id))) return refuse({ name: hostSays.membersOnly });
    const { team } = here.us;
    const read = readSetupForm(view.state.values, desk.settings(team).settings);
    if ('errors' in read) return refuse(read.errors);
    try {
      desk.changeSettings(team, body.user.id, read.settings);
    } catch (error) {
      await refuse({ name: hostSays.failed });
      throw error;
    }
    await ack();
    await publishHome(here, body.user.id, 0);
  });
};

const sayUnlessOpened = async (respond: RespondFn, said: string): Promise<void> => {
  if (said !== 'opened') await respond({ text: said, response_type: 'ephemeral', replace_original: false });
};
