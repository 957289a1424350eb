// "18 done, how many left?", "moved to the 20th, when do we start now?": what is told ends where the question begins, as at a full stop.

import type { Token } from './token.ts';

const told =
  /(^| )(done|made|finished|boxed|completed|wired|broke|broken|snapped|moved to|pushed to|changed to|pushed back|moved back|brought forward)( |$)/;
const counted = /\d|(^| )(one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|dozen|\w+teen|twenty|thirty|forty|fifty)( |$)/;
// What may come, or is itself asked, is not told.
const open =
  /^(so |and |but |ok )?(if|what|whats|what's|how|is|are|was|were|do|does|did|can|could|would|will|should|have (we|i|you|they)|has|any|when|suppose|say|once|with)( |$)|(^| )(if|once|when|after|before|or|should|would|could|need|want|get|how many|gets|being) /;
const asks =
  /^(so |and |but |now )?(how (many|much|long|far|late|is|are|does)|what|whats|what's|are (we|you)|is (that|it|there)|does (that|it)|do (we|i)|can (we|i)|will (we|i|it)|when|where|should (we|i))( |$)/;

const longest = 12;
const isStop = (token: Token | undefined): boolean => token === undefined || token.kind === 'line' || /^[.;?!]$/.test(token.text);
const words = (tokens: readonly Token[], from: number, step: 1 | -1, most: number): string => {
  const said: string[] = [];
  for (let index = from; said.length < most && !isStop(tokens[index]); index += step) said.push(tokens[index]?.text ?? '');
  return (step === 1 ? said : said.reverse()).join(' ');
};

/** The tokens with a full stop for the comma between what is told of the work and what is asked about it. */
export const withQuestionsApart = (tokens: readonly Token[]): readonly Token[] =>
  tokens.map((token, index) => {
    if (token.text !== ',' || tokens[index + 1]?.glued !== false || !asks.test(words(tokens, index + 1, 1, 4))) return token;
    const before = words(tokens, index - 1, -1, longest);
    return told.test(before) && counted.test(before) && !open.test(before) ? { ...token, text: '.' } : token;
  });
