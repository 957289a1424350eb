// "cake for 35 people", "bbq for 20 people sunday, me on the grill": company that is fed, and nobody at the bench.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const company = pattern('<n:count> (people|persons|person|ppl|pax|peeps|folk|bodies|men|women|guests|adults|kids)');
const fed =
  /^(cake|cakes|bbq|barbecue|braai|food|catering|cater|lunch|dinner|supper|brunch|breakfast|roast|curry|buffet|drinks|table|party|birthday|bday|feed|feeding|cooking|cook|baking|bake|hosting|tea|pizza|pizzas|sandwiches|picnic|hangi|potluck)$/;
const mostHands = 12;

/** Whether the only people of the sentence are guests: more than any bench has, or fed, where no hours or pay are said for them. */
export const companyFed = ({ tokens }: Reader, { start, end }: Part): boolean => {
  const match = company.in(tokens, start, end);
  const words = tokens.slice(start, end);
  if (match === undefined || words.some(({ number, text }) => number?.form === 'duration' || number?.form === 'money' || text === 'of us'))
    return false;
  return Number(match.kept['n']?.number?.amount) > mostHands || words.some(({ text }) => fed.test(text));
};
