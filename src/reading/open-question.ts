// What a reply means while a question of ours is open: a bare "45", "each", "the first one".

import type { Reading, ReadingContext } from './reading.ts';
export const answerOpenQuestion = (_text: string, _context: ReadingContext): Reading | undefined => undefined;
