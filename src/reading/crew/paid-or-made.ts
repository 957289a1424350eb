// "jo at 12 an hour": paid it, or making that many; asked.

import type { Finding, Reader } from '../phrase.ts';
import type { Choice } from '../reading.ts';
import type { Part } from '../text/message.ts';

export const askPaidOrMade = (reader: Reader, { start, end }: Part, rate: number, wage: object | undefined): Finding => {
  const words = reader.words(start, end);
  const choices: Choice[] = [
    { words: `paid ${rate} an hour`, facts: [{ fact: 'crew', ...wage, words }] },
    { words: `makes ${rate} an hour`, facts: [{ fact: 'crew', piecesPerHour: rate, words }] },
  ];
  return { start, end, asks: [{ about: 'count', why: 'which number', words, choices }] };
};
