// Whatever is sent, dropped, piped in or set: no crash, no wait over a tenth of a second, no stack trace shown, and nothing left on JavaScript's own
// objects. `npm run fuzz` tries 100,000 inputs (BENCHBELL_FUZZ), npm test a small share; BENCHBELL_SEED makes a finding again.

import { expect, it } from 'vitest';
import { createAssistant } from '../../src/assistant/assistant.ts';
import { readPriceList } from '../../src/buying/read-price-list.ts';
import { readSlackSettings } from '../../src/hosts/slack/read-slack-settings.ts';
import { replyToBlocks } from '../../src/hosts/slack/reply-to-blocks.ts';
import { understood } from '../../src/hosts/slack/understood.ts';
import type { Workspace } from '../../src/hosts/slack/workspaces.ts';
import { readInputLine } from '../../src/hosts/terminal/input-line.ts';
import { replyToText } from '../../src/reply/reply-to-text.ts';
import { readSettings } from '../../src/settings.ts';
import { checkStore } from '../../src/store/check-store.ts';
import { openStore } from '../../src/store/sqlite-store.ts';
import { studioSettings } from '../../src/studio/settings.ts';
import { timesCount } from '../support/in-good-time.ts';
import { goodDelivery, goodEnvironment, goodLines, goodMessage, goodPrices, goodStudio } from './good-input.ts';
import { type Random, seeded } from './random.ts';
import { oddNames, spoiltJson, spoiltText } from './spoilt.ts';

const total = Number(process.env['BENCHBELL_FUZZ'] ?? 1_000);
const seed = Number(process.env['BENCHBELL_SEED'] ?? 1);
const longest = timesCount || total >= 100_000 ? 100 : 5_000; // milliseconds of work for one input; in the usual run only a hang counts
const patience = { timeout: 60_000 + total * 30 };
const share = (percent: number): number => Math.ceil((total * percent) / 100);

const shown = (text: string): void => {
  if (/\n {4}at |node_modules|\.ts:\d+|Error: /.test(text)) throw new Error(`shown: ${text.slice(0, 500)}`);
};

/** Processor time, because a busy machine makes the clock wait; a first slow go may have been the compiler's or the collector's. */
const inTime = <T>(input: unknown, work: () => T, again = work): T => {
  const timed = (run: () => T): { readonly result: T; readonly milliseconds: number } => {
    const before = process.cpuUsage();
    const result = run();
    const { user, system } = process.cpuUsage(before);
    return { result, milliseconds: (user + system) / 1000 };
  };
  const first = timed(work);
  let best = first.milliseconds;
  for (let tries = 0; tries < 4 && best > longest; tries += 1) best = Math.min(best, timed(again).milliseconds);
  if (best > longest) throw new Error(`${Math.round(best)} ms for ${JSON.stringify(input).slice(0, 600)}`);
  return first.result;
};

const each = (percent: number, salt: number, run: (random: Random, n: number) => void): void => {
  for (let n = 0; n < share(percent); n += 1) run(seeded(seed * 1_000_003 + salt * 100_000_007 + n), n);
};

it('messages', patience, () => {
  const store = openStore({ path: ':memory:' });
  const clock = { now: () => Date.UTC(2027, 0, 20, 9) };
  const settings = studioSettings.parse(goodStudio);
  const failures: unknown[] = [];
  const assistant = createAssistant({ store, clock, settings, onFailure: (_id, error) => void failures.push(error) });
  each(30, 1, (random, n) => {
    const text = spoiltText(random, goodMessage(random));
    const space = `W${Math.floor(n / 300)}`; // a bench of its own now and then, so that it does not grow for ever
    const thread = random.chance(0.05) ? random.pick(oddNames) : `t${random.below(40)}`;
    const isEdit = random.chance(0.1) && n % 300 > 0;
    const id = isEdit ? `m${n - 1}` : `m${n}`;
    const key = { workspace: space, channel: random.chance(0.02) ? random.pick(oddNames) : 'C1', thread };
    const rest = {
      id,
      revision: `${n}`,
      author: random.chance(0.05) ? random.pick(oddNames) : 'U1',
      kind: isEdit ? 'edit' : 'new',
    } as const;
    const send = (delivery: string, revision: string = rest.revision, kind: 'new' | 'edit' = rest.kind): void => {
      store.receive(
        { ...key, ...rest, revision, kind, text, addressed: random.chance(0.7), shared: random.chance(0.1), sentAt: clock.now() + n },
        delivery,
      );
    };
    send(`d${n}`);
    let tries = 0;
    const again = () => {
      tries += 1;
      send(`d${n} ${tries}`, `${n} ${tries}`, 'edit'); // the same message in another revision is an edit of it
      return assistant.work();
    };
    const handled = inTime(text, () => assistant.work(), again);
    if (failures.length > 0) throw new Error(`failed for ${JSON.stringify(text)}: ${String((failures[0] as Error).stack)}`);
    for (const { reply } of handled) {
      if (!reply) continue;
      shown(replyToText(reply));
      replyToBlocks(reply, 'r');
    }
  });
  expect(checkStore(store.database, store.folds).faults).toEqual([]);
  store.close();
});

it('deliveries', patience, async () => {
  const us = { team: 'T1', botUser: 'UBOT', bot: 'BBOT', teamUrl: 'https://net-loft.slack.com/' };
  const here: Workspace = { us, botToken: '', client: {} as Workspace['client'], isMember: async () => true };
  const sharing = { heard: () => undefined, isShared: async () => false };
  const ears = { threads: { knowsThread: () => true }, sharing, now: () => 0 };
  for (let n = 0; n < share(30); n += 1) {
    const random = seeded(seed * 1_000_003 + 2 * 100_000_007 + n);
    const body = spoiltJson(random, goodDelivery(random));
    const text = JSON.stringify(body);
    const read = await inTime(body, () => understood(here, text === undefined ? body : JSON.parse(text), ears));
    const { message } = read;
    if (message) expect(typeof message.message.text).toBe('string');
  }
});

it('price lists', patience, () => {
  each(15, 3, (random) => {
    const csv = spoiltText(random, spoiltText(random, goodPrices));
    const read = inTime(csv, () => readPriceList(csv, { currency: 'GBP' }));
    if (!read.ok) shown(JSON.stringify(read.problem.data));
  });
});

it('lines of JSON', patience, () => {
  each(15, 4, (random, n) => {
    const whole = JSON.stringify(spoiltJson(random, random.pick(goodLines))) ?? '';
    const text = random.chance(0.4) ? spoiltText(random, whole) : whole;
    const read = inTime(text, () => readInputLine(text, { thread: 't1', nextId: `m${n}`, now: 0, addressed: true, json: true }));
    if (!read.ok) shown(read.trouble);
  });
});

it('settings', patience, () => {
  const readFile = (): string => {
    throw new Error('not there');
  };
  each(10, 5, (random) => {
    const studio = spoiltJson(random, goodStudio);
    const read = inTime(studio, () => studioSettings.safeParse(studio));
    if (!read.success) shown(read.error.issues.map(({ message }) => message).join());
    const environment = spoiltJson(random, goodEnvironment) as Record<string, unknown>;
    const set = Object.entries(environment ?? {}).filter((pair): pair is [string, string] => typeof pair[1] === 'string');
    const args = random.chance(0.3)
      ? [spoiltText(random, '--store=x'), ...(random.chance(0.5) ? ['--now', spoiltText(random, '2027-01-20T09:00:00Z')] : [])]
      : [];
    const settings = inTime(set, () => readSettings(args, Object.fromEntries(set), readFile));
    if (!settings.ok) for (const trouble of settings.troubles) shown(trouble);
    else {
      const slack = readSlackSettings(settings.settings.slack);
      if (slack.found === 'problem') shown(slack.problem.sentence);
    }
  });
});

it('leaves nothing on the objects of JavaScript itself', () => {
  const plain: Record<string, unknown> = {};
  expect(Object.keys(Object.prototype)).toEqual([]);
  for (const name in plain) throw new Error(`a plain object has ${name}`);
});
