// Wearers of a dinner, a school or a club, in words no list of wedding people has: "formal committee getting flowers: head girl, head boy,
// 12 prefects, 3 teachers", "coach, 15 players and 2 managers all get a buttonhole". Read only when every word of the list is understood.

import type { PieceKind } from '../../handbook/pieces.ts';
import { type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import { ofKind } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isCount } from '../text/token.ts';
import { honourRoles, longestRole, type Stands } from '../words/honour-roles.ts';
import { countFor, nameOf } from './role-counts.ts';
import { isStranger } from './strange-wearers.ts';
import type { Entry } from './wearers-read.ts';

const before = pattern('(the|our|both|all|a|an|their|his|her|my)? (<o:owner>)? (<n:count>)? (x|of the)? (other|more|the)?');
const behind = pattern('((x|:|-) <m:count>)? ((:|-|in|with|wearing|gets|get|has|having)? (a|an)? (<material>)? <p:piece> (each)?)?');
const link = /^(,|and|&|n|plus|\+|then|\/|;)$/;
// "all wearing one", "to get a buttonhole each", "getting corsages"
const tail = pattern(
  '(,|-|:)? (all|each|both|who|they|everyone|of whom|<all>){0,2} (are|is|will be|will|to|be|should)? (wearing|wear|wears|get|gets|getting|having|have|need|needs|needing|want|wants|to wear|with|in) (a|an|one|the|1)? (<material>)? (<p:piece>|them|one|flowers|flower|it|something)? (each|apiece|on|please|pls|too|all|<each>){0,2}',
);
const allOne = pattern('((,|-|:) (all|each)?|all|each) (<material>)? <p:piece> (each|all|for all|please|pls)?');
const total = pattern('(,|-|=|so)? (total|in total|that is|makes|=|so) (of|is|:)? <n:count> (<all>|in all|people|wearers|total)?');
// "at £9 each": the list ends where its price begins.
const price = pattern('(,|-)? ((at|@) <amount>|<money> <each>|<n:plain> <each>)');
// What may stand before a list: its occasion, and that they wear them.
const wears = /^(wearing|wear|wears|wearers|flowers|getting|gets|get|for|buttonholes?|who|who's|whos|list|corsages?|to wear)$/;
const notAhead = /^(no|not|without|except|minus|left|made|done|broke|sick|off|away|coming|arriving|if|or|need|hours|last|paid|owes)$/;

interface Listed {
  readonly entry: Entry;
  readonly own: boolean; // in a word that only such a list has
  readonly pair: boolean;
  readonly stranger: boolean; // in a word nobody knows
  readonly end: number;
}

interface Named {
  readonly words: string;
  readonly stands: Stands;
  readonly role?: string; // one that every list has goes by its usual name
  readonly end: number;
}

const roleAt = ({ tokens }: Reader, index: number, end: number): Named | undefined => {
  let text = '';
  let best: Named | undefined;
  for (let at = index; at < Math.min(end, index + longestRole); at++) {
    const token = tokens[at];
    if (token === undefined || token.kind !== 'word' || token.number !== undefined) break;
    text = at === index ? token.text : `${text} ${token.text}`;
    const stands = honourRoles.get(text);
    if (stands !== undefined) best = { words: text, stands, end: at + 1 };
  }
  const role = tokens[index]?.means['role'];
  if (role === undefined || role === 'rest') return best;
  // "guest speakers" are no guests.
  if (best !== undefined && best.end > index + 1) return best;
  return { words: tokens[index]?.text ?? '', stands: 1, role, end: index + 1 };
};

const itemAt = (reader: Reader, index: number, end: number, sure: boolean): Listed | undefined => {
  const { tokens } = reader;
  const open = before.at(tokens, index, end);
  let from = open?.end ?? index;
  let role = roleAt(reader, from, end);
  if (role === undefined && open !== undefined) {
    from = index;
    role = roleAt(reader, from, end);
  }
  const number = open?.kept['n'];
  if (number !== undefined && (!isCount(number) || number.number?.max !== undefined)) return undefined;
  // "12 widgets, 2 managers all get a buttonhole": beside wearers that are known, who they are is their own affair.
  const stranger = role === undefined;
  if (role === undefined) {
    from = open?.end ?? index;
    const token = tokens[from];
    if (!sure || number === undefined || !isStranger(token)) return undefined;
    role = { words: token.text, stands: 'several', end: from + 1 };
  }
  const more: Match | undefined = behind.at(tokens, role.end, end);
  const count = number ?? more?.kept['m'];
  const said = count === undefined ? undefined : Number(count.number?.amount);
  const both = tokens.slice(index, from).some(({ text }) => text === 'both');
  const alone = both ? 2 : role.stands === 'several' ? undefined : role.stands;
  const many = role.role === undefined ? (said ?? alone) : countFor(role.words, said, both);
  // "2 parents of the bride" are the two.
  if (many === undefined || many < 1 || (role.stands === 2 && many !== 2)) return undefined;
  const piece = more?.kept['p']?.means['piece'] as PieceKind | undefined;
  // "the bride's two mums"
  const owner = open?.kept['o']?.means['owner'];
  if (owner !== undefined && (role.role === undefined || from === index)) return undefined;
  const parent =
    /^(father|mother)$/.test(role.role ?? '') && /^(bride|groom)$/.test(owner ?? '') ? `${role.role} of the ${owner}` : role.role;
  const wearer = parent === undefined ? role.words : nameOf(parent, many);
  return {
    own: role.role === undefined,
    stranger,
    pair: role.stands === 2,
    entry: { at: index, wearer, count: many, ...ofKind(piece) },
    end: more?.end ?? role.end,
  };
};

// "deb ball list - 24 debs": the ball's name is nobody's.
const goesOn = ({ tokens }: Reader, index: number, end: number): boolean =>
  index >= end ||
  tokens[index]?.kind === 'line' ||
  link.test(tokens[index]?.text ?? '') ||
  tail.at(tokens, index, end)?.end === end ||
  allOne.at(tokens, index, end)?.end === end ||
  price.at(tokens, index, end) !== undefined;

/** Where the list begins: behind its title, or at the start. */
const listStart = (reader: Reader, { start, end }: Part): { start: number; cue: boolean; piece?: PieceKind } | undefined => {
  const { tokens } = reader;
  let cue = false;
  let piece: PieceKind | undefined;
  for (let index = start; index < Math.min(end, start + 9); index++) {
    const token = tokens[index];
    if (token === undefined) return undefined;
    const opens = index === start || /^(:|-|,|for|the|wearing|getting|flowers)$/.test(tokens[index - 1]?.text ?? '') || piece !== undefined;
    const first = opens ? itemAt(reader, index, end, index === start) : undefined;
    if (first !== undefined && !isTitle(reader, index, end) && goesOn(reader, first.end, end))
      return { start: index, cue, ...(piece === undefined ? {} : { piece }) };
    if (
      (token.number !== undefined && token.text !== 'one') ||
      notAhead.test(token.text) ||
      token.means['other'] !== undefined ||
      token.means['ingredient'] !== undefined
    )
      return undefined;
    const kind = token.means['piece'] as PieceKind | undefined;
    if (kind !== undefined && kind !== 'unspecified') piece = kind;
    cue ||= kind !== undefined || wears.test(token.text);
  }
  return undefined;
};

// "debs: 18 debs, 18 partners", "mayor's do: mayor": what heads the list is none of it.
const isTitle = ({ tokens }: Reader, index: number, end: number): boolean => {
  for (let at = index; at < Math.min(end, index + 4); at++) {
    if (/^(:)$/.test(tokens[at]?.text ?? '')) return true;
    if (link.test(tokens[at]?.text ?? '')) return false;
  }
  return false;
};

export const honoured = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  const head = listStart(reader, part);
  if (head === undefined) return undefined;
  const entries: Entry[] = [];
  let own = 0;
  let pairs = 0;
  let strangers = 0;
  let cue = head.cue;
  let all = head.piece;
  let sum: number | undefined;
  let priced: number | undefined;
  let index = head.start;
  while (index < part.end) {
    if (entries.length > 0) {
      const worn = tail.at(tokens, index, part.end) ?? allOne.at(tokens, index, part.end);
      if (worn?.end === part.end) {
        cue = true;
        const kind = worn.kept['p']?.means['piece'] as PieceKind | undefined;
        if (kind !== undefined && kind !== 'unspecified') all ??= kind;
        break;
      }
      const said = total.at(tokens, index, part.end);
      if (said?.end === part.end) {
        sum = Number(said.kept['n']?.number?.amount);
        break;
      }
      if (all !== undefined && price.at(tokens, index, part.end) !== undefined) {
        priced = index;
        break;
      }
      if (!link.test(tokens[index]?.text ?? '') && tokens[index]?.kind !== 'line') return undefined;
      while (index < part.end && (link.test(tokens[index]?.text ?? '') || tokens[index]?.kind === 'line')) index += 1;
    }
    const item = itemAt(reader, index, part.end, true);
    if (item === undefined) return undefined;
    entries.push(item.entry);
    if (item.own) own += 1;
    if (item.pair) pairs += 1;
    if (item.stranger) strangers += 1;
    index = item.end;
  }
  const heads = entries.reduce((count, each) => count + each.count, 0);
  if (strangers > 0 && entries.length - strangers < (cue ? 1 : 2)) return undefined;
  if (own === 0 || entries.length < 2 || (!cue && pairs === 0 && entries.length < 3)) return undefined;
  // "captain, 5 committee, total 9": who the others are is not said, and nine is no price.
  if (sum !== undefined && sum !== heads) return { start: part.start, end: part.end, held: true };
  // "9 graduates, 2 lecturers, 1 valedictorian wearing corsages"
  const last = entries.at(-1);
  if (entries.every((each) => each.piece === undefined || each === last)) all ??= last?.piece;
  const given = entries.map((each) => ({ ...each, ...(each.piece === undefined && all !== undefined ? { piece: all } : {}) }));
  const pieces = new Map<PieceKind, number>();
  for (const each of given) if (each.piece !== undefined) pieces.set(each.piece, (pieces.get(each.piece) ?? 0) + each.count);
  const facts: Unworded[] = [
    { fact: 'wearers', wearers: given.map(({ at: _, most: __, ...entry }) => entry), ...(sum === undefined ? {} : { total: sum }) },
    ...[...pieces].map(([piece, count]): Unworded => ({ fact: 'pieces', piece, count })),
  ];
  return found(reader, part.start, priced ?? part.end, facts);
};
