// Whose father or mother: "groom, his father", "bride's mam and dad", "the bride's two mums", "groom, his mom n dad, her mom".

import type { Match } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

interface Before {
  readonly at: number;
  readonly wearer: string;
  readonly count: number;
}

const parent = /^(father|mother)$/;
const ofParent = /^(father|mother) of the (bride|groom)$/;
const coupled = { his: 'groom', her: 'bride' } as const;

// Parents and grandparents have nobody's parents named beside them; "best man, his mum" may be his.
const elders = /^(great-)?(grand|step|god)?(father|mother|parent)s?( of the (bride|groom))?$/;
const women = /(bride|maid|matron|girl|daughter|niece|sister|aunt|widow$|madrina|dama|queen)/;
const men = /(groom|boy|usher|son|nephew|brother|uncle|widower|padrino|king$|man of)/;
const maybe = (wearer: string, own: keyof typeof coupled): boolean => {
  if (/man$|men$/.test(wearer)) return /wom[ae]n$/.test(wearer) === (own === 'her');
  return !(own === 'his' ? women : men).test(wearer);
};

/** Whether the list tells of both his parents and hers. */
const tellsBoth = ({ tokens }: Reader, { start, end }: Part): boolean => {
  const said = new Set<string>();
  for (let index = start; index < end - 1; index++)
    if (/^(his|her)$/.test(tokens[index]?.text ?? '') && /^(father|mother|parent)$/.test(tokens[index + 1]?.means['role'] ?? ''))
      said.add(tokens[index]?.text ?? '');
  return said.size === 2;
};

// "3 ushers, his mum": nobody said whose.
const ownerBy = (reader: Reader, own: keyof typeof coupled, before: readonly Before[], part: Part): string | undefined => {
  if (before.some(({ wearer }) => /^(grooms|brides)$/.test(wearer))) return undefined;
  const one = coupled[own];
  const nearest = before.findLast(({ wearer, count }) => count === 1 && !elders.test(wearer) && maybe(wearer, own));
  if (nearest !== undefined) return nearest.wearer === one ? one : undefined;
  const other = before.some(({ wearer }) => wearer === (one === 'groom' ? 'bride' : 'groom'));
  return other || tellsBoth(reader, part) ? one : undefined;
};

// "bride's mam and dad": hers too; in "bride's mam, dad" whose he is is not said.
const bothOf = ({ tokens }: Reader, match: Match, before: Before | undefined, role: string): string | undefined => {
  const [, own, whose] = ofParent.exec(before?.wearer ?? '') ?? [];
  const joined = /^(and|&|n|\+|\/)$/.test(tokens[match.start - 1]?.text ?? '') && tokens[match.start] === match.kept['r'];
  const from = tokens[match.start - 3]?.text === 'the' ? match.start - 3 : match.start - 2;
  const named =
    (/^(bride|groom)/.test(tokens[match.start - 2]?.text ?? '') && before?.at === from) ||
    (/^(his|her)$/.test(tokens[match.start - 3]?.text ?? '') && before?.at === match.start - 3);
  return joined && named && whose !== undefined && own !== role && before?.count === 1 && !/s$/.test(match.kept['r']?.text ?? '')
    ? `${role} of the ${whose}`
    : undefined;
};

/** "groom, his father": the father of the groom. */
export const parentOf = (reader: Reader, match: Match, before: readonly Before[], part: Part): string | undefined => {
  const role = match.kept['r']?.means['role'] ?? '';
  if (!parent.test(role)) return undefined;
  // "the bride's two mums"
  const owner = reader.tokens[match.start - 1]?.means['owner'] ?? '';
  if (/^(bride|groom)$/.test(owner)) return `${role} of the ${owner}`;
  const both = bothOf(reader, match, before.at(-1), role);
  if (both !== undefined) return both;
  const own = reader.tokens[match.start]?.text;
  const whose = own === 'his' || own === 'her' ? ownerBy(reader, own, before, part) : undefined;
  return whose === undefined ? undefined : `${role} of the ${whose}`;
};
