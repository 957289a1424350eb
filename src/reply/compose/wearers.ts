// Who wears what, and whether it agrees with the order. A difference is named by kind, never smoothed over; a role nobody knows stays as written.

import type { Source } from '../../handbook/sources.ts';
import { careWords } from '../../handover/wearer-cares.ts';
import { type KindCount, type Wearer, type WearersAsk, type WearersList, wearersList } from '../../handover/wearers.ts';
import { soMany } from '../../reading/words/kind-words.ts';
import { capital } from '../../values/capital.ts';
import type { Answer, Manner } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { assumedSpan, countSpan, joined, ownWords, pieceSpan, strong, text } from '../span.ts';
import { counted, pieceName, plural } from '../words/names.ts';

export const wearersBlocks = ({ event, manner }: Answer): readonly Block[] => {
  const list = wearersList(event);
  if (list.wearers.length === 0) return [{ block: 'answer', line: nobodyLine(event) }];
  const told = toldLine(list, event);
  return [
    { block: 'answer', line: answerLine(list, manner) },
    ...(told ? [{ block: 'line' as const, line: told }] : []),
    { block: 'list', items: list.wearers.map((wearer) => wearerLine(wearer, manner)) },
    ...list.asks.map((ask): Block => ({ block: 'line', line: askedLine(ask, manner) })),
    ...sparesBlocks(list),
    ...(list.wearers.some(({ piece }) => piece.origin === 'assumed')
      ? [{ block: 'assumed' as const, line: text`Where you didn't say, each has the usual piece for the role.` }]
      : []),
  ];
};

const people = (count: number): string => (count === 1 ? '1 wearer' : `${count} wearers`);

const nobodyLine = ({ wearersSaid: said, wearersRoughly: roughly }: Answer['event']): Line =>
  said === undefined
    ? text`Nobody has said who wears them yet.`
    : text`${roughly ? assumedSpan('About ') : ''}${strong(people(said))}. Who are they? Say “groom, 5 groomsmen, 2 dads”.`;

const answerLine = ({ all, wearers, differences }: WearersList, manner: Manner): Line => {
  const rough = wearers.some(({ approx }) => approx);
  const who = text`${rough ? assumedSpan('About ') : ''}${strong(people(all.wearers))}`;
  if (all.pieces === 0) return text`${who}; no pieces are ordered yet.`;
  const pieces = soMany(all.pieces);
  if (differences.length === 0) return text`${who}, ${pieces}: they agree.`;
  const short = differences.filter(({ over }) => over < 0).map((one) => text`${strong(`${kindWords(one, manner)} short`)}`);
  const over = differences.filter((one) => one.over > 0);
  const unnamed = over.map((one) => text`${strong(kindWords(one, manner))}`);
  const have = over.length === 1 && over[0]?.over === 1 ? 'has' : 'have';
  const parts = [...short, ...(unnamed.length > 0 ? [text`${joined(unnamed, ' and ')} ${have} no name yet`] : [])];
  return text`${who}, ${pieces}: ${joined(parts, '; ')}.`;
};

const kindWords = ({ piece, over }: KindCount, { says }: Manner): string => counted(Math.abs(over), piece, says);

/** "So 9": the people somebody counted, where the list has more or fewer. */
const toldLine = ({ all }: WearersList, { wearersSaid: said, wearersRoughly: roughly }: Answer['event']): Line | undefined => {
  if (said === undefined || said === all.wearers) return undefined;
  const off = Math.abs(said - all.wearers);
  return text`You said ${roughly ? 'about ' : ''}${said} in all; the list has ${strong(`${off} ${said > all.wearers ? 'fewer' : 'more'}`)}.`;
};

const wearerLine = ({ role, count, approx, wornAs, piece, note, names, cares }: Wearer, { says }: Manner): Line => {
  const who = count === 1 ? ownWords(role) : text`${approx ? assumedSpan('about ') : ''}${countSpan(String(count))} ${ownWords(role)}`;
  const called =
    names.length === 0
      ? ''
      : text` (${joined(
          names.map((one) => [ownWords(one)]),
          ', ',
        )})`;
  const name = count === 1 ? pieceName(wornAs, says) : plural(wornAs, says);
  const care = [...(note === '' ? [] : [ownWords(note).text]), ...cares.map(({ value }) => careWords(value, wornAs))].filter(
    (words) => words !== '',
  );
  return text`${who}${called}: ${piece.origin === 'assumed' ? assumedSpan(name) : pieceSpan(name)}${care.length > 0 ? ` (${care.join('; ')})` : ''}`;
};

const askedLine = (ask: WearersAsk, { says }: Manner): Line => {
  switch (ask.about) {
    case 'two grooms':
      return text`${ask.count} grooms, as you wrote. If that is a slip, say “groom, ${ask.count} groomsmen”.`;
    case 'more names than people':
      return text`${ask.names.length} names for ${ask.count} ${ownWords(ask.role)}: ${joined(
        ask.names.map((one) => [ownWords(one)]),
        ', ',
      )}. Who is it to be? Say “${ownWords(capital(ask.role))}: ${ask.names.slice(0, Math.max(ask.count, 1)).join(', ')}”.`;
    case 'unknown role':
      return text`I don't know what ${ownWords(ask.role)} usually wears and have put ${a(pieceName(ask.piece, says))}. Is that right?`;
    case 'not the usual piece':
      return text`${ownWords(capital(ask.role))}: ${pieceName(ask.piece, says)}, as nothing else is ordered; ${a(pieceName(ask.usual, says))} is more usual. Is that right?`;
    case 'count is a range':
      return text`${ask.count} to ${ask.countMax} ${plural(ask.piece, says)}: the lists count ${ask.count}. How many is it to be?`;
  }
};

const a = (name: string): string => (name === 'piece' ? 'a piece' : `a ${name}`);

const sourceNames = (sources: readonly Source[]): string =>
  [...new Set(sources.map(({ publisher, grade }) => publisher || grade))].join(' and ');

/** A suggestion with where it comes from: no source gives a percentage of finished pieces. */
const sparesBlocks = ({ spares }: WearersList): readonly Block[] => {
  if (!spares) return [];
  const { suggested, over, why, sources } = spares;
  const these = over >= suggested ? (over === 1 ? ' The one without a name could be it.' : ' The ones without a name could be these.') : '';
  return [
    {
      block: 'assumed',
      line: text`${suggested === 1 ? '1 spare is' : `${suggested} spares are`} usual: ${why} (the habit of ${sourceNames(sources)}).${over > 0 ? these : ''}`,
    },
  ];
};
