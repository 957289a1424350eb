// What goes into each of so many pieces, said beside their number: "20 bouts: 2 roses each", "2 roses per bout, 20 bouts". The number is
// left to the order; only the flowers are read here.

import type { PieceKind } from '../../handbook/pieces.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { ofKind } from '../text/kind-named.ts';
import type { Stretch } from '../text/message.ts';
import { isCount, type Token } from '../text/token.ts';
import { readStretch } from './recipe-stretch.ts';

const counted = pattern(
  '(need|we need|want|just|so|the|all){0,2} <n:count> (x|of the)? (<material>)? <p:piece> (:|-|=|,|;|\\(|with|w|w /|and|has|have|having|get|gets|getting|take|takes|taking|need|needs|all|to have|will have|using|made of|made with|made up of){0,3}',
);
const behind = pattern(
  '(,|;|-|\\(|x|so|and|for|in|in each of|each of|on|of){0,2} (the|all|all the|my|our)? <n:count> (x)? (<material>)? <p:piece> (\\))?',
);
// "each of the 20 bouts has 2 roses"
const ofEach = pattern(
  '(in|for|on)? (each|every one|<each>|all) of (the|our|my|those|these)? <n:count> (<material>)? <p:piece> (:|-|=|,|has|have|gets|get|takes|take|needs|need|uses|use|there is|goes|put|with|is){0,2}',
);
const saysEach = (token: Token): boolean => token.means['each'] !== undefined || /^(each|every|per)$/.test(token.text);
const says = /^(:|with|w|w \/|has|have|having|to have|will have|made of|made with|made up of)$/;
// "all 20 bouts get 1 rose 1 fern"
const tellsEach = /^(get|gets|getting|take|takes|taking|need|needs|use|uses|using)$/;
const most = 30; // stems of one kind in a piece

// "2 roses each, £8 each": the flowers end where money begins, or a day.
const beforeMoney = (tokens: readonly Token[], { start, end }: Stretch): number => {
  let cut = end;
  for (let index = start; index < end; index++) {
    const token = tokens[index];
    if (token?.text === ',' || token?.kind === 'line') cut = index;
    else if (token?.means['each'] !== undefined && tokens[index + 1]?.number?.form === 'money') cut = index + 1;
    else if (token?.number?.form === 'money' || token?.means['weekday'] !== undefined || token?.means['month'] !== undefined) return cut;
  }
  return end;
};

// "1 pin each and 1 box", "1 rose each for friday": what stands behind the word is no more of it.
const upToEach = ({ tokens }: Reader, { start, end }: Stretch): Stretch => {
  for (let index = end - 1; index > start + 1; index--)
    if (tokens[index]?.means['each'] !== undefined)
      return { start, end: index + (index + 1 < end && tokens[index + 1]?.means['piece'] !== undefined ? 2 : 1) };
  return { start, end };
};

const read = (reader: Reader, whole: Stretch, piece: Token | undefined, count: number, each = false, told = false): Finding | undefined => {
  const { tokens } = reader;
  const kind = piece?.means['piece'] as PieceKind | undefined;
  const stretch = each || tokens[whole.start - 1]?.means['each'] !== undefined ? whole : upToEach(reader, whole);
  // "20 bouts, 2 roses" may be bought for all of them: it says each, or that they have them and fewer than there are.
  const every = each || tokens.slice(Math.max(0, stretch.start - 1), stretch.end).some(saysEach);
  if (!every && !told && !says.test(tokens[stretch.start - 1]?.text ?? '')) return undefined;
  const fact = readStretch(reader, stretch, true)?.fact;
  if (fact?.fact !== 'recipe' || fact.pieces !== undefined || fact.lines.length === 0) return undefined;
  const amounts = fact.lines.every(({ stems, length }) => (stems ?? length) !== undefined);
  const goods = tokens.slice(stretch.start, stretch.end).some(({ means }) => means['ingredient'] !== undefined);
  if (fact.lines.some(({ stems = 1, wearer }) => stems > most || wearer !== undefined) || !amounts) return undefined;
  if (!goods && fact.lines.some(({ ingredient }) => ingredient !== 'stem')) return undefined;
  if (fact.piece !== undefined && kind !== fact.piece && kind !== 'unspecified') return undefined;
  if (!every && !(goods && fact.lines.every(({ stems = 1 }) => stems < count && stems <= 8))) return undefined;
  return found(reader, stretch.start, stretch.end, [{ ...fact, ...ofKind(kind) }]);
};

export const besideCount = (reader: Reader, part: Stretch): Finding | undefined => {
  const { tokens } = reader;
  const each = ofEach.at(tokens, part.start, part.end);
  const ahead = each ?? counted.at(tokens, part.start, part.end);
  if (ahead !== undefined && isCount(ahead.kept['n']))
    return read(
      reader,
      { start: ahead.end, end: beforeMoney(tokens, { start: ahead.end, end: part.end }) },
      ahead.kept['p'],
      Number(ahead.kept['n']?.number?.amount),
      each !== undefined,
      tellsEach.test(tokens[ahead.end - 1]?.text ?? '') && tokens.slice(ahead.start, ahead.end).some(({ text }) => text === 'all'),
    );
  for (let index = part.end - 2; index > part.start && index >= part.end - 6; index--) {
    const tail = behind.at(tokens, index, part.end);
    if (tail?.end !== part.end || !isCount(tail.kept['n'])) continue;
    const words = tokens.slice(tail.start, tail.end);
    // "1 rose, 2 wax for the 40 bouts" is read as a recipe of its own.
    if (words.some(({ text }) => text === 'for')) return undefined;
    let from = tail.start;
    const joined = behind.at(tokens, index - 1, part.end);
    if (joined?.end === part.end) from = joined.start;
    // "12 stems of statice per 6 lapels" is the whole batch.
    if (
      /^(per|every|each|for each|for every|to|makes|make|does|do|=|gives|from|is|are)$/.test(tokens[from - 1]?.text ?? '') &&
      tokens[from - 1]?.text !== 'each'
    )
      return undefined;
    return read(reader, { start: part.start, end: from }, tail.kept['p'], Number(tail.kept['n']?.number?.amount));
  }
  return undefined;
};
