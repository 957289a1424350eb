// Whose father or mother: "groom, his father", "bride's mam and dad", "the bride's two mums".

import type { Match } from '../pattern.ts';
import type { Reader } from '../phrase.ts';

interface Before {
  readonly at: number;
  readonly wearer: string;
  readonly count: number;
}

// "bride's mam and dad": hers too; in "bride's mam, dad" whose he is is not said.
const ofParent = /^(father|mother) of the (bride|groom)$/;
const bothOf = ({ tokens }: Reader, match: Match, before: Before | undefined, role: string): string | undefined => {
  const [, own, whose] = ofParent.exec(before?.wearer ?? '') ?? [];
  const joined = /^(and|&|n|\+)$/.test(tokens[match.start - 1]?.text ?? '') && tokens[match.start] === match.kept['r'];
  const from = tokens[match.start - 3]?.text === 'the' ? match.start - 3 : match.start - 2;
  const named = /^(bride|groom)/.test(tokens[match.start - 2]?.text ?? '') && before?.at === from;
  return joined && named && own !== role && before?.count === 1 && !/s$/.test(match.kept['r']?.text ?? '')
    ? `${role} of the ${whose}`
    : undefined;
};

// "groom, his father": the father of the groom.
export const parentOf = (reader: Reader, match: Match, before: Before | undefined): string | undefined => {
  const role = match.kept['r']?.means['role'] ?? '';
  // "the bride's two mums"
  const owner = reader.tokens[match.start - 1]?.means['owner'] ?? '';
  if (/^(father|mother)$/.test(role) && /^(bride|groom)$/.test(owner)) return `${role} of the ${owner}`;
  const both = /^(father|mother)$/.test(role) ? bothOf(reader, match, before, role) : undefined;
  if (both !== undefined) return both;
  const own = /^(his|her)$/.test(reader.tokens[match.start]?.text ?? '');
  return own && /^(groom|bride)$/.test(before?.wearer ?? '') && /^(father|mother)$/.test(role)
    ? `${role} of the ${before?.wearer}`
    : undefined;
};
