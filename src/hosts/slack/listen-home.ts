// Home: shown when opened, turned by its paging buttons, and drawn again after a tick.

import { webApi } from '@slack/bolt';
import { homeForGuests, homeIds, homeView } from './home-view.ts';
import { type Host, type Listening, listeningIn } from './listening.ts';
import { openView } from './open-view.ts';
import { setupForm } from './setup-form.ts';

/** `hash`: of the view as the person sees it, so that a newer one is not overwritten; a stale one is read again and published once more. */
export const publishHome = async (listening: Listening, person: string, page: number, hash?: string): Promise<void> => {
  const { client, desk, us, isMember } = listening;
  const publish = async (known: string | undefined): Promise<unknown> => {
    const view = (await isMember(person)) ? homeView(desk.home(us.team, person), page, us.teamUrl) : homeForGuests;
    return client.views.publish({ user_id: person, view, ...(known === undefined ? {} : { hash: known }) });
  };
  await publish(hash).catch((error: unknown) => {
    if (error instanceof webApi.WebAPIPlatformError && error.data.error === 'hash_conflict') return publish(undefined);
    throw error;
  });
};

/** Slack sends it along; the types leave it out. */
const hashOf = (body: object): string | undefined => (body as { readonly view?: { readonly hash?: string } }).view?.hash;

export const listenHome = (host: Host): void => {
  const { app, inbox } = host;

  app.event('app_home_opened', async ({ event, body }) => {
    const here = await listeningIn(host, body);
    if (here && event.tab === 'home' && body.team_id === here.us.team) await publishHome(here, event.user, 0, hashOf(event));
  });

  app.action(new RegExp(`^${homeIds.page.replace('|', '\\|')}\\|`), async ({ ack, body, action }) => {
    await ack();
    const page = 'value' in action ? Number(action.value) : 0;
    const here = await listeningIn(host, body);
    if (here) await publishHome(here, body.user.id, Number.isInteger(page) ? page : 0, hashOf(body));
  });

  app.action(new RegExp(`^${homeIds.tick.replace('|', '\\|')}\\|`), async ({ ack, body }) => {
    await ack();
    inbox.work();
    const here = await listeningIn(host, body);
    if (here) await publishHome(here, body.user.id, 0);
  });

  app.action(homeIds.setUp, async ({ ack, body }) => {
    await ack();
    const here = await listeningIn(host, body);
    if (!here || !('trigger_id' in body) || !(await here.isMember(body.user.id))) return;
    await openView(here, body.trigger_id, setupForm(here.desk.settings(here.us.team).settings));
  });
};
