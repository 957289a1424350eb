// What stems make: "3 stems makes 2 buttonholes", "1 bunch of 10 does 4 corsages", "10 lapels need 10 roses and 20 wheat", "5 stems per corsage".

import type { PieceKind } from '../../handbook/pieces.ts';
import { linesIn } from '../goods/recipe-lines.ts';
import { type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { ofKind } from '../text/kind-named.ts';
import { isCount, isSingle, type Token } from '../text/token.ts';
import { batch } from './batches.ts';

// "a bunch of 20 stretches to 8 buttonholes"
const reaches =
  '(stretches|stretch|stretched|will stretch|should stretch|would stretch|can stretch|runs|ran|will run|goes|went) to|is good for|should do|should make|will cover|should cover';
const sizedForm = pattern(
  `(a|one|1|each|per|every)? <pack> (of|x|\\() <n:count> (\\))? (stems|stem)? (of)? (<ingredient>)? (only|just)? (does|do|makes|make|gives|gets|covers|yields|will do|will make|is enough for|is|=|for|did|made|${reaches}) (about|us|me|you)? <m:count> (<p:piece>)`,
);
const makes = `(only|just)? (does|do|makes|make|gives|gets|covers|yields|will do|will make|is enough for|is|=|for|did|made|gives us|gives me|makes me|does me|does us|gets me|gets us|gets you|goes into|${reaches})`;
// "10 stem bunch does 5 corsages", "1 bunch (10 stems) = 4 corsages", "20 heads does 10 bouts"
const bunchForms = [
  pattern(
    `(a|one|1|each|per|every|the)? <n:count> (-)? (stem|stems|head|heads|stm) (<pack>) (of)? (<ingredient>)? ${makes} (about|us|you)? <m:count> (<p:piece>)`,
  ),
  pattern(
    `(a|one|1|each|per|every|the)? (<ingredient>)? <pack> (of)? (<ingredient>)? \\( (of|about)? <n:count> (stems|stem|heads)? \\) (of)? (<ingredient>)? ${makes} (about|us|you)? <m:count> (<p:piece>)`,
  ),
  // "we get 8 bouts out of a bunch of 20"
  pattern(
    '<m:count> (<p:piece>) (come|comes|coming|made|cut)? (from|out of|outta|off) (each|every|a|one|the)? <pack> of <n:count> (<ingredient>)?',
  ),
  pattern(`<ingredient> <pack> of <n:count> ${makes} (about|us|you)? <m:count> (<p:piece>)`),
  pattern(`<n:count> (heads|blooms|sprigs|florets|flowers|tips) (of)? (<ingredient>)? ${makes} (about|us|you)? <m:count> (<p:piece>)`),
];
// "used up 40 stems of statice on 20 crowns, so two each": said again per piece, it is no price.
const usedOn = pattern(
  '(used|used up|gone through|got through|went through|spent) (up)? (about|all)? <n:amount> (stem|stems|head|heads|sprig|sprigs|<ingredient>) (of)? (the)? (<ingredient>)? (on|over|across|in|between|for|making) (the|those|about|all)? <m:count> (<material>)? (<p:piece>)',
);
// "5 bouts off a single spray rose": where the name ends what is said.
const ofOneFlower = pattern('<m:count> (<p:piece>) (from|out of|off|outta) (each|every|a|one) (single|whole)? <ingredient>');
// "60 gyp sprigs between 20 bouts"; between two kinds nobody knows how.
const sharedForm = pattern(
  `((a|an|<n:count>) (stem|stems|sprig|sprigs|bunch|bunches|head|heads|<ingredient>)|(stem|sprig|head|bunch)) (of)? (<ingredient>)? (sprigs|stems|heads|sprig)? (split|spread|shared)? (between|across|among|amongst|over) (about|all|the|all the)? <m:count> (<material>)? (<p:piece>)`,
);
const furtherKind = pattern('(and|&|plus|\\+|n|,) (the)? <count> (<material>)? <piece>');
// "25m ribbon = 60 corsages", "1m of ribbon does 8 bouts"
const lengthForm = pattern(
  `<l:length> (of)? (<word>)? <i:ingredient> ${makes} (about|us|you|all|all the)? <m:count> (<material>)? <p:piece>`,
);
const byThePack = ({ means, text }: Token): boolean =>
  means['pack'] !== undefined && /^(packs?|pks?|packets?|pkts?|box|boxes|bags?|rolls?|reels?|spools?|tins?|tubes?)$/.test(text);
const closes = /^([,.;)!-]|and|so|if|when|usually|normally|each|i|we|on|max|tops|easy|easily|at)$/;
const yieldForms = [
  usedOn,
  sizedForm,
  ...bunchForms,
  pattern(
    `<n:amount> (<any>)? (stem|stems|<ingredient>|bunch|bunches) (of)? (<ingredient>)? (<word>)? (make|makes|made|does|do|will do|will make|is|are|=|gives|give|for|for every|to every|gets|get|covers|cover|yields|yield|enough for|gives us|gives me|makes me|does me|does us|gets me|gets us|gets you|gives you|gets ya|makes us|per|into|goes into|${reaches}) (about|us|all|the|all the)? <m:count> (<p:piece>)`,
  ),
  pattern(
    `(a|one|each|per|every) (bunch|bunches|wrap|bundle) (of)? <ingredient> (only|just)? (makes|make|does|do|gives|gets|covers|yields|will do|will make|is enough for|${reaches}) (me|us|you)? (about|around)? <m:count> (<p:piece>)`,
  ),
  sharedForm,
  pattern(
    '<m:count> (<p:piece>) (come|comes|coming|made|cut)? (from|out of|per|to|off|outta|for) (each|every|a|one|the)? (single|whole)? (<n:amount>)? (<ingredient>)? (stem|stems) (of)? (<ingredient>)?',
  ),
  ofOneFlower,
  pattern(
    '(a|one|each|every|per) (single|whole)? stem (of)? (<ingredient>)? (makes|does|is|gives|gets|covers|for|do|will do|yields) (me|us|you)? (about|around)? <m:count> (<p:piece>)?',
  ),
  pattern(
    '<m:count> (<p:piece>) (come|comes|coming|made|cut)? (from|out of|outta|off|per|to) (each|every|a|one|the)? (single|whole)? (<n:count>)? (bunch|bunches|wrap|bundle) (of)? (<ingredient>)?',
  ),
];
const stemCount = pattern(
  '(<n:amount>|half a) (<ingredient>)? (stem|stems) (in|into|per|each|a|for|to|/|go in|goes in|go into|goes into|of flowers)? (each|a|every|per|an)? (<each>|<p:piece>)',
);
const stemsIn = pattern(
  '(<p:piece> (needs|takes|has|have|get|gets|uses|use|take|need|is)|(for|per|in) (one|a|each|every|1) <p:piece> (:|,|-|=|it is|its)?) (about|around)? <n:amount> stems (<each>)?',
);
const stretchesTo = pattern(
  '(stretches|stretched|will stretch|would stretch|should stretch|<pack> (only|just)? (goes|went|runs|ran)) to (about|around|maybe|just|only)? <count> (<material>)? <piece>',
);
const ofRecipe = pattern(
  '(recipe|batch|mix) (only|just)? (does|makes|yields|covers|serves|gives|will do|will make|is enough for) (me|us|you|about)? <count> (<material>)? <piece>',
);

/** "2 bouts out of every stem of hypericum": so many of one stem, and no order of two. */
export const saysYield = pattern(
  '<count> <piece> (come|comes|coming|made|cut)? (from|out of|outta|off|per|to) (each|every|a|one|the|any)? (single|whole)? (<ingredient>)? (stem|bunch|wrap|bundle)',
);

export const priced = (reader: Reader, start: number, end: number): boolean =>
  reader.tokens.slice(start, end).some((token) => token.number?.form === 'money' || token.means['other'] !== undefined);

export const kindOf = (match: Match | undefined): { piece?: PieceKind } => {
  const kind = match?.kept['p']?.means['piece'] as PieceKind | undefined;
  return ofKind(kind);
};

export const yields = (reader: Reader, start: number, end: number): Finding | undefined => {
  const all = batch(reader, start, end);
  if (all !== undefined) return all;
  // "the recipe does 20 BHs" orders none.
  const reach = ofRecipe.in(reader.tokens, start, end);
  if (reach !== undefined) return { start: reach.start, end: reach.end, held: true };
  const long = lengthForm.in(reader.tokens, start, end);
  const [length, made, goods] = [long?.kept['l']?.number, long?.kept['m']?.number, long?.kept['i']?.means['ingredient']];
  if (long !== undefined && goods !== undefined && !(isSingle(length) && isSingle(made)))
    return { start: long.start, end: long.end, held: true };
  if (long !== undefined && goods !== undefined)
    return found(reader, long.start, long.end, [
      {
        fact: 'recipe',
        lines: [{ ingredient: goods, length: Number(length?.amount), unit: length?.unit ?? '' }],
        pieces: Number(made?.amount),
        ...kindOf(long),
      },
    ]);
  for (const form of yieldForms) {
    const match = form.in(reader.tokens, start, end);
    if (match === undefined) continue;
    const further = form === sharedForm ? furtherKind.at(reader.tokens, match.end, end) : undefined;
    if (further !== undefined) return { start: match.start, end: further.end, held: true };
    // "1 stem does 3-4 bouts": how many is not said.
    if (match.kept['m']?.number?.max !== undefined || match.kept['n']?.number?.max !== undefined)
      return { start: match.start, end: match.end, held: true };
    const after = reader.tokens[match.end];
    if (form === ofOneFlower && match.end < end && after?.kind !== 'line' && !closes.test(after?.text ?? '')) continue;
    // "2 roses each for 20 bouts" go into one.
    if (/^(each|apiece)$/.test(reader.tokens[match.start + 2]?.text ?? '')) continue;
    // "1 rose and 2 jasmine for one buttonhole": more than one of the goods is a recipe.
    if (linesIn(reader, start, match.start)?.some((line) => line.known) === true) continue;
    const item = reader.tokens.slice(match.start, match.end).find((token) => token.means['ingredient'] !== undefined)?.means['ingredient'];
    const stems = Number(match.kept['n']?.number?.amount ?? '1');
    const pieces = Number(match.kept['m']?.number?.amount);
    // "1 pack pins does 100 bouts": how many are in it is not said.
    if (form !== sizedForm && !bunchForms.includes(form) && reader.tokens.slice(match.start, match.end).some(byThePack))
      return { start: match.start, end: match.end, held: true };
    const bunches = reader.tokens.slice(match.start, match.end).some((token) => /^(bunch|bunches|wrap|bundle)$/.test(token.text));
    const line = {
      ingredient: item ?? 'stem',
      ...(bunches && form !== sizedForm && !bunchForms.includes(form) ? { length: stems, unit: 'bunch' } : { stems }),
    };
    return found(reader, match.start, form === usedOn ? end : match.end, [{ fact: 'recipe', lines: [line], pieces, ...kindOf(match) }]);
  }
  // "the ribbon stretches to 12 corsages" orders none, whatever it is that does.
  const reached = stretchesTo.in(reader.tokens, start, end);
  if (reached !== undefined && reached.start > start) return { start: reached.start, end: reached.end, held: true };
  const each = stemsIn.in(reader.tokens, start, end) ?? stemCount.in(reader.tokens, start, end);
  const beside = (from: number, to: number): boolean => linesIn(reader, from, to)?.some((line) => line.known) === true;
  if (each === undefined || each.kept['n']?.number?.max !== undefined || beside(start, each.start) || beside(each.end, end))
    return undefined;
  const counted = reader.tokens
    .slice(start, end)
    .filter((token, at) => isCount(token) && reader.tokens[start + at + 1]?.means['piece'] === undefined).length;
  if (counted > 1) return undefined;
  return found(reader, each.start, each.end, [
    {
      fact: 'recipe',
      lines: [{ ingredient: 'stem', stems: Number(each.kept['n']?.number?.amount ?? '0.5') }],
      ...pieceNear(reader, each, start, end),
    },
  ]);
};

const pieceNear = (reader: Reader, match: Match, start: number, end: number): { piece?: PieceKind } => {
  const own = kindOf(match);
  if (own.piece !== undefined) return own;
  const kind = reader.tokens.slice(start, end).find((token) => token.means['piece'] !== undefined && token.means['piece'] !== 'unspecified')
    ?.means['piece'] as PieceKind | undefined;
  return kind === undefined ? {} : { piece: kind };
};
