// What somebody wore or had long ago: "my gran wore a buttonhole to her wedding in 1962, one little white carnation". Nothing of it is ordered, made or put in.

import { firstIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part, Stretch } from '../text/message.ts';
import { isNumber } from '../text/token.ts';

const family =
  '(gran|granny|nan|nana|nanna|grandma|grandmother|grandad|grandpa|granddad|grandfather|mum|mom|mam|mother|dad|father|aunt|auntie|aunty|uncle|sister|great-gran|great-grandmother|mum-in-law|mother-in-law|parents|grandparents|<role>)';
const wedding = '(wedding|wedding day|christening|baptism|communion|confirmation|graduation|debs|prom|matric|formal|hen|funeral)';
const forms = [
  `(my|his|her|our|their) (own|late|old|dear|lovely)? ${family} (always|once|still|even|only|herself|himself)? (wore|carried|got married|had (a|an|one|his|her|it|on|only|just)|was married|used to|kept|pinned)`,
  `(my|his|her|our|their) (own|late|old|dear|lovely)? ${family} <piece> (at|on|in|from|was|had) <any>{1,8} (was|were|had|is)`,
  `(at|for|on|to|from) (my|our) (own|sister's|brother's|mum's|mom's|cousin's|gran's|nan's|first|old)? ${wedding} (<any>){0,6} (was|were|had|wore|carried|in|back)`,
  '(when|day|time) (i|we|my mum|my mom|my gran|my nan) (got|was|were) married',
  "(i|i'll always|i still|i'll never) (remember|recall|forget) (my|the|making|wearing|when|how|our|that|her)",
  '(years|decades|ages|donkeys) ago',
  '(back in|in the) (the)? (fifties|sixties|seventies|eighties|nineties|noughties|old days|day|war|olden days)',
].map((source) => pattern(source));
// "in 1962": longer ago than any order.
const year = pattern('(in|since|from|of|summer|spring|autumn|winter|back in|dated|wedding|<month>) <y:plain>');
const longAgo = (reader: Reader, { start, end }: Part): boolean => {
  for (let index = year.next(reader.tokens, start, end); index < end; index = year.next(reader.tokens, index + 1, end)) {
    const said = year.at(reader.tokens, index, end)?.kept['y'];
    const then = Number(said?.number?.amount);
    if (isNumber(said, 'plain') && /^(19|20)\d\d$/.test(said?.text ?? '') && then < Number(reader.context.today.slice(0, 4)) - 2)
      return true;
  }
  return false;
};
// From here on it is about this order again.
const turns = pattern(
  "(so|but|and|,|which is why|that's why|thats why|now) (now|today|then|for this|this time|the)? (she|he|they|we|i|bride|client|couple|groom|this bride|this one|please|pls|can|could|make|do|put|add|let's|lets|this) (want|wants|would|wanted|need|needs|like|likes|has|have|is|are|can|could|will|should|make|do|put|add|asked|asking|ordered|going|after|having|thought|said|please)",
);

/** The stretches that tell of what was long ago. */
export const memories = (reader: Reader, part: Part): Stretch[] => {
  const { tokens } = reader;
  const ours = tokens
    .slice(part.start, part.end)
    .some(({ means }) => means['piece'] !== undefined || means['ingredient'] !== undefined || means['material'] !== undefined);
  if (part.asked || !ours || !(longAgo(reader, part) || firstIn(forms, tokens, part.start, part.end) !== undefined)) return [];
  const first = longAgo(reader, part) ? part.start : (firstIn(forms, tokens, part.start, part.end)?.start ?? part.start);
  const turn = turns.in(tokens, first, part.end);
  return [{ start: part.start, end: turn === undefined || turn.start <= part.start ? part.end : turn.start }];
};
