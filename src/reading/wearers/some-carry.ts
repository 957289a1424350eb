// "wedding party of 11 but the bride n MOH carry bouquets so 9 wearing": who carries flowers wears none, and the last number counts the others.

import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isSingle } from '../text/token.ts';

const form = pattern(
  "(the|a|so|it's|its)? (bridal|wedding)? (party|group|crew) of <n:count> (,|but|-|and|with){1,2} <word>{1,8} (carry|carries|carrying|hold|holding|have|has|having|get|getting) (a|their|the|just)? (<other>|posy|posies) (,|-|so|=|that's|thats|that leaves|leaves|leaving){1,2} (only|just)? <m:count> (wearing|to wear|to pin|wear|need|needing|with|getting) (them|one|flowers|pieces|it|something)?",
);

export const someCarry = (reader: Reader, { start, end, asked }: Part): Finding | undefined => {
  const match = asked ? undefined : form.at(reader.tokens, start, end);
  const [all, some] = [match?.kept['n']?.number, match?.kept['m']?.number];
  if (match?.end !== end) return undefined;
  if (!isSingle(all) || !isSingle(some) || Number(some.amount) >= Number(all.amount)) return { start, end, held: true };
  return found(reader, start, end, [{ fact: 'wearers', wearers: [], total: Number(some.amount) }]);
};
