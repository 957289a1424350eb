// All sheets as one file to print. The words beside it say what is in it, for whoever cannot open it.

import { sheetsAsLaid } from '../../handover/sheets-as-laid.ts';
import { wearersList } from '../../handover/wearers.ts';
import { paperOf } from '../../studio/paper.ts';
import type { Answer } from '../answer.ts';
import type { Block } from '../reply.ts';
import { strong, text } from '../span.ts';
import { boardsWords, namesOf } from './packing.ts';

export const printSheetsBlocks = ({ event, studio, manner }: Answer): readonly Block[] => {
  const { laid, packing } = sheetsAsLaid(event, studio, namesOf(manner));
  if (laid.boards.length === 0) return [{ block: 'answer', line: text`There are no pieces in this thread yet. How many?` }];
  const { wearers, differences } = wearersList(event);
  const who = wearers.map(({ role, count }) => (count === 1 ? role : `${count} ${role}`)).join(', ');
  const boards = packing.boards.map(({ label, holds }) => `${label} (${holds})`).join('; ');
  const alt = [
    `Bench cards for ${packing.pieces.join(', ')}`,
    `Pin-on sheet for ${who === '' ? 'pieces not named yet' : who}`,
    `Labels for ${boards}`,
    `Packing list: ${packing.take.join(', ')}`,
  ].join('. ');
  return [
    {
      block: 'answer',
      line: text`Sheets to print, ${paperOf(studio.settings)}: ${strong(packing.pieces.join(', '))} on ${boardsWords(laid.boards)}, with the pin-on sheet, labels and packing list.`,
    },
    ...(differences.length > 0
      ? [{ block: 'problem' as const, line: text`Wearers and pieces don't agree yet: say “who wears what?” before you print.` }]
      : []),
    { block: 'file', file: { kind: 'sheets', name: 'sheets.pdf', alt: `${alt}.` } },
  ];
};
