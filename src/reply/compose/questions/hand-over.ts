// Questions about handing over and looking back: who wears what, the sheets for bench and day, the packing list, how an event went, the season.

import { benchCardBlocks } from '../bench-card.ts';
import { labelsBlocks, packingBlocks } from '../packing.ts';
import { pinOnBlocks } from '../pin-on.ts';
import { printSheetsBlocks } from '../print-sheets.ts';
import { reviewBlocks } from '../review.ts';
import { seasonBlocks } from '../season.ts';
import { wearersBlocks } from '../wearers.ts';
import type { Question, Respond } from './respond.ts';

/** "Print the packing list": one sheet named, but on paper they come together. */
const onPaper = ({ words }: Question): boolean => /\b(print|printed|printable|pdf|paper|a4|letter)\b/i.test(words);

const orPrinted =
  (inThread: Respond): Respond =>
  (question, answer) =>
    onPaper(question) ? printSheetsBlocks(answer) : inThread(question, answer);

export const handOverQuestions = {
  wearers: (_question, answer) => wearersBlocks(answer),
  card: orPrinted((question, answer) => benchCardBlocks(question.piece, answer)),
  pinOn: orPrinted((_question, answer) => pinOnBlocks(answer)),
  packing: orPrinted((question, answer) => (/\blabels?\b/i.test(question.words) ? labelsBlocks(answer) : packingBlocks(answer))),
  labels: orPrinted((_question, answer) => labelsBlocks(answer)),
  sheets: (_question, answer) => printSheetsBlocks(answer),
  review: (_question, answer) => reviewBlocks(answer),
  season: (_question, answer) => seasonBlocks(answer),
} satisfies Readonly<Record<string, Respond>>;
