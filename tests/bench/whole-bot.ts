// The whole bot as a process against a bare Bolt app: from a signed delivery to the post, two hundred threads at once, the start, and the memory
// a large store takes.

import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openStore } from '../../src/store/sqlite-store.ts';
import { type Bot, deliver, startBot } from '../support/bot-process.ts';
import { mention, message } from '../support/slack-deliveries.ts';
import { type StandIn, startStandIn } from '../support/slack-stand-in.ts';
import { median, ms, quantile, type Row, times } from './measure.ts';
import { allOpen, fill, keyOf, type Spread, studioOf, tenYears } from './season.ts';

let numbers = 0;
const nextTs = (): string => {
  numbers += 1;
  return `18${String(numbers).padStart(8, '0')}.000100`;
};

/** Milliseconds from the delivery to the post in its thread. A channel of its own each time: a channel takes one post a second. */
const roundTrip = async (slack: StandIn, bot: Bot, body: (ts: string, channel: string) => object): Promise<number> => {
  const ts = nextTs();
  const start = performance.now();
  const posted = new Promise<void>((resolve) => waiting.set(ts, resolve));
  slack.during.call = (method) => {
    if (method !== 'chat.postMessage') return;
    const thread = slack.calls.at(-1)?.args['thread_ts'] ?? '';
    waiting.get(thread)?.();
    waiting.delete(thread);
  };
  await deliver(bot.port ?? 0, body(ts, `C${ts}`));
  await posted;
  return performance.now() - start;
};
const waiting = new Map<string, () => void>();

const order = (ts: string, channel: string): object => mention('<@UBOT> 40 lapel pieces at 25 inc tax', { ts, channel });

const inFolder = async <T>(work: (store: string, slack: StandIn) => Promise<T>): Promise<T> => {
  const folder = mkdtempSync(join(tmpdir(), 'benchbell-bench-'));
  const slack = await startStandIn();
  try {
    return await work(join(folder, 'studio.sqlite'), slack);
  } finally {
    await slack.close();
    rmSync(folder, { recursive: true, force: true });
  }
};

const bare = (slack: StandIn): Promise<Bot> =>
  startBot({ mode: 'http', apiUrl: slack.apiUrl, store: '', script: ['--import', 'tsx', 'tests/bench/bare-bolt.ts'] });
/** As README starts it. */
const script = ['--disallow-code-generation-from-strings', '--max-semi-space-size=4', 'dist/main.js'];
const ours = (slack: StandIn, store: string, env = {}): Promise<Bot> =>
  startBot({ mode: 'http', apiUrl: slack.apiUrl, store, env, script });

const echo = (): Promise<readonly Row[]> =>
  inFolder(async (store, slack) => {
    const [plain, bot] = [await bare(slack), await ours(slack, store)];
    const took = { plain: [] as number[], bot: [] as number[] };
    for (let n = 0; n < 150; n += 1) {
      const [one, other] = [await roundTrip(slack, plain, order), await roundTrip(slack, bot, order)];
      if (n < 50) continue; // warm
      took.plain.push(one);
      took.bot.push(other);
    }
    await Promise.all([plain.kill(), bot.kill()]);
    const ratio = median(took.bot) / median(took.plain);
    return [
      { what: 'delivery to post, bare Bolt echo', measured: ms(median(took.plain)) },
      { what: 'delivery to post, this bot', measured: `${ms(median(took.bot))}, ${times(ratio)}`, aim: 'at most 1.5×' },
    ];
  });

const crowd = (): Promise<readonly Row[]> =>
  inFolder(async (store, slack) => {
    const bot = await ours(slack, store);
    const took: number[] = [];
    let whole = 0;
    for (let round = 0; round < 4; round += 1) {
      const begun = performance.now();
      const all = await Promise.all(Array.from({ length: 200 }, () => roundTrip(slack, bot, order)));
      if (round === 0) continue; // warm
      whole += performance.now() - begun;
      took.push(...all);
    }
    await bot.kill();
    const shown = [0.5, 0.95, 0.99].map((of) => ms(quantile(took, of))).join(', ');
    const rate = Math.round((1000 * took.length) / whole);
    return [
      { what: '200 threads at once, delivery to post: p50, p95, p99', measured: shown },
      { what: 'messages taken, answered and posted meanwhile', measured: `${rate} a second` },
    ];
  });

const start = (): Promise<Row> =>
  inFolder(async (store, slack) => {
    const took = { plain: [] as number[], bot: [] as number[] };
    for (let n = 0; n < 5; n += 1) {
      for (const [name, run] of [
        ['plain', () => bare(slack)],
        ['bot', () => ours(slack, store)],
      ] as const) {
        const begun = performance.now();
        const bot = await run();
        took[name].push(performance.now() - begun);
        await bot.kill();
      }
    }
    const ratio = median(took.bot) / median(took.plain);
    return {
      what: 'start to listening: bare Bolt, this bot',
      measured: `${ms(median(took.plain))}, ${ms(median(took.bot))}: ${times(ratio)}`,
    };
  });

const memoryOf = (bot: Bot, what: 'VmRSS' | 'VmHWM'): number =>
  Number(new RegExp(`${what}:\\s+(\\d+)`).exec(readFileSync(`/proc/${bot.process.pid}/status`, 'utf8'))?.[1] ?? 0) / 1024;

const memory = (what: string, spread: Spread, aim?: string): Promise<readonly Row[]> =>
  inFolder(async (path, slack) => {
    const store = openStore({ path, powerSafe: false });
    fill(store, 5_000, 50, Date.now(), spread);
    store.close();
    const studio = `${path}.json`;
    writeFileSync(studio, JSON.stringify(studioOf(spread === allOpen ? 5_000 : 300)));
    const bot = await ours(slack, path, { BENCHBELL_STUDIO: studio });
    const atStart = memoryOf(bot, 'VmRSS');
    for (let n = 0; n < 120; n += 1) {
      const { channel, thread } = keyOf(n);
      await roundTrip(slack, bot, (ts) => {
        waiting.set(thread, waiting.get(ts) ?? (() => undefined));
        return message('make it 31', { ts, thread_ts: thread, channel });
      });
    }
    const highest = memoryOf(bot, 'VmHWM');
    await bot.kill();
    const size = Math.round(statSync(path).size / 1024 / 1024);
    const measured = `${atStart.toFixed(0)} MiB, ${highest.toFixed(0)} MiB`;
    return [
      { what: `5,000 threads × 50 messages (${size} MiB), ${what}: memory at the start, highest`, measured, ...(aim ? { aim } : {}) },
    ];
  });

const memories = async (): Promise<readonly Row[]> => [
  ...(await memory('300 still open', tenYears, 'under 200 MiB')),
  ...(await memory('all of them open', allOpen, 'under 200 MiB')),
];

/** On dist, as it was built. */
export const wholeBot = async (): Promise<readonly Row[]> => {
  return [...(await echo()), ...(await crowd()), await start(), ...(await memories())];
};
