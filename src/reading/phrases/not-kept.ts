// A deposit, a payment, a discount in percent or a charge for delivery, which nothing here keeps: "£50 deposit paid", "10% off for cash",
// "delivery 25". It is answered as that, so that nobody thinks it was taken off.

import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isNumber, isSingle, type Token } from '../text/token.ts';

const lead =
  "(ok|so|and|oh|also|just|btw|fyi|can|could|we|i|you|u|she|he|they|bride|client|mum|couple|planner|the|has|have|'s|she's|they've|he's|shes|theyve|i've|we've|ive|weve|will|i'll|we'll|,|lets|let's|please|pls){0,5}";
const deposit = '(deposit|retainer|booking fee|down payment|downpayment|instalment|part payment)';
const paid =
  '(paid|taken|received|in|due|today|already|by card|by cash|in cash|cash|card|bank transfer|transfer|please|pls|thanks|ta|now|yesterday|cleared|sent|is|has|been|to|hold|the|date|,|x|non refundable){0,6}';
const forms = [
  pattern(
    `${lead} (took|take|taken|got|had|received|paid|pay|need|want|sent|asked for|less|minus|put down|with)? (a|an|the|her|their|our|his)? (<amount>|<percent>)? (quid|cash)? ${deposit} (of|is|was|:|-)? (<amount>|<percent>)? ${paid}`,
  ),
  pattern(`${lead} (paid|put) (us|me)? (<amount>|half|<percent>) (down|upfront|up front|on account|in advance|off the bill) ${paid}`),
  pattern(
    `${lead} (want|wants|wanted|asked for|asking for|is asking for|asks for|would like|'d like|d like|after|is after|expects|gets|give|giving|gave|knock|knocking|take|taking|do|offer|offering|offered|apply|make|minus|less|with|mates|mate's|rates|get|gets|add)? (rates)? (her|them|him|us|the bride|the couple|the client)? (a|it|that)? (<percent> (off|discount|disc|reduction|cheaper|less)|discount (of)? <percent>) (it|for|if|paying|in|cash|mates|family|friends|rates|loyalty|repeat|trade|charity|the|lot|total|order|everything|all|of it|whole|thing|price|please|pls|thanks|ta|ok|as|a|favour|bulk|quick|early|payment|,|x){0,6}`,
  ),
];
const add = '(add|adding|put|charge|charging|plus|\\+|and|then|n|&)';
const more = '(for|on|extra|top|on top|of that|as well|too|please|pls|thanks|ta|x|each way|in all|flat|,|to|the|bill|total){0,4}';
const carriage = '(the|for|a)? (delivery|deliveries|delivry|postage|shipping|courier) (charge|fee|cost|costs)?';
const delivery = [
  pattern(`${lead} ${add}? (on)? ${carriage} (is|are|will be|comes to|of|:|=|-|for|costs)? <sum:amount> ${more}`),
  pattern(`${lead} ${add}? (a|an|another|on)? <sum:amount> (on)? ${carriage} ${more}`),
];
// "Delivery 9" may be the hour.
const latestHour = 12;
const isSum = (token: Token | undefined): boolean =>
  isSingle(token?.number) && (isNumber(token, 'money') || (isNumber(token, 'plain') && Number(token?.number?.amount) > latestHour));
/** Behind an order: it is named as unread in its own words. */
const beside = pattern(
  `(,|-|plus|\\+|and|&) (the)? (delivery|delivry|postage|shipping|courier) (charge|fee|is|of|:|=|-){0,2} <sum:amount>`,
);
const besideOrder = ({ tokens, free }: Reader, { start, end }: Part): Finding[] => {
  const match = beside.in(tokens, start, end);
  if (match === undefined || !isSum(match.kept['sum']) || !endsClause(tokens[match.end])) return [];
  // "delivery: $15 / $30 / $40": a row of prices.
  if (isNumber(tokens[match.end + 1], 'money')) return [];
  const [from, to] = [match.start + 1, match.end];
  for (let index = from; index < to; index++) if (!free(index)) return [];
  return [{ start: from, end: to, held: true, whole: true, apart: true }];
};
const endsClause = (token: Token | undefined): boolean =>
  token === undefined || token.kind === 'line' || /^(,|;|\.|\)|-|and|plus|\+|&|on top|extra)$/.test(token.text);
const chargesDelivery = ({ tokens }: Reader, { start, end }: Part): boolean =>
  delivery.some((form) => {
    const match = form.at(tokens, start, end);
    return match?.end === end && isSum(match.kept['sum']);
  });

const asksTotal = pattern(
  "(whats|what's|what is|how much is) <any>{0,4} (with|after|less|minus|if i take|taking) (a)? <percent> (off|discount)?",
);

const find = (reader: Reader): Finding[] =>
  reader.untouched().flatMap((part): Finding[] => {
    const { tokens } = reader;
    const { start, end } = part;
    if (tokens.slice(start, end).some(({ means }) => means['piece'] !== undefined || means['ingredient'] !== undefined))
      return besideOrder(reader, part);
    if (asksTotal.at(tokens, start, end)?.end === end)
      return [
        found(reader, start, end, [
          { fact: 'question', asks: 'total' },
          { fact: 'question', asks: 'notKept' },
        ]),
      ];
    const whole = forms.some((form) => form.at(tokens, start, end)?.end === end);
    return whole || chargesDelivery(reader, part) ? [found(reader, start, end, [{ fact: 'question', asks: 'notKept' }])] : [];
  });

export const notKept: Phrase = { name: 'not kept', examples: [], find };
