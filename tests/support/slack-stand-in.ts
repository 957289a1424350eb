// A small stand-in for Slack on this machine: the Web API methods we call and a Socket Mode connection, on one port.
// It keeps what it was told (calls, messages, uploads, acknowledgements), and can be scripted to fail.

import { createServer, type IncomingMessage as Request, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { type WebSocket, WebSocketServer } from 'ws';

export interface Call {
  readonly method: string;
  readonly args: Readonly<Record<string, string>>;
  readonly token: string;
}

/** How the next call of a method goes wrong: an answer of Slack's, a status, or the work done and the answer lost. */
export type Fault =
  | { readonly error: string }
  | { readonly status: number; readonly headers?: Record<string, string> }
  | { readonly lost: 'answer' | 'call' };

export interface StandInMessage {
  readonly ts: string;
  readonly channel: string;
  readonly thread_ts?: string;
  text: string;
  blocks?: unknown[];
  metadata?: unknown;
}

export const startStandIn = async () => {
  const calls: Call[] = [];
  const messages: StandInMessage[] = [];
  const uploads = new Map<string, Buffer>();
  const acks: { readonly envelope_id: string; readonly payload?: unknown }[] = [];
  const faults = new Map<string, Fault[]>();
  const people = new Map<string, object>();
  const workspaces = new Map<string, object>();
  const channels = new Map<string, object>();
  const files = new Map<string, { readonly body: string | Buffer; readonly headers: Record<string, string> }>();
  const lostFiles = new Set<string>();
  const heldFiles = new Set<string>();
  const fileTokens: (string | undefined)[] = [];
  const responses: unknown[] = [];
  const during: { call?: (method: string, when: 'before' | 'after') => void } = {};
  const sockets = new Set<WebSocket>();
  let numbers = 0;
  let connections = 0;
  const next = (): number => {
    numbers += 1;
    return numbers;
  };
  const nextTs = (): string => `1800000000.${String(next()).padStart(6, '0')}`;

  const oneWorkspace = { team_id: 'T1', user_id: 'UBOT', bot_id: 'BBOT', url: 'https://net-loft.slack.com/' };
  const methods: Record<string, (args: Record<string, string>, token: string) => object> = {
    'auth.test': (_args, token) => workspaces.get(token) ?? oneWorkspace,
    'oauth.v2.access': ({ code }) => ({
      ...{ app_id: 'A1', token_type: 'bot', scope: 'chat:write', is_enterprise_install: false, enterprise: null },
      ...{ access_token: `xoxb-test-${code}`, bot_user_id: 'UBOT', team: { id: code, name: 'a studio' }, authed_user: { id: 'UAILSA' } },
    }),
    'users.info': ({ user }) => ({ user: { id: user, team_id: 'T1', ...people.get(user ?? '') } }),
    'conversations.info': ({ channel }) => ({ channel: { id: channel, ...channels.get(channel ?? '') } }),
    'apps.connections.open': () => ({ url: `ws://127.0.0.1:${port()}/socket` }),
    'chat.postMessage': (args) => {
      const message: StandInMessage = {
        ts: nextTs(),
        channel: args['channel'] ?? '',
        ...(args['thread_ts'] ? { thread_ts: args['thread_ts'] } : {}),
        ...contentOf(args),
      };
      messages.push(message);
      // A message to a person lands in their direct messages.
      return { channel: message.channel.replace(/^U/, 'DU'), ts: message.ts };
    },
    'chat.update': (args) => {
      const message = messages.find(({ ts }) => ts === args['ts']);
      if (!message) return { ok: false, error: 'message_not_found' };
      delete message.blocks;
      Object.assign(message, contentOf(args));
      return { ts: message.ts };
    },
    'conversations.replies': (args) => ({
      messages: messages.filter(({ thread_ts, channel }) => thread_ts === args['ts'] && channel === args['channel']),
    }),
    'conversations.history': (args) => ({ messages: messages.filter(({ channel }) => channel === args['channel']).reverse() }),
    'files.getUploadURLExternal': () => {
      const id = `F${next()}`;
      return { upload_url: `http://127.0.0.1:${port()}/upload/${id}`, file_id: id };
    },
  };

  const answer = async (request: Request, response: ServerResponse): Promise<void> => {
    const body = await bodyOf(request);
    const upload = /^\/upload\/(\w+)/.exec(request.url ?? '')?.[1];
    if (upload !== undefined) {
      uploads.set(upload, body);
      response.end('OK');
      return;
    }
    const file = files.get(request.url ?? '');
    if (file) {
      fileTokens.push(request.headers.authorization);
      if (lostFiles.delete(request.url ?? '')) return void request.socket.destroy();
      if (heldFiles.has(request.url ?? '')) return; // answered by nobody
      response.writeHead(file.headers['location'] ? 302 : 200, file.headers).end(file.body);
      return;
    }
    if (request.url === '/respond') {
      responses.push(JSON.parse(body.toString()));
      response.end('ok');
      return;
    }
    const method = (request.url ?? '').replace('/api/', '');
    const args = Object.fromEntries(new URLSearchParams(body.toString()));
    const token = args['token'] ?? request.headers.authorization?.replace('Bearer ', '') ?? '';
    calls.push({ method, args, token });
    const fault = faults.get(method)?.shift();
    during.call?.(method, 'before');
    if (fault && 'lost' in fault) {
      if (fault.lost === 'answer') methods[method]?.(args, token);
      request.socket.destroy();
    } else if (fault && 'status' in fault) {
      response.writeHead(fault.status, fault.headers).end();
    } else {
      const said = fault ? { ok: false, error: fault.error } : { ok: true, ...methods[method]?.(args, token) };
      during.call?.(method, 'after');
      response.writeHead(200, { 'content-type': 'application/json' }).end(JSON.stringify(said));
    }
  };

  const server = createServer((request, response) => void answer(request, response));
  const wss = new WebSocketServer({ server, path: '/socket' });
  wss.on('connection', (socket) => {
    connections += 1;
    sockets.add(socket);
    socket.on('close', () => sockets.delete(socket));
    socket.on('message', (data) => acks.push(JSON.parse(String(data))));
    socket.send(JSON.stringify({ type: 'hello', num_connections: 1 }));
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const port = (): number => (server.address() as AddressInfo).port;

  return {
    apiUrl: `http://127.0.0.1:${port()}/api/`,
    calls,
    messages,
    responseUrl: `http://127.0.0.1:${port()}/respond`,
    /** Facts about people, for users.info. */
    people,
    /** Whose each token is, for auth.test; the one workspace T1 where nothing is said. */
    workspaces,
    /** Facts about channels, for conversations.info. */
    channels,
    /** What people dropped, by path, and the tokens it was fetched with. */
    files,
    fileTokens,
    /** The next fetch of this file finds the network gone. */
    failFile: (path: string) => void lostFiles.add(path),
    /** Fetches of this file hang until it is let go. */
    heldFiles,
    /** What was said through response_url. */
    responses,
    fileUrl: (path: string) => `http://127.0.0.1:${port()}${path}`,
    uploads,
    acks,
    connections: () => connections,
    /** Called before a call is carried out and after it, before it is answered. */
    during,
    /** The next calls of this method fail so, one after the other. */
    failNext: (method: string, ...how: readonly Fault[]) => faults.set(method, [...(faults.get(method) ?? []), ...how]),
    /** Sends one envelope over the newest connection, and answers with its id. */
    send: (type: string, payload: unknown, more: object = {}): string => {
      const envelope_id = `env-${next()}`;
      const socket = [...sockets].at(-1);
      if (!socket) throw new Error('nobody is connected');
      socket.send(JSON.stringify({ type, envelope_id, payload, accepts_response_payload: false, ...more }));
      return envelope_id;
    },
    /** As Slack does every few hours, or when its machine goes away. */
    disconnect: (how: 'refresh' | 'cut') => {
      for (const socket of sockets) {
        if (how === 'cut') socket.terminate();
        else socket.send(JSON.stringify({ type: 'disconnect', reason: 'refresh_requested' }));
      }
    },
    callsOf: (method: string) => calls.filter((call) => call.method === method),
    close: async () => {
      for (const socket of sockets) socket.terminate();
      wss.close();
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };
};

export type StandIn = Awaited<ReturnType<typeof startStandIn>>;

const contentOf = (args: Record<string, string>) => ({
  text: args['text'] ?? '',
  ...(args['blocks'] ? { blocks: JSON.parse(args['blocks']) as unknown[] } : {}),
  ...(args['metadata'] ? { metadata: JSON.parse(args['metadata']) as unknown } : {}),
});

const bodyOf = async (request: Request): Promise<Buffer> => {
  const parts: Buffer[] = [];
  for await (const part of request) parts.push(part as Buffer);
  return Buffer.concat(parts);
};
