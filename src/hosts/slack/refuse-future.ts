// Slack's signatures bind a time so that a recorded request cannot be sent again later. Bolt turns away old times only; a time ahead of ours
// would stay good for as long as it is ahead, so it is turned away here, by the same five minutes.

import type { HTTPReceiver } from '@slack/bolt';

const ahead = 5 * 60; // seconds

export const refuseFuture = (receiver: HTTPReceiver, now: () => number): void => {
  const listen = receiver.requestListener;
  receiver.requestListener = (request, response) => {
    const at = Number(request.headers['x-slack-request-timestamp'] ?? 0);
    if (at <= now() / 1000 + ahead) return listen(request, response);
    request.resume();
    response.writeHead(401).end();
  };
};
