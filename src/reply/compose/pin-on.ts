// The pin-on sheet in the thread: board by board, a box to tick for each person, with the side and the care each one needs.

import { boardName } from '../../handover/boards.ts';
import { type PinOnGroup, type PinOnRow, pinOnList } from '../../handover/pin-on-list.ts';
import { cautionsOnSheet } from '../../handover/work-at-hand.ts';
import { oneOf } from '../../reading/wearers/role-counts.ts';
import { soMany } from '../../reading/words/kind-words.ts';
import { capital } from '../../values/capital.ts';
import type { Answer, Manner } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { joined, ownWords, strong, text } from '../span.ts';
import { counted, pieceName, plural } from '../words/names.ts';
import { cautionBlocks } from './cautions.ts';

export const pinOnBlocks = ({ event, studio, manner }: Answer): readonly Block[] => {
  const { groups, without, dissent } = pinOnList(event);
  const pieces = groups.reduce((count, { rows }) => count + rows.length, 0);
  if (pieces === 0) return [{ block: 'answer', line: text`There are no pieces in this thread yet. How many?` }];
  const named = groups.reduce((count, { rows }) => count + rows.filter(({ wearer }) => wearer).length, 0);
  const short = without.map(
    ({ wearer, short: missing }) =>
      text`${missing === wearer.count ? '' : `${missing} of `}${wearer.count === 1 ? '' : `${wearer.count} `}${ownWords(wearer.role)}`,
  );
  return [
    {
      block: 'answer',
      line: text`${strong(soMany(pieces))} to pin on, ${named === pieces ? 'all named' : named === 0 ? 'nobody named yet' : `${named} named`}.`,
    },
    ...(short.length > 0
      ? [{ block: 'problem' as const, line: text`More wearers than pieces. Without one: ${joined(short, ', ')}.` }]
      : []),
    ...groups.map(
      (group): Block => ({
        block: 'list',
        title: groupTitle(group, manner),
        items: together(group.rows).map((rows) => rowLine(rows, manner)),
      }),
    ),
    ...cautionBlocks(cautionsOnSheet('pin-on sheet', event, studio)),
    ...(dissent.length > 0
      ? [
          {
            block: 'assumed' as const,
            line: text`${capital(dissent.map(({ piece, says }) => `${plural(piece, manner.says)}: ${says}`).join('; '))}.`,
          },
        ]
      : []),
    { block: 'next', line: text`For paper, say “print the sheets”.` },
  ];
};

const groupTitle = ({ board, rows }: PinOnGroup, { says }: Manner): Line =>
  text`${strong(boardName(board))}: ${counted(rows.length, board.piece, says)}${board.material === undefined ? '' : `, ${board.material}`}`;

/** Rows of one wearer that say the same stand in one line. */
const together = (rows: readonly PinOnRow[]): readonly (readonly PinOnRow[])[] => {
  const groups: PinOnRow[][] = [];
  for (const row of rows) {
    const last = groups.at(-1);
    const [first] = last ?? [];
    const alike =
      first &&
      first.wearer?.name === undefined &&
      row.wearer?.name === undefined &&
      first.wearer?.role === row.wearer?.role &&
      first.side === row.side &&
      first.note === row.note;
    if (last && alike) last.push(row);
    else groups.push([row]);
  }
  return groups;
};

const rowLine = (rows: readonly PinOnRow[], { says }: Manner): Line => {
  const [first] = rows;
  if (!first) return [];
  const boxes = '☐'.repeat(rows.length);
  const what = first.wornAs === first.piece ? '' : `${pieceName(first.wornAs, says)}, `;
  const note = first.note === '' ? [] : text` (${ownWords(first.note)})`;
  return text`${boxes} ${whoWords(first, rows.length)}: ${what}${first.side}${note}`;
};

const whoWords = ({ wearer }: PinOnRow, here: number): Line => {
  if (!wearer) return text`not named yet`;
  if (wearer.name !== undefined) return text`${ownWords(wearer.name)}, ${ownWords(oneOf(wearer.role))}`;
  return here === wearer.of ? text`${ownWords(wearer.role)}` : text`${ownWords(wearer.role)}, ${here} of ${wearer.of}`;
};
