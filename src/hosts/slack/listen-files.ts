// Price lists dropped into a direct message or one of our threads. They are fetched after Slack was told, as fetching may take longer than it waits.

import { asMessageDelivery } from './delivery.ts';
import { deliveryToMessage } from './delivery-to-message.ts';
import { fetchList, filesOf, looksLikeList } from './dropped-file.ts';
import type { Listening } from './listening.ts';

export const listenFiles = (listening: Listening): void => {
  const { app, us, threads, desk, settings } = listening;
  app.event('message', async ({ body }) => {
    const delivery = asMessageDelivery(body);
    const lists = filesOf(delivery?.event.files).filter(looksLikeList);
    const message = delivery && lists.length > 0 ? deliveryToMessage(delivery, us, threads) : undefined;
    if (message?.kind !== 'new') return;
    const { workspace, channel, thread, author, shared } = message;
    for (const list of lists) {
      const content = await fetchList(list, settings.botToken, settings.apiUrl);
      const from = { message: message.id, id: list.id, author, name: list.name ?? 'prices.csv', shared };
      desk.fileDropped({ in: { workspace, channel, thread }, ...from, content });
    }
  });
};
