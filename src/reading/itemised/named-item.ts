// What a line of a quote sheet is of: a piece somebody wears, or other work.

import type { Material, PieceKind } from '../../handbook/pieces.ts';
import type { Reader } from '../phrase.ts';
import type { Stretch } from '../text/message.ts';
import type { Token } from '../text/token.ts';
import { serviceWords } from '../words/service-words.ts';

export interface Worn {
  readonly is: 'worn';
  readonly kind: PieceKind;
  readonly wearer?: string; // one of them
  readonly one: boolean; // named as a single piece of a single person
  readonly material?: Material;
}
export type Named = Worn | { readonly is: 'other' };

// Words that make a line more than an item: what was, what may be, what is done already.
const more =
  /^(not|no longer|was|were|instead|now|done|made|finished|left|wired|maybe|possibly|optional|option|alternatively|or|if|tbc|tba|free|foc|gratis|complimentary|cancelled|less|minus|discount|total|subtotal|recipe|stems|last)$/;

/** Whether a line has words that no plain item has. */
export const saysMore = (tokens: readonly Token[], { start, end }: Stretch): boolean => {
  for (let index = start; index < end; index++) {
    const { text, means } = tokens[index] as Token;
    if (more.test(text) || text === '?') return true;
    for (const tag of ['weekday', 'month', 'from', 'upTo', 'budget', 'bench'] as const) if (means[tag] !== undefined) return true;
  }
  return false;
};

// "Corsage, wrist", "Corsage, pin", "Gajra hair flower": one piece in two words.
const kindOf = (kinds: ReadonlySet<string>, pinned: boolean): PieceKind | undefined => {
  const [only, second, third] = kinds;
  if (third !== undefined || only === undefined) return undefined;
  if (second === undefined) return only === 'corsage' && pinned ? 'pin corsage' : (only as PieceKind);
  const exact = [only, second].filter((kind) => kind !== 'corsage');
  return exact.length === 1 && /corsage$/.test(exact[0] ?? '') ? (exact[0] as PieceKind) : undefined;
};

/** What the words of a line name; undefined where they name two things or nothing known. */
export const namedIn = ({ tokens }: Reader, { start, end }: Stretch): Named | undefined => {
  const [kinds, people, materials] = [new Set<string>(), new Set<string>(), new Set<string>()];
  let [other, pinned, single] = [false, false, true];
  for (let index = start; index < end; index++) {
    const { text, means } = tokens[index] as Token;
    const { piece, role, owner, material } = means;
    if (means.other !== undefined || serviceWords.has(text) || (text === 'set' && /^(-|up)$/.test(tokens[index + 1]?.text ?? '')))
      other = true;
    if (piece !== undefined && piece !== 'unspecified') {
      kinds.add(piece);
      if (/s$/.test(text)) single = false;
    }
    if (/^(pin|pinned)$/.test(text)) pinned = true;
    const person = role ?? owner;
    if (person !== undefined) {
      people.add(person);
      if (role !== undefined && /(s|men|children)$/.test(text)) single = false;
    }
    if (material !== undefined) materials.add(material);
  }
  if (other) return kinds.size === 0 ? { is: 'other' } : undefined;
  const kind = kindOf(kinds, pinned);
  if (kind === undefined || materials.size > 1) return undefined;
  const [person, another] = people;
  const [material] = materials;
  const wearer = another === undefined && person !== 'rest' ? person : undefined;
  return {
    is: 'worn',
    kind,
    one: single && wearer !== undefined,
    ...(wearer === undefined ? {} : { wearer }),
    ...(material === undefined ? {} : { material: material as Material }),
  };
};
