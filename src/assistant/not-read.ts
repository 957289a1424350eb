// A message that told something of the order and could not be read: named, and noted in the thread, so that an undo behind it takes back nothing older.

import type { Fact } from '../reading/fact.ts';
import { tellsOfOrder } from '../reading/tells-of-order.ts';
import { mannerOf } from '../reply/answer.ts';
import { askBlocks } from '../reply/compose/ask.ts';
import { stillKeptBlocks } from '../reply/compose/taken-back.ts';
import type { Block } from '../reply/reply.ts';
import { quoted, text } from '../reply/span.ts';
import { isSaid } from '../thread/apply-care.ts';
import { standing } from '../thread/effective.ts';
import { type Logged, logStated, logUndone } from './log-entries.ts';
import type { Scene } from './scene.ts';

const longestNote = 60; // characters

const spoken = ({ message }: Scene): string => message.text.trim().replaceAll(/\s+/g, ' ');

/** Named even where nobody spoke to the bot: the thread has an order, and the message seems to be about it. Not where others read along. */
export const isOfOrder = ({ at, message, reading }: Scene): boolean => {
  const { lines, wearers } = at.thread.state;
  if (message.kind !== 'new' || message.shared || lines.length + wearers.length === 0 || !reading || reading.setAside) return false;
  return reading.unread.some((words) => /\d/.test(words)) && tellsOfOrder(message.text);
};

/** What still waits for an answer is put again. */
export const notReadBlocks = (scene: Scene): readonly Block[] => [
  { block: 'assumed', line: text`Not read: ${quoted(spoken(scene))}. Nothing has changed.` },
  ...askedAgain(scene),
];

const agreesOnly = /^(yes|yep|yeah|yup|yea|aye)( please| pls| thanks| ta)?[.!]*$/i;
const figureOnly = /^\D{0,2}\d+([.,]\d+)?[.!]*$/;

/** "Yes" or a bare number to a question with several choices says nothing yet: the question again. */
export const putAgain = (scene: Scene): readonly Block[] => {
  const said = spoken(scene);
  const { message } = scene;
  return message.kind === 'new' && !message.shared && (agreesOnly.test(said) || figureOnly.test(said)) ? askedAgain(scene) : [];
};

const askedAgain = ({ waiting, at }: Scene): readonly Block[] => (waiting ? askBlocks(waiting, mannerOf(at.studio.state)) : []);

/** The thread with the note that the message was not read; unchanged where the thread holds nothing an undo could take back. */
export const withNote = (scene: Scene, unchanged: Logged): Logged => {
  const { at, message } = scene;
  if (message.kind !== 'new' || at.thread.version === 0 || spoken(scene) === '') return unchanged;
  const note: Fact = { fact: 'unread', parts: [spoken(scene).slice(0, longestNote)], words: '' };
  return logStated(at, message, [note], []);
};

interface NothingTaken {
  readonly logged: Logged;
  readonly blocks: readonly Block[];
}

/** What an undo says when the last message of the thread was not read; undefined when it was. Said again, it takes back the one before. */
export const nothingTaken = ({ store, at, message }: Scene): NothingTaken | undefined => {
  const entries = store.entries(at.thread.key);
  const stands = standing(entries);
  const isSaying = (about: string): boolean => stands.some((one) => one.message === about && one.facts.some(isSaid));
  const partsOf = (about: string): readonly string[] =>
    stands.find((one) => one.message === about)?.facts.flatMap((fact) => (fact.fact === 'unread' ? fact.parts : [])) ?? [];
  const last = entries.findLast((entry) => entry.kind === 'asked' || isSaying(entry.message) || partsOf(entry.message).length > 0);
  if (last === undefined || last.kind === 'asked' || isSaying(last.message)) return undefined;
  const kept = stands.findLast((one) => one.facts.some(isSaid))?.facts.filter(isSaid) ?? [];
  const words = partsOf(last.message).join(', ');
  return { logged: logUndone(store, at, message, last.message), blocks: stillKeptBlocks(words, kept, mannerOf(at.studio.state)) };
};
