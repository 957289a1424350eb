// What good input looks like, as seed for the spoiling: messages, a price list, a studio, a line of JSON, an environment.

import { readFileSync } from 'node:fs';
import { changed, deleted, homeTap, mention, message, messageShortcut, submitted, tap } from '../support/slack-deliveries.ts';
import type { Random } from './random.ts';

const openings = [
  '40 lapel pieces at 25 inc tax',
  '12 corsages at 30 plus VAT',
  '3 crowns 65 each, 20 pin corsages 14.50',
  'a dozen buttonholes £18 each ex tax',
  '2 wrist corsages and 6 hair combs, all 180',
];
const followUps = [
  'dried, event 14 March',
  'make it 45',
  'event is Saturday 13 March at 2pm',
  'made 12',
  'broke 2',
  'artificial',
  'actually 22 each',
  'labour 35 %',
  'sundries 0.80 each',
  'undo',
  'spray roses 12.50 for 20 stems',
  'each one: 1 rose, 2 eucalyptus, 10 cm ribbon',
  'two of us on Thursday, 5 hours',
  'Catriona: wrist corsage, allergic to lilies',
  'when do I start?',
  'what do I need to buy?',
  'why?',
  'what if 22 each?',
  'handed over',
  'spent 84.20 on flowers, 6 hours in all',
  'cancelled',
  'what did it cost?',
  'help',
  'see you then',
  'yes',
  'the first one',
  '17',
  'ribbon 5 m spool 3.20',
];

export const goodMessage = (random: Random): string => {
  const one = random.chance(0.4) ? random.pick(openings) : random.pick(followUps);
  return random.chance(0.2) ? `${one}, ${random.pick(followUps)}` : one;
};

export const goodPrices = [
  'item,price,pack size,unit,lead days',
  'spray rose,12.50,20,stem,3',
  'eucalyptus,6.00,1,bunch,2',
  '"ribbon, cream",3.20,5,m,0',
  'statice;8.40;25;stem;4',
  'pins,4.10,144,each,1',
].join('\n');

export const goodStudio: unknown = JSON.parse(readFileSync('demo-data/studio.json', 'utf8'));

export const goodLines: readonly object[] = [
  { thread: 't1', id: 'm1', author: 'Ailsa', text: '40 lapel pieces at 25 inc tax' },
  { thread: 't2', id: 'm2', edits: 'm1', text: 'make it 45', addressed: true, shared: false },
  { deletes: 'm1' },
  { thread: 't1', tap: { action: 'made all', value: '12 buttonholes' } },
];

export const goodDelivery = (random: Random): object =>
  random.pick([
    () => mention(`<@UBOT> ${goodMessage(random)}`),
    () => message(goodMessage(random), { thread_ts: '1800000000.000100', ts: '1800000001.000100' }),
    () => changed(goodMessage(random), goodMessage(random)),
    () => deleted(),
    () => tap('choose|1', { value: 'a' }),
    () => homeTap('home|tick|0', JSON.stringify(['C1', '1800000000.000100', '12 buttonholes'])),
    () => messageShortcut({ text: goodMessage(random) }),
    () => submitted('made some', { number: { type: 'number_input', value: '12' } }, { private_metadata: '{"channel":"C1"}' }),
  ])();

export const goodEnvironment: Readonly<Record<string, string>> = {
  SLACK_BOT_TOKEN: 'xoxb-test-bot',
  SLACK_APP_TOKEN: 'xapp-test-app',
  SLACK_SIGNING_SECRET: 'made-up',
  BENCHBELL_MODE: 'socket',
  BENCHBELL_PORT: '3000',
  BENCHBELL_STORE: 'benchbell.sqlite',
  BENCHBELL_STUDIO: 'studio.json',
  BENCHBELL_SLACK_API: 'http://127.0.0.1:4000/api/',
  BENCHBELL_LOG: 'info',
};
