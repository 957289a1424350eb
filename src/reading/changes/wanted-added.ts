// Somebody wants more put on the order, or some taken off: "the bride's aunt wants one corsage added on", "client wants 2 corsages taken off", "one corsage to be added for nan".

import type { PieceKind } from '../../handbook/pieces.ts';
import { clausesOf } from '../held/clauses.ts';
import { firstAt, type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice } from '../text/token.ts';

const joint = '(,|-|;|:|and|but|so|now|then|also|ok|oh|&|n|\\.|sorry|actually|update|just){0,4}';
const whose = '(the|his|her|my|our|their|one of the)?';
const wants =
  "(also|now|just|has|have|'s|is|had|would|'d|will|'ll|apparently){0,2} (wants|want|wanted|wanting|needs|need|like|asked for|asking for|ask for|asks for|requested|after)";
const client =
  "(client|client's|couple|customer|planner|family|bride|groom|mob|mog|<role>|<owner>|<role> (<role>|<word>)|<owner> (<role>|<word>))";
const order = '(the|that|her|his|their|my|our)? (order|list|quote|lot|job|booking|sheet|total)';
const added = `(added|adding|putting|put|popped|tacked|stuck|chucked|thrown|included|to be added|to add) (on|in|onto|to|on to)? (${order})?`;
const off = `(taken|taking|knocked|knocking|took|struck|crossed|pulled|cut|cutting|removed|removing|dropped|cancelled|canceled|to come|taken back|to be taken|to be removed) (off|out|from|off of)? (${order})?`;
const kind = '(of)? (the|those|her|his|their)? (<material>)? <p:piece>';
const who = '(for (the|his|her|my|our|their)? (<role>|<owner>|<word>){1,2})?';
const end = '(too|as well|aswell|now|please|pls|thanks|ta|after all|instead){0,2}';

const more = [
  `${joint} ${whose} <word>{1,3} ${wants} (<n:count>|a|an|another) (more|extra)? ${kind} ${added} ${end} ${who}`,
  `${joint} ${whose} ${client} ${wants} (<n:count>|an|another) (more|extra|additional|further) ${kind} ${end} ${who}`,
  `${joint} ${whose} ${client} ${wants} (another|an extra) (<n:count>)? ${kind} ${end} ${who}`,
  `${joint} ${whose} ${client} ${wants} (<n:count>|a|an) ${kind} (on top|extra) ${end} ${who}`,
  `${joint} (<n:count>|a|an|another) (more|extra)? ${kind} (to be added|to add|needs adding|need adding|wants adding|added on|adding on|added to the order|to go on) (on|in)? ${end} ${who}`,
  `${joint} ${whose} (${client}|they|they've|theyve|she|she's|he|he's) (have|has|just|now|also){0,2} (added|asked for|requested|asking for) (another|an extra|<n:count> (more|extra|additional|further)) (<n:count>)? ${kind} ${end} ${who}`,
  `${joint} ${whose} (${client}|they|they've|theyve|she|she's|he|he's) (have|has|just|now|also){0,2} added (<n:count>|a|an|another) ${kind} (on|in|to the order|to it)? ${end} ${who}`,
].map((source) => pattern(source));
const fewer = [
  `${joint} ${whose} <word>{1,3} ${wants} <n:count> ${kind} ${off} ${end} ${who}`,
  `${joint} ${whose} ${client} ${wants} <n:count> (fewer|less) ${kind} ${end}`,
].map((source) => pattern(source));
// "one comb as well", "a corsage too": one more beside work.
const oneMore = [`${joint} ${whose} ${client} ${wants} (one|a|an|1) ${kind} (too|as well|aswell|also){1,2} ${end}`].map((source) =>
  pattern(source),
);

// A word that all of them need.
const said = pattern(
  '(added|adding|putting|put|popped|tacked|stuck|chucked|thrown|included|add|adding|taken|taking|knocked|knocking|took|struck|crossed|pulled|cut|cutting|removed|removing|dropped|cancelled|canceled|come|go|more|extra|additional|further|another|top|fewer|less|an extra|on top|too|as well|aswell|also)',
);

const finding = (reader: Reader, match: Match, start: number, sign: 1 | -1): Finding | undefined => {
  const piece = match.kept['p']?.means['piece'] as PieceKind | undefined;
  const number = match.kept['n']?.number;
  if (piece === undefined || piece === 'unspecified') return undefined;
  if (isRangeOrChoice(number)) return { start, end: match.end, held: true };
  return found(reader, start, match.end, [{ fact: 'change', what: 'count', by: sign * Number(number?.amount ?? 1), piece }]);
};

const wantedAt = (reader: Reader, start: number, end: number, besideWork: boolean): Finding | undefined => {
  for (const [forms, sign] of [[more, 1], [fewer, -1], ...(besideWork ? [[oneMore, 1] as const] : [])] as const) {
    const match = firstAt(forms, reader.tokens, start, end);
    if (match?.end === end) return finding(reader, match, start, sign);
  }
  return undefined;
};

/** What is wanted more or fewer in one clause, alone or beside what is done (`ends` of those words). */
export const wantedAdded = (reader: Reader, part: Part, ends: readonly number[]): Finding | undefined => {
  const { tokens } = reader;
  if (!said.might(tokens)) return undefined;
  for (const clause of clausesOf(reader, part))
    for (const start of [clause.start, ...ends.filter((at) => at > clause.start && at < clause.end)]) {
      const read = wantedAt(reader, start, clause.end, ends.length > 0);
      if (read === undefined) continue;
      const alone =
        ends.length > 0 ||
        tokens.every(({ number, means }, at) => (at >= start && at < clause.end) || (number === undefined && means['piece'] === undefined));
      if (alone) return read;
    }
  return undefined;
};
