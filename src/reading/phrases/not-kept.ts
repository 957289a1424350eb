// A deposit, a payment or a discount in percent, which nothing here keeps: "£50 deposit paid", "10% off for cash". It is answered as that, so that nobody thinks it was taken off.

import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';

const lead =
  "(ok|so|and|oh|also|just|btw|fyi|can|could|we|i|you|u|she|he|they|bride|client|the|has|have|'s|she's|they've|he's|shes|theyve|i've|we've|ive|weve|will|i'll|we'll|,|lets|let's|please|pls){0,5}";
const deposit = '(deposit|retainer|booking fee|down payment|downpayment|instalment|part payment)';
const paid =
  '(paid|taken|received|in|due|today|already|by card|by cash|in cash|cash|card|bank transfer|transfer|please|pls|thanks|ta|now|yesterday|cleared|sent|is|has|been|to|hold|the|date|,|x|non refundable){0,6}';
const forms = [
  pattern(
    `${lead} (took|take|taken|got|had|received|paid|pay|need|want|sent|asked for|less|minus|put down|with)? (a|an|the|her|their|our|his)? (<amount>|<percent>)? (quid|cash)? ${deposit} (of|is|was|:|-)? (<amount>|<percent>)? ${paid}`,
  ),
  pattern(`${lead} (paid|put) (us|me)? (<amount>|half|<percent>) (down|upfront|up front|on account|in advance|off the bill) ${paid}`),
  pattern(
    `${lead} (give|giving|gave|knock|knocking|take|taking|do|offer|offering|offered|apply|make|minus|less|with|mates|mate's|rates|get|gets|add)? (rates)? (her|them|him|us|the bride|the couple|the client)? (a|it|that)? (<percent> (off|discount|disc|reduction|cheaper|less)|discount (of)? <percent>) (it|for|if|paying|in|cash|mates|family|friends|rates|loyalty|repeat|trade|charity|the|lot|total|order|everything|all|of it|whole|thing|price|please|pls|thanks|ta|ok|as|a|favour|bulk|quick|early|payment|,|x){0,6}`,
  ),
];
const asksTotal = pattern(
  "(whats|what's|what is|how much is) <any>{0,4} (with|after|less|minus|if i take|taking) (a)? <percent> (off|discount)?",
);

const find = (reader: Reader): Finding[] =>
  reader.untouched().flatMap((part): Finding[] => {
    const { tokens } = reader;
    const { start, end } = part;
    if (tokens.slice(start, end).some(({ means }) => means['piece'] !== undefined || means['ingredient'] !== undefined)) return [];
    if (asksTotal.at(tokens, start, end)?.end === end)
      return [
        found(reader, start, end, [
          { fact: 'question', asks: 'total' },
          { fact: 'question', asks: 'notKept' },
        ]),
      ];
    const whole = forms.some((form) => form.at(tokens, start, end)?.end === end);
    return whole ? [found(reader, start, end, [{ fact: 'question', asks: 'notKept' }])] : [];
  });

export const notKept: Phrase = { name: 'not kept', examples: [], find };
