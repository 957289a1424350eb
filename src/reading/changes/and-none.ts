// A change, and beside it a kind that is no longer wanted: "make it 5 crowns and no hair flowers at all", "no combs, and make it 20 bouts". Either both are read or neither.

import type { PieceKind } from '../../handbook/pieces.ts';
import { type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import { kindNamed } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';

const joint = '(,|-|;|and|&|n|plus|but|with|so|then|also){0,3}';
const off =
  '(no|zero|no more|none of|without|scrap|scratch|scrub|drop|cancel|lose|remove|ditch|bin|delete|nix|axe|pull|skip|take off|take out|leave out|leave off|forget|forget about|get rid of|losing|dropping|cancelling|scrapping)';
const kinds = '(any|the|all|all the|her|those|our){0,2} (of)? (the)? <p:piece> ((,|or|and|nor|&|n|/){1,2} (no|the|any){0,2} <q:piece>)?';
const ends =
  '(at all|now|please|pls|after all|any more|anymore|any longer|altogether|this time|then|thanks|ta|sorry|whatsoever|in the end|either|needed|wanted|instead|completely|entirely|off the order|from the order|,){0,3}';
const behind = pattern(`${joint} (can|could|we|you|just|please|pls|let's|lets){0,3} ${off} ${kinds} ${ends}`);
const ahead = pattern(
  `(sorry|soz|ok|actually|oh|so|and|right|update|,|please|pls){0,3} (no|zero|no more|none of) ${kinds} ${ends} ${joint.replace('{0,3}', '{1,3}')}`,
);

const none = ({ kept }: Match): readonly Unworded[] | undefined => {
  const named = [kept['p'], kept['q']].flatMap((token) => (token === undefined ? [] : [kindNamed(token)]));
  if (named.some((kind) => kind === undefined)) return undefined;
  return [...new Set(named)].map((piece) => ({ fact: 'change', what: 'count', to: 0, piece: piece as PieceKind }));
};

/** The change and what is taken off; held where the change is not understood. `read` reads a part. */
export const andNone = (reader: Reader, part: Part, read: (part: Part) => readonly Finding[]): readonly Finding[] | undefined => {
  const { tokens } = reader;
  let match: Match | undefined;
  if (behind.might(tokens))
    for (let index = behind.next(tokens, part.start + 1, part.end); index < part.end; index = behind.next(tokens, index + 1, part.end)) {
      const here = behind.at(tokens, index, part.end);
      if (here?.end !== part.end) continue;
      match = here;
      break;
    }
  const first = match === undefined && ahead.might(tokens) ? ahead.at(tokens, part.start, part.end) : undefined;
  const off = match ?? first;
  const facts = off === undefined ? undefined : none(off);
  if (off === undefined || facts === undefined || off.end - off.start === part.end - part.start) return undefined;
  const rest = match === undefined ? { ...part, start: off.end } : { ...part, end: off.start };
  const findings = read(rest);
  const changed = findings.flatMap((finding) => finding.facts ?? []);
  if (changed.length === 0 || findings.some((finding) => finding.facts === undefined)) return undefined;
  // "make it 5 combs and no combs"; "make that 9 made and no crowns" tells of the work.
  const ofWork = changed.some((fact) => fact.fact !== 'change' || fact.what === 'made' || fact.what === 'broke');
  const named = changed.flatMap((fact) => (fact.fact === 'change' && fact.piece !== undefined ? [fact.piece] : []));
  if (ofWork || facts.some((fact) => fact.fact === 'change' && named.some((piece) => piece === fact.piece)))
    return [{ start: part.start, end: part.end, held: true }];
  const gone = found(reader, off.start, off.end, facts);
  return match === undefined ? [gone, ...findings] : [...findings, gone];
};
