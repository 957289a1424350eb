// One message to one outcome: what is read, what may be stored, and the reply. Stores nothing itself; the same message, thread and clock give the same outcome.

import { studioPrices } from '../buying/buy-for-events.ts';
import { quotedNow } from '../buying/quoted-prices.ts';
import type { Fact } from '../reading/fact.ts';
import type { Reading } from '../reading/reading.ts';
import { type Answer, mannerOf } from '../reply/answer.ts';
import { withCalendarKept } from '../reply/compose/calendar-given.ts';
import { composeAnswer } from '../reply/compose/compose.ts';
import { courtesyBlocks } from '../reply/compose/courtesy.ts';
import { hazardAskedBlocks } from '../reply/compose/hazard-asked.ts';
import { notUnderstood } from '../reply/compose/not-understood.ts';
import type { Reply } from '../reply/reply.ts';
import { earlierStands, nothingKept, problemLine } from '../reply/words/problems.ts';
import { isSaid } from '../thread/apply-care.ts';
import { asksOfStudio } from '../thread/apply-studio-facts.ts';
import { type Decision, decide } from '../thread/decide.ts';
import { standing } from '../thread/effective.ts';
import { dayAt } from '../values/day.ts';
import type { Problem } from '../values/problem.ts';
import { problem } from '../values/result.ts';
import { benchKey, consider } from './consider.ts';
import { type Figures, figuresOf } from './figures.ts';
import type { HandledAs } from './handled.ts';
import { heardFacts, isHazardAsked, withoutFixings } from './hazards-said.ts';
import { isPriceList } from './import-prices.ts';
import { keepBeside } from './keep-beside.ts';
import { type KeepingAsked, keepingAsked } from './keeping.ts';
import { kindWanted } from './kind-wanted.ts';
import { leftUnread } from './left-unread.ts';
import { type Logged, logDrop, logRewritten, logStated, logUndone, type Standpoint, withCautioned, withQuestion } from './log-entries.ts';
import { isOfOrder, nothingTaken, notReadBlocks, putAgain, withNote } from './not-read.ts';
import type { IncomingMessage, Store } from './ports.ts';
import { priceTrouble } from './price-trouble.ts';
import { progressContext } from './progress-context.ts';
import { openQuestion, readingOf } from './reading-of.ts';
import { answerOf, type Scene } from './scene.ts';
import { settleGoods } from './settle-goods.ts';
import { stageProgress } from './stage-progress.ts';

export interface Answered {
  readonly logged: Logged;
  readonly reply: Reply | undefined;
  readonly as: HandledAs;
  readonly reading: Reading | undefined;
  readonly figures: () => Figures;
  readonly forgets?: true; // everything kept of the thread is to be deleted
  readonly apart?: Reply; // for the asker alone
}

type Settled = Extract<Decision, { kind: 'settled' }>;

export const answerMessage = (store: Store, at: Standpoint, message: IncomingMessage, now: number): Answered => {
  const today = dayAt(now, at.studio.state.settings.timeZone);
  if (message.kind === 'delete') return withdrawn({ store, at, message, today, reading: undefined });
  const read = withoutFixings(readingOf(message, at.thread.state, at.studio.state, today, now), at.thread.state);
  const reading = stageProgress(read, progressContext(store, at, today));
  const open = reading.answersOpen ? undefined : openQuestion(at.thread.state, now);
  const scene: Scene = { store, at, message, today, reading, ...(open?.kind === 'choice' ? { waiting: open.ask } : {}) };
  const decision = decide(at.thread.state, reading, at.studio.state.settings.currency);
  if (decision.kind === 'nothing') return message.kind === 'edit' ? withdrawn(scene) : unread(scene);
  if (decision.kind === 'refused') return refused(scene, decision.problems);
  const keeping = keepingAsked(decision.questions, at.thread.key, at.thread.version > 0, mannerOf(at.studio.state));
  if (keeping) return kept(scene, keeping);
  return decision.undo ? undone(scene) : settled(scene, decision);
};

const kept = (scene: Scene, keeping: KeepingAsked): Answered => {
  if (scene.message.guest) return refused(scene, [problem('members-only', {})]);
  const { reply } = keeping;
  if (keeping.does === 'ask') {
    return ended(scene, 'asked', reply, withQuestion(unchanged(scene), scene.message, { kind: 'choice', ask: keeping.ask }));
  }
  if (keeping.does === 'forget') return { ...ended(scene, 'stored', reply), forgets: true };
  return keeping.does === 'hand out' ? { ...ended(scene, 'answered', reply), apart: keeping.apart } : ended(scene, 'answered', reply);
};

/** The thread as it stands, for outcomes that change nothing. */
const unchanged = ({ at }: Scene): Logged => ({ entries: [], event: at.thread.state, studio: at.studio.state });

const ended = (scene: Scene, as: HandledAs, reply: Reply | undefined, logged: Logged = unchanged(scene)): Answered => ({
  logged,
  reply,
  as,
  reading: scene.reading,
  figures: () =>
    figuresOf(consider(scene.store, scene.at.thread.key, logged.event, logged.studio, scene.today), benchKey(scene.at.thread.key)),
});

/** Small talk is left alone unless it was said to the bot; what tells of the order is named. */
const unread = (scene: Scene): Answered => {
  if (!scene.message.addressed || scene.message.kind === 'tap') {
    const again = putAgain(scene);
    if (again.length > 0) return ended(scene, 'asked', { blocks: again });
    if (!isOfOrder(scene)) return ended(scene, 'silent', undefined);
    return ended(scene, 'answered', { blocks: notReadBlocks(scene) }, withNote(scene, unchanged(scene)));
  }
  if (isHazardAsked(scene.message)) {
    return ended(scene, 'answered', { blocks: hazardAskedBlocks(answerOf(scene, unchanged(scene), { how: 'stated' })) });
  }
  const told = heardFacts(scene.message);
  if (told.length > 0) {
    const logged = logStated(scene.at, scene.message, told, []);
    return spoken(scene, logged, answerOf(scene, logged, { how: 'stated' }));
  }
  const wanted = kindWanted(scene);
  if (wanted) return ended(scene, 'asked', wanted.reply, withQuestion(unchanged(scene), scene.message, wanted.open));
  const courtesy = courtesyBlocks(scene.message.text);
  if (courtesy) return ended(scene, 'answered', { blocks: courtesy });
  if (scene.message.text.trim() !== '') {
    const blocks = notUnderstood(answerOf(scene, unchanged(scene), { how: 'stated' }));
    return ended(scene, 'answered', { blocks }, isOfOrder(scene) ? withNote(scene, unchanged(scene)) : unchanged(scene));
  }
  return refused(scene, [problem('message-empty', {})]);
};

const refused = (scene: Scene, problems: readonly Problem[]): Answered => {
  const manner = mannerOf(scene.at.studio.state);
  const kept = scene.message.kind === 'edit' ? earlierStands : nothingKept;
  const said = scene.message.text.trim() !== '';
  const blocks = [
    ...problems.slice(0, 1).map((one) => ({ block: 'problem' as const, line: problemLine(one, manner.money, manner) })),
    ...(said ? [{ block: 'assumed' as const, line: kept }] : []),
  ];
  return ended(scene, 'refused', { blocks }, withNote(scene, unchanged(scene)));
};

const settled = (scene: Scene, decision: Settled): Answered => {
  const { store, at, message } = scene;
  const goods = settleGoods(store, at, message, decision);
  if (!goods.ok) return refused(scene, [goods.problem]);
  const { event, studio } = goods.value;
  const ofStudio = studio.length > 0 || (decision.ask !== undefined && asksOfStudio(decision.ask));
  if (message.guest && ofStudio) return refused(scene, [problem('members-only', {})]);
  const log = (facts: readonly Fact[]): Logged =>
    message.kind === 'edit' ? logRewritten(store, at, message, 'edited', facts, studio) : logStated(at, message, facts, studio);
  const stated = [...event, ...studio];
  const plain = log(event);
  const quoted = isPriceList(message) || stated.length === 0 ? undefined : quotedNow(plain.event, studioPrices(plain.studio), stated);
  const beside = [
    ...(quoted ? [quoted] : []),
    ...heardFacts(message),
    ...(stated.length > 0 ? leftUnread(scene.message, scene.reading) : []),
  ];
  const logged = beside.length > 0 ? log([...event, ...beside]) : plain;
  const answer = answerOf(scene, logged, {
    how: message.kind === 'edit' ? 'edited' : 'stated',
    stated,
    questions: decision.questions,
    ask: decision.ask,
    unasked: decision.unasked,
  });
  const trouble = stated.length > 0 ? priceTrouble(answer) : undefined;
  if (trouble?.kind === 'refuse') return refused(scene, [trouble.problem]);
  return spoken(scene, logged, trouble?.kind === 'ask' && !answer.ask ? { ...answer, ask: trouble.ask } : answer);
};

const undone = (scene: Scene): Answered => {
  const { store, at, message } = scene;
  // A button takes back the message it stands under, however old; words take back the last one.
  const about = message.kind === 'tap' && message.tap?.value ? message.tap.value : undefined;
  const none = about ? undefined : nothingTaken(scene);
  if (none) return ended(scene, 'answered', { blocks: none.blocks }, none.logged);
  const dropped = about ? undefined : logDrop(store, at, message);
  if (dropped) return spoken(scene, dropped, answerOf(scene, dropped, { how: 'undone' }));
  const last = standing(store.entries(at.thread.key)).findLast(
    (one) => one.facts.some(isSaid) && (about ? one.message === about : one.message !== message.id),
  );
  if (!last) return refused({ ...scene, message: { ...message, text: '' } }, [problem('nothing-to-undo', {})]);
  const entries = store.entries(at.thread.key);
  if (message.guest && entries.some((entry) => entry.message === last.message && entry.scope === 'studio')) {
    return refused(scene, [problem('members-only', {})]);
  }
  const logged = logUndone(store, at, message, last.message);
  return spoken(scene, logged, answerOf(scene, logged, { how: 'undone', takenBack: last.facts.filter(isSaid) }));
};

/** A deleted message, or one edited into small talk, takes back what it said; if it said nothing, nobody needs to hear of it. */
const withdrawn = (scene: Scene): Answered => {
  const { store, at, message } = scene;
  const facts = store.entries(at.thread.key).flatMap((entry) => (entry.message === message.id ? entry.facts : []));
  if (facts.length === 0) return ended(scene, 'silent', undefined);
  const logged = logRewritten(store, at, message, message.kind === 'delete' ? 'deleted' : 'edited', [], []);
  if (!facts.some(isSaid)) return ended(scene, 'silent', undefined, logged);
  return spoken(scene, logged, answerOf(scene, logged, { how: 'withdrawn' }));
};

const spoken = (scene: Scene, logged: Logged, answer: Answer): Answered => {
  const composed = composeAnswer(answer);
  const { asks, cautioned } = composed;
  const { reply, fact } = withCalendarKept(composed.reply, answer);
  const kept = keepBeside(scene.store, scene.at, scene.message, withCautioned(logged, scene.message, cautioned), fact ? [fact] : []);
  const as = answer.ask ? 'asked' : answer.stated.length > 0 || answer.how !== 'stated' ? 'stored' : 'answered';
  const { open } = scene.at.thread.state;
  const waits =
    asks?.kind === 'choice' ||
    (asks?.kind === 'missing' && asks.count !== undefined) ||
    asks?.topic !== open?.topic ||
    asks?.tried !== open?.tried;
  const asking = asks && (waits || logged.entries.length > 0);
  return ended(scene, as, reply, asking ? withQuestion(kept, scene.message, asks) : kept);
};
