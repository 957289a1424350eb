// The bench card in the thread: one kind of piece, short enough for a phone on the bench. All of them on paper are a file.

import { amountWords } from '../../buying/amount-words.ts';
import type { PieceKind } from '../../handbook/pieces.ts';
import { type BenchCard, benchCards } from '../../handover/bench-card.ts';
import type { Answer, Manner } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { assumedSpan, ownWords, strong, text } from '../span.ts';
import { duration } from '../words/dates.ts';
import { counted, listed, pieceName, plural } from '../words/names.ts';
import { cautionBlocks } from './cautions.ts';

/** The card of this kind; with several kinds and none named, the first, and how to see the others. */
export const benchCardBlocks = (piece: PieceKind | undefined, { event, studio, manner }: Answer): readonly Block[] => {
  const cards = benchCards(event, studio);
  const [first] = cards;
  if (!first) return [{ block: 'answer', line: text`There are no pieces in this thread yet. How many?` }];
  const card = cards.find((one) => one.piece === piece) ?? (piece === undefined ? first : undefined);
  const kinds = cards.map((one) => plural(one.piece, manner.says)).join(', ');
  if (!card)
    return [{ block: 'answer', line: text`There are no ${plural(piece ?? 'unspecified', manner.says)} in this order. It has: ${kinds}.` }];
  const others = cards.filter((one) => one !== card).map((one) => `“bench card ${plural(one.piece, manner.says)}”`);
  return [
    ...cardBlocks(card, manner),
    {
      block: 'next',
      line:
        others.length > 0
          ? text`For the others say ${others.join(' or ')}; for paper, “print the sheets”.`
          : text`For the wall, say “print the sheets”.`,
    },
  ];
};

const cardBlocks = (card: BenchCard, manner: Manner): readonly Block[] => [
  { block: 'answer', line: titleLine(card, manner) },
  { block: 'line', line: text`Worn on the ${card.worn.side}${card.worn.dissent === '' ? '' : `; ${card.worn.dissent}`}.` },
  ...recipeBlocks(card),
  {
    block: 'list',
    title: text`Steps, in order:`,
    items: card.steps.map(({ step, note }) => text`${strong(step)}${note === '' ? '' : `. ${note}`}`),
  },
  ...cautionBlocks(card.cautions),
  ...(card.minutes.range ? [{ block: 'assumed' as const, line: minutesLine(card, manner) }] : []),
];

const titleLine = ({ piece, count, materials, minutes, minutesAll }: BenchCard, { says }: Manner): Line => {
  const each = minutes.each.origin === 'assumed' ? assumedSpan(duration(minutes.each.value)) : duration(minutes.each.value);
  const all = count === 1 ? '' : ` each, ${duration(minutesAll)} in all`;
  return text`${strong(counted(count, piece, says))}${materials.length > 0 ? `, ${listed(materials)}` : ''}: ${each}${all}.`;
};

const minutesLine = ({ minutes, piece }: BenchCard, { says }: Manner): Line =>
  text`Minutes are the usual ${minutes.range?.least ?? ''} to ${minutes.range?.most ?? ''} for a ${pieceName(piece, says)}, common practice; say what yours take.`;

/** One list a batch: pieces made alike. */
const recipeBlocks = ({ batches, count }: BenchCard): readonly Block[] => {
  if (batches.every(({ lines }) => lines.length === 0))
    return [{ block: 'line', line: text`No recipe yet: say “3 bunny tails, 1 statice each”.` }];
  return batches.map(({ wearer, pieces, lines }): Block => {
    const whose = wearer === undefined ? [] : text` (${ownWords(wearer)})`;
    const several = batches.length > 1 ? ` for ${pieces} of the ${count}` : '';
    const items =
      lines.length === 0 ? [text`no recipe yet`] : lines.map((line) => text`${amountWords(line.amount)} ${ownWords(line.ingredient)}`);
    return { block: 'list', title: text`In each${several}${whose}:`, items };
  });
};
