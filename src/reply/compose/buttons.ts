// The buttons under a reply: what a florist is likely to want next after a price, a calendar or a count. Everything a button does can be typed too.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Asked } from '../../reading/fact.ts';
import { madeOf, ordered } from '../../thread/apply-progress.ts';
import type { Answer } from '../answer.ts';
import type { Action, Block } from '../reply.ts';
import { pieceName, plural } from '../words/names.ts';

export type Topic = 'money' | 'calendar' | 'progress' | 'recipe';

const asked: { readonly [asks in Asked]?: readonly Topic[] } = {
  price: ['money'],
  total: ['money'],
  stemBudget: ['money'],
  spend: ['money'],
  labour: ['money'],
  start: ['calendar'],
  latestStart: ['calendar'],
  orderBy: ['calendar'],
  eventDate: ['calendar'],
  remaining: ['progress'],
  summary: ['money', 'calendar'],
};

/** At most this many kinds get a button of their own; the others are typed. */
const mostKinds = 3;

/** The blocks with one row of buttons at their end. `stated`: what the reply shows because a message stated it. */
export const withButtons = (blocks: readonly Block[], answer: Answer, stated: ReadonlySet<Topic>): readonly Block[] => {
  const topics = new Set([...stated, ...answer.questions.flatMap((question) => asked[question.asks] ?? [])]);
  const actions = [
    ...(topics.has('money') ? moneyActions(answer) : []),
    ...(topics.has('calendar') ? calendarActions(answer) : []),
    ...(topics.has('progress') ? progressActions(answer) : []),
  ];
  if (actions.length === 0) return blocks;
  // What a part of the reply offers by itself moves into the row; buttons that stand for something (a choice, a tick) stay where they are.
  const isOffered = (one: Action): boolean => one.value === '' && actions.some(({ action }) => action === one.action);
  const rest = blocks.filter((block) => block.block !== 'actions' || !block.actions.every(isOffered));
  return [...rest, { block: 'actions', actions }];
};

const kindsOf = ({ event }: Answer): readonly PieceKind[] => [...new Set(event.lines.map((line) => line.piece))];

/** One button where there is one kind; else one for each, which then carries its kind. */
const perKind = (answer: Answer, action: Action['action'], label: string, named: (piece: PieceKind) => string): readonly Action[] => {
  const kinds = kindsOf(answer);
  if (kinds.length <= 1) return [{ label, action, value: '' }];
  return kinds.slice(0, mostKinds).map((piece) => ({ label: named(piece), action, value: piece }));
};

const moneyActions = (answer: Answer): readonly Action[] => {
  const { price, event, manner } = answer;
  if (!price?.ok || event.lines.length === 0) return [];
  return [
    { label: 'Show working', action: 'show working', value: '' },
    { label: 'For the client', action: 'for the client', value: '' },
    ...perKind(answer, 'set price', 'Set price', (piece) => `Set ${pieceName(piece, manner.says)} price`),
  ];
};

const calendarActions = (answer: Answer): readonly Action[] => {
  if (!answer.plan()) return [];
  const recipes = Object.values(answer.event.recipes).some((lines) => (lines?.length ?? 0) > 0);
  return [
    { label: 'Calendar file', action: 'calendar file', value: '' },
    { label: 'Picture', action: 'calendar picture', value: '' },
    ...(recipes ? [{ label: 'Buying list', action: 'buying list' as const, value: '' }] : []),
    { label: 'Move date', action: 'move date', value: '' },
  ];
};

const progressActions = (answer: Answer): readonly Action[] => {
  const { event, manner, message } = answer;
  const left = kindsOf(answer).some((piece) => madeOf(event, piece) < ordered(event, piece));
  const undo = message !== undefined && answer.how === 'stated' && answer.stated.length > 0;
  return [
    ...(left ? perKind(answer, 'made some', 'Made some', (piece) => `Made ${plural(piece, manner.says)}`) : []),
    ...(undo ? [{ label: 'Undo', action: 'undo' as const, value: message }] : []),
  ];
};
