// A material they have turned away from, and the one they take instead: "fresh now, they went off the dried", "ditch the silk, go dried".

import type { Material, PieceKind } from '../../handbook/pieces.ts';
import { firstAt, pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import { placesIn } from '../text/places-in.ts';
import { isMaterial } from './material-said.ts';

const after =
  "(is|are|was|were|got|has been|have been|being|'s)? (off (the (table|cards|menu|list))?|out|no more|gone|cancelled|canceled|dropped|ditched|scrapped|binned|wrong|out of (budget|season|stock|the question)|too (dear|expensive|pricey|much|fragile|fussy)|fell through|vetoed|wont last|won't last|wouldnt last|not available|unavailable|sold out|not happening|no longer)";
const their = '(the|all|any|all the|those|that|their|it as|them as|doing|having|using|with)?';
// What they turned away from follows at once.
const before = [
  `((go|goes|gone|went|going) off|sick of|tired of|fed up with|bored of|over|not keen on|not mad about|anything but|decided against|against|passed on|passing on|passing|allergic to|away from) ${their} <o:material>`,
  `(ditch|ditching|ditched|scratch|scratching|scrub|scrubbing|strike|nix|nixing|cancel|cancelling|cancelled|ignore|disregard|delete|axe|axing|axed|no to|said no to|say no to|saying no to|enough of|bye bye|bye|goodbye|never mind|nevermind|scrap|scrapping|scrapped|drop|dropping|dropped|bin|binning|binned|lose|losing|forget (what|that)? (i|we)? (said)? (about)?|replace|replacing|replaced|skip|skipping|swap|swapping|swapped|switch|switching|switched|change|changing|changed) (from)? ${their} <o:material>`,
  `(changed|changing|change) (their|her|his|our|my)? (mind|minds) (on|about|re|from) ${their} <o:material>`,
  `(hate|hates|hated|don't like|dont like|doesn't like|doesnt like|didn't like|didnt like|doesn't want|doesnt want|dont want|don't want|didn't want|didnt want|can't get|cant get|couldn't get|couldnt get|can't do|cant do|isn't doing|not doing|dont do|don't do|won't do|wont do|not having|not using) ${their} <o:material> (any more|anymore)?`,
  `(instead of|rather than|as opposed to|in place of) ${their} <o:material>`,
  `(no|no more) ${their} <o:material> (please|pls|this time|any more|anymore|now|for this one|at all)?`,
  `(had|have) (it|them|this|these)? (down)? (as)? <o:material> (down|written|noted)?`,
  "(i|we|they|she|he|id|i'd|bride|client) (said|put|wrote|told you|told u|quoted|asked for|ordered|typed|noted) (it was|its|it's|all)? <o:material> (,|but|-|and|originally|before|earlier|yesterday)",
  '(were|was|thought|thinking|were going|originally|previously|formerly) <o:material> (,|but|-)',
  `<o:material> ${after}`,
].map(pattern);
// "fresh over dried", "they prefer fresh to dried"
const preferred = [
  `<n:material> (over|rather than|instead of|beats|preferred to|as opposed to) ${their} <o:material>`,
  `(prefer|prefers|preferred|like|likes|rather have|sooner have) <n:material> (to|over|than|more than|rather than) ${their} <o:material>`,
  '(from)? <o:material> (flowers|ones)? (to|into|\\>) (all)? <n:material>',
].map(pattern);
const far = 14;
// "8 crowns not 6 and they're to be dried rather than fresh": both are put right together.
const besideCount = pattern('<count> (<material>)? (<piece>)? (,)? (not|rather than|instead of) <count>');
// "scratch dried": what they are to be instead is not said.
const scratched = pattern(
  "(ditch|scratch|scrub|nix|scrap|axe|bin|drop|lose|forget|ignore|disregard|cancel|no more|enough of|off|hates|hate) (the|all the)? <o:material> (<piece>|flowers|stuff|idea|now|please|pls|thanks|then|after all|for|this one|,|sorry|they|she|bride|client|he|changed|has|have|had|'ve|doesn't|doesnt|hates|don't|dont|like|it){0,7}",
);
const onlyScratched = (reader: Reader, index: number): Finding[] => {
  for (let from = Math.max(0, index - 4); from < index; from++) {
    const match = scratched.at(reader.tokens, from, reader.tokens.length);
    if (match?.end === reader.tokens.length && match.kept['o'] === reader.tokens[index])
      return [{ start: match.start, end: match.end, held: true }];
  }
  return [];
};

const kindAt = (reader: Reader, index: number): PieceKind | undefined => {
  const kind = reader.tokens[index]?.means['piece'];
  return kind === undefined || kind === 'unspecified' ? undefined : (kind as PieceKind);
};

// "lose the dried, bouts to be fresh", "scrap dried for the corsages, fresh": what stands behind either, or the one kind between them.
const onKind = pattern('(on|for|in|with) (the|all the|all|our|both|both the)? (<n:count>)? <p:piece>'); // "swap fresh for dried on the crowns"
const kindOf = (reader: Reader, old: number, fresh: number): PieceKind | undefined => {
  const behind = onKind.at(reader.tokens, Math.max(old, fresh) + 1, reader.tokens.length)?.kept['p']?.means['piece'];
  if (behind !== undefined && behind !== 'unspecified') return behind as PieceKind;
  const between = new Set<PieceKind>();
  for (let at = Math.min(old, fresh) + 1; at < Math.max(old, fresh); at++) {
    const kind = kindAt(reader, at);
    if (kind !== undefined && reader.free(at)) between.add(kind);
  }
  const [only, another] = between;
  return (
    [old + 1, fresh + 1].map((at) => kindAt(reader, at)).find((kind) => kind !== undefined) ?? (another === undefined ? only : undefined)
  );
};

const find = (reader: Reader): Finding[] => {
  const { tokens } = reader;
  const materials = tokens.flatMap((token, index) => (token.means['material'] !== undefined && isMaterial(reader, index) ? [index] : []));
  const [only] = materials;
  if (materials.length === 1 && only !== undefined) return onlyScratched(reader, only);
  if (materials.length !== 2 || besideCount.in(tokens, 0, tokens.length) !== undefined) return [];
  for (let index = 0; index < tokens.length; index++) {
    const match = firstAt(preferred, tokens, index, tokens.length) ?? firstAt(before, tokens, index, tokens.length);
    const { o, n } = match?.kept ?? {};
    if (match === undefined || o === undefined) continue;
    const old = tokens.indexOf(o);
    const fresh = n === undefined ? materials.find((at) => at !== old) : tokens.indexOf(n);
    if (fresh === undefined || !materials.includes(old) || Math.abs(fresh - old) > far) continue;
    const [from, to] = [o.means['material'], tokens[fresh]?.means['material'] as Material];
    if (from === undefined || from === to || reader.message.parts.some((part) => part.asked && part.start <= fresh && fresh < part.end))
      continue;
    // "the dried are out in the van and 20 fresh bouts": the other is counted.
    if (tokens[fresh - 1]?.number !== undefined) continue;
    const piece = kindOf(reader, old, fresh);
    // "30 bouts from dried to preserved": an order of thirty, or the thirty that there are?
    const ahead = match.start - 1;
    const ofAhead = n !== undefined && old < fresh && kindAt(reader, ahead) !== undefined;
    if (ofAhead && tokens[ahead - 1]?.number !== undefined) return [{ start: ahead - 1, end: match.end, held: true }];
    if (ofAhead) {
      const fact = { fact: 'change', what: 'material', to, from, piece: kindAt(reader, ahead) as PieceKind } as const;
      return reader.free(ahead) ? [found(reader, ahead, match.end, [fact])] : [];
    }
    const last = Math.max(match.end - 1, fresh);
    const kind = onKind.at(tokens, last + 1, tokens.length);
    const on = kind?.end ?? last + 1;
    // "swap fresh for dried on 6 crowns": of how many?
    if (kind?.kept['n'] !== undefined) return [{ start: Math.min(match.start, fresh), end: on, held: true }];
    const takes = [...placesIn(match), fresh, ...Array.from({ length: on - last - 1 }, (_, at) => last + 1 + at)];
    const [start, end] = [Math.min(match.start, fresh), on];
    if (takes.some((at) => !reader.free(at))) continue;
    return [
      found(
        reader,
        start,
        end,
        [{ fact: 'change', what: 'material', to, from, ...(piece === undefined ? {} : { piece }) }],
        [...new Set(takes)],
      ),
    ];
  }
  return [];
};

export const materialLeft: Phrase = {
  name: 'material left',
  examples: ['fresh now, they went off the dried', 'ditch the silk, go dried'],
  find,
};
