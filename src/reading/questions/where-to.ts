// Where it goes, and whom to ring: "u got the address for the venue?", "have we got the bride's number". Not kept here, and that is said.

import { anyIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import type { Forms } from './question-pattern.ts';

const whose =
  "(venue|venue's|venues|hotel|hotel's|church|church's|chapel|registry office|marquee|barn|hall|manor|estate|winery|vineyard|client|client's|clients|bride|bride's|brides|groom|groom's|couple|couple's|customer|customer's|planner|planner's|mob|wedding|reception|ceremony|delivery|drop off|drop|handover|pickup)";
const what =
  '(address|postcode|post code|zip|zip code|eircode|phone number|phone no|contact number|contact|contacts|email|mobile|cell number|directions)';
const forms = [
  `${what} (details|again)? (for|of|to|at) (the|our|this|her|his|their|that)? <any>{0,2} ${whose}`,
  `${whose} (<any>)? ${what}`,
  `(bride's|brides|groom's|client's|clients|customer's|planner's|couple's|mob's|venue's) (number|no|phone)`,
  `(number|phone) for (the|our|her|his|their)? (venue|hotel|church|bride|groom|client|couple|customer|planner|mob)`,
  `((have|do) (we|you|u|i) (got|have|got hold of)?|did (we|you|u|anyone) get|(has|does) (anyone|anybody) (got|have)|(anyone|anybody|you|u|we) got) (her|his|their) ${what}`,
];
const patterns = forms.map((source) => pattern(source));

/** What is asked so is kept by nobody here: "other". */
export const whereTo: Forms = [['other', forms]];

/** Whether the part names where it goes or whom to ring. */
export const namesWhere = ({ tokens }: Reader, { start, end }: Part): boolean => anyIn(patterns, tokens, start, end);

// "you got the venue address": a question that has lost its "have".
const clipped = pattern('(so|hey|hi|ok|,){0,2} (you|u|ya|ye|anyone|anybody|someone|somebody) got (the|a|an|her|his|their|any|our) <any>');
export const asksForIt = (reader: Reader, part: Part): boolean =>
  clipped.at(reader.tokens, part.start, part.end) !== undefined && namesWhere(reader, part);
