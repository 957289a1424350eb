// "Which pieces is “18 done” about?" answered with the number said again, or shared out: "18 bouts", "14 bouts and 4 corsages". Outside that question
// the same words would be an order.

import type { PieceKind } from '../handbook/pieces.ts';
import type { Fact } from './fact.ts';
import type { Ask, Choice, Reading } from './reading.ts';
import { isCount, type Token } from './text/token.ts';

type Work = Extract<Fact, { fact: 'made' | 'broke' | 'left' }>;

const isWork = (fact: Fact | undefined): fact is Work => fact?.fact === 'made' || fact?.fact === 'broke' || fact?.fact === 'left';

const workOf = ({ facts }: Choice): Work | undefined => {
  const [only, other] = facts;
  return other === undefined && isWork(only) ? only : undefined;
};

/** The one offered kind that a word means: "corsages" are the wrist corsages where no others are offered. */
const meant = (choices: readonly Choice[], kind: PieceKind): Work | undefined => {
  const exact = choices.find((choice) => workOf(choice)?.piece === kind);
  const alike = choices.filter((choice) => kind === 'corsage' && (workOf(choice)?.piece ?? '').endsWith(' corsage'));
  const one = exact ?? (alike.length === 1 ? alike[0] : undefined);
  return one && workOf(one);
};

const beside = /^(and|with|plus|&|n)$/;

const named = ({ piece, count }: Work): string => `${count} ${piece}${count === 1 ? '' : 's'}`;

/** Another number than the one in question: that much work, or an order put right. An order cut down in silence is the worst of it. */
const askWorkOrOrder = (facts: readonly Work[], words: string): Ask => {
  const many = facts.map(named).join(' and ');
  const ordered = facts.map(
    (work): Fact => ({ fact: 'change', what: 'count', to: work.count ?? 0, piece: work.piece ?? 'unspecified', words }),
  );
  return {
    about: 'count',
    why: 'which number',
    words,
    choices: [
      { words: `${many} ${facts[0]?.fact ?? 'made'}`, facts },
      { words: `${many} ordered`, facts: ordered },
    ],
  };
};

// "no 12", "sorry 12 done", "12 not 18": another number for the work in question, of a kind still to be told.
const putsRight = /^\W*(no|nope|sorry|soz|oops|whoops|wait|actually|hang on|i meant|i mean|meant)\b/i;
// "make it 24" may be the order's.
const makes = /\b(make|call) (it|that)\b/i;
const ofWork = /^(done|made|finished|ready|complete|completed|broke|broken|snapped|left)$/;
const isPlain = ({ number }: Token, amount: number): boolean => number?.form === 'plain' && number.amount === String(amount);

/** The same question with the number put right. */
export const numberPutRight = (said: readonly Token[], own: string, ask: Ask): Ask | undefined => {
  const works = ask.choices.map(workOf);
  const asked = works[0]?.count;
  if (ask.why !== 'which piece' || asked === undefined || works.some((work) => work?.count !== asked)) return undefined;
  const [now, ...rest] = said.filter(({ text, number }) => number !== undefined || !ofWork.test(text));
  const count = Number(now?.number?.amount);
  if (now === undefined || !isCount(now) || now.number?.approx === true || count === asked) return undefined;
  const [not, was, more] = rest;
  const takesBack = more === undefined && not?.text === 'not' && was !== undefined && isPlain(was, asked);
  if (!takesBack && (rest.length > 0 || !putsRight.test(own) || makes.test(own))) return undefined;
  const words = ask.words.includes(String(asked)) ? ask.words.replace(String(asked), String(count)) : own;
  return {
    ...ask,
    words,
    choices: ask.choices.map((choice) => ({ ...choice, facts: choice.facts.map((fact) => ({ ...fact, count, words }) as Fact) })),
  };
};

/** "18 bouts", and "14 bouts 4 corsages" where they come to the 18 in question; other numbers are asked about. */
export const kindsAnswered = (said: readonly Token[], words: string, { why, choices }: Ask): Reading | undefined => {
  const asked = choices.map(workOf).find((work) => work?.count !== undefined);
  if (why !== 'which piece' || asked?.count === undefined) return undefined;
  const telling = said.filter(({ text, number }) => number !== undefined || !beside.test(text));
  if (telling.length < 2 || telling.length % 2 !== 0) return undefined;
  const facts: Work[] = [];
  for (let at = 0; at < telling.length; at += 2) {
    const [count, kind] = [telling[at], telling[at + 1]];
    const piece = kind?.means['piece'];
    const work = piece === undefined ? undefined : meant(choices, piece as PieceKind);
    if (count === undefined || !isCount(count) || work === undefined || facts.some((fact) => fact.piece === work.piece)) return undefined;
    facts.push({ ...work, count: Number(count.number?.amount) });
  }
  const agree = facts.reduce((sum, { count }) => sum + (count ?? 0), 0) === asked.count;
  return { facts: agree ? facts : [], unread: [], asks: agree ? [] : [askWorkOrOrder(facts, words)], problems: [] };
};
