// Words of the day that no correction of an order has in it: "moved the van to 4", "change the bin day".

import { pattern } from '../pattern.ts';
import type { Part } from '../text/message.ts';
import type { Token } from '../text/token.ts';

const notForStudio =
  /^(holiday|holidays|hols|cooler|fridge|van|meeting|lunch|invoice|room|bay|code|rent|flight|phone|dentist|bins|bin|alarm|heating|delivery|parking|market|wholesaler|wholesalers|wholesaler's|supplier|suppliers|supplier's|petrol|diesel|coffee|train|landlord|address|wifi)$/;
// "bin the crown altogether" takes it off.
const binned = pattern('bin (the|that|those|her|his|all the|all)? (<count>)? (of)? (the)? (<material>)? <piece>');

export const speaksOfElse = (tokens: readonly Token[], { start, end }: Part): boolean =>
  tokens.slice(start, end).some(({ kind, text, number }, at) => {
    if (number?.form === 'temperature') return true;
    return kind === 'word' && notForStudio.test(text) && binned.at(tokens, start + at, end) === undefined;
  });
