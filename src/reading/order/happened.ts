// "2 bouts got smushed", "3 corsages were nicked": something has happened to pieces that are there, whatever the word for it. It orders none.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { isNameless } from '../text/token.ts';
import type { Mention } from './mention.ts';

const befell = pattern('(all|both|have|has|had|just){0,2} (got|were|was|been) (all|a bit|badly|totally|completely|just|both)? <w:word>');
const befallen = /..(ed|en)$|^(left|lost|hit|torn|sat|stuck|cut|bit|shut|thrown|blown)$/;
// What is done to an order, and not to a piece.
const ofOrder =
  /^(added|ordered|booked|confirmed|wanted|needed|requested|required|agreed|quoted|priced|approved|picked|promised|included|pinned|wired|taped|boxed|decided|supposed|changed|swapped|given|chosen|listed|planned|costed|charged|invoiced|asked|allowed|expected|then|when|often|even|open)$/;

// "12 bouts totally finished"
const isMade = pattern('(are|is|all|now|totally|completely|fully|properly|already){1,3} (finished|done|made|completed)');

export const hasHappened = ({ tokens }: Reader, mention: Mention): boolean => {
  const made = isMade.at(tokens, mention.end, tokens.length);
  if (made !== undefined) return !/^(by|for|before|of|from|with|in|on)$/.test(tokens[made.end]?.text ?? '');
  const word = befell.at(tokens, mention.end, tokens.length)?.kept['w'];
  return word !== undefined && isNameless(word) && befallen.test(word.text) && !ofOrder.test(word.text);
};
