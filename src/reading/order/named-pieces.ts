// Which piece words name pieces of this order: not a dentist's crown, a price's "per buttonhole", or what a batch of goods makes.

import { speaksOfTeeth } from '../held/teeth.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { askedOnce } from '../text/asked-once.ts';
import { isCount, isNumber } from '../text/token.ts';
import { isOtherThings } from '../words/other-things.ts';
import { sundryHeads } from '../words/piece-words.ts';

// "off to the dentist, getting a crown"
const atDentist = askedOnce(speaksOfTeeth);
// "3 bouts on the boxing tonight"
const ring = pattern('(boxing|boxer|boxers|wrestling|ufc|mma|fencing|sparring|undercard|judo|kickboxing)');
// "1 casket spray n 3 wreaths"
const atFuneral = askedOnce((tokens): boolean =>
  tokens.some((each) => /\b(funeral|casket|coffin|sympathy|graves?|cemetery|memorial|hearse)\b/.test(each.text)),
);
// "10 stems of statice per 5 lapels", "5 stems does 2 corsages": what goods make orders none.
export const ofBatch = ({ tokens }: Reader, number: number): boolean => {
  const verb = tokens[number - 1]?.text ?? '';
  if (/^(per|every)$/.test(verb)) return true;
  return (
    /^(make|makes|does|gives|yields|covers)$/.test(verb) &&
    tokens
      .slice(Math.max(0, number - 7), number)
      .some((token) => token.means['ingredient'] !== undefined || token.means['pack'] !== undefined)
  );
};
// "the band's a five piece", "a 3 piece suite": how many make it up. "40 nos chairs" counts chairs.
const ensemble = /^(band|bands|suite|set|orchestra|choir|ensemble|outfit|combo|quartet|group|wedding band)$/;
const ofSeveral = ({ tokens }: Reader, index: number): boolean => {
  const [token, number, before, next] = [tokens[index], tokens[index - 1], tokens[index - 2], tokens[index + 1]];
  if (number?.number?.form !== 'plain') return false;
  if (/^(nos|no|pcs|pc)$/.test(token?.text ?? '')) return next !== undefined && (isOtherThings(next) || next.means['other'] !== undefined);
  // "14 units over last month" are the meter's.
  if (/^units?$/.test(token?.text ?? '')) return /^(over|under|above|below)$/.test(next?.text ?? '');
  if (token?.text !== 'piece' || number.number.amount === '1') return false;
  return (
    /^(a|an)$/.test(before?.text ?? '') ||
    ensemble.test(next?.text ?? '') ||
    tokens.slice(Math.max(0, index - 5), index).some(({ text }) => ensemble.test(text))
  );
};
// "corsages, 3 (pins, not wrist, her wrists swell up)": the kind they are not, and why.
const ofBody = pattern(
  '<any> ((is|are|get|gets|can be|have been|has been|were) (so|too|very|really|a bit|quite)? (swollen|sore|tiny|small|slim|bad|arthritic|weak|broken|itchy|big)|swell|swells|swelled|hurt|hurts|ache|aches|itch|swell up)',
);
const isRuledOut = ({ tokens }: Reader, index: number): boolean =>
  /^wrists?$/.test(tokens[index]?.text ?? '') &&
  (/^(not|no|never)$/.test(tokens[index - 1]?.text ?? '') || ofBody.at(tokens, index, tokens.length) !== undefined);

/** Whether the token names a piece of the order. */
export const isPiece = (reader: Reader, index: number): boolean => {
  const token = reader.tokens[index];
  if (token?.means['piece'] === undefined || !reader.free(index)) return false;
  const next = reader.tokens[index + 1];
  if (isRuledOut(reader, index)) return false;
  if (next !== undefined && next.kind === 'word' && sundryHeads.has(next.text)) return false;
  if (token.text === 'bouts' && next?.text === 'of') return false; // of sneezing
  if (/^crowns?$/.test(token.text) && atDentist(reader.tokens)) return false;
  if (/^bouts?$/.test(token.text) && ring.might(reader.tokens)) return false;
  if (/^wreaths?$/.test(token.text) && atFuneral(reader.tokens)) return false;
  if (token.text === 'hair' && !isCount(reader.tokens[index - 1])) return false; // "hair appointment"
  if (token.means['piece'] === 'unspecified') {
    if (next?.text === 'of') return false;
    if (ofSeveral(reader, index)) return false;
    // "30 nos boutonniere" counts boutonnieres.
    const kind = next?.means['material'] === undefined ? next : reader.tokens[index + 2];
    if (kind?.means['piece'] !== undefined && kind.means['piece'] !== 'unspecified' && isCount(reader.tokens[index - 1])) return false;
    const before = reader.tokens[index - 1];
    if (before?.means['piece'] !== undefined && reader.free(index - 1)) return false;
    if (/^(unit|units|item|items|wearables?)$/.test(token.text) && !isNumber(before, 'plain')) return false;
  }
  // "per buttonhole" and "a head" price a piece; they do not order one, unless they are multiplied: "C$15/bout x 11".
  const before = reader.tokens[index - 1];
  if (next?.text === 'x' && isCount(reader.tokens[index + 2]) && before?.text === '/') return true;
  return !(
    before?.text === 'per' ||
    (before?.text === '/' && (before.glued || !/s$/.test(token.text))) ||
    (before?.means['each'] !== undefined && !/^(\/ ?)?(each|ea|apiece)$|^a pop$/.test(before.text))
  );
};
