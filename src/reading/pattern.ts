// A small language for stretches of tokens, so that phrases read like the things people say:
//   'made <count> <piece>?'   '(up|down) to <n:amount>'   '<any>{0,3} left'
// A plain word stands for itself; <tag> for a kind of token; <name:tag> keeps the token; ( | ) chooses; ? and {a,b} repeat.
// Repeats are bounded, so matching takes time in proportion to the message.

import { isCount, type NumberForm, type Token } from './text/token.ts';

export interface Match {
  readonly start: number;
  readonly end: number;
  readonly kept: Readonly<Record<string, Token>>;
}

type Node =
  | { readonly is: 'word'; readonly text: string }
  | { readonly is: 'tag'; readonly tag: string; readonly name: string }
  | { readonly is: 'choice'; readonly choices: readonly (readonly Node[])[] }
  | { readonly is: 'repeat'; readonly node: Node; readonly least: number; readonly most: number };

const numberForms: Readonly<Record<string, readonly NumberForm[]>> = {
  money: ['money'],
  amount: ['plain', 'money'],
  percent: ['percent'],
  duration: ['duration'],
  length: ['length'],
  weight: ['weight'],
  time: ['time'],
  ordinal: ['ordinal'],
  slashed: ['slashed'],
  code: ['code'],
  plain: ['plain'],
  quantity: ['plain', 'length', 'weight'],
};

/** Whether a token is of a kind: a number form, 'count', 'number', 'word', 'any', or a tag of the vocabulary. */
export const isA = (token: Token, tag: string): boolean => {
  if (tag === 'any') return token.kind !== 'line';
  if (tag === 'word') return token.kind === 'word';
  if (tag === 'count') return isCount(token);
  if (tag === 'number') return token.number !== undefined;
  if (tag === 'filler') return token.kind === 'word' && token.number === undefined && token.means['piece'] === undefined;
  if (tag === 'tax') return token.means['taxName'] !== undefined || token.means['taxWord'] !== undefined;
  const forms = numberForms[tag];
  if (forms !== undefined) return token.number !== undefined && forms.includes(token.number.form);
  return token.means[tag] !== undefined;
};

const readQuantifier = (source: string): [number, number] | undefined => {
  if (source === '?') return [0, 1];
  const bounds = /^\{(\d+),(\d+)\}$/.exec(source);
  return bounds === null ? undefined : [Number(bounds[1]), Number(bounds[2])];
};

const parse = (source: string): Node[] => {
  const atoms = source.match(/\\\S|<[^>]+>|\{\d+,\d+\}|[()|?]|[^\s<>(){}|?]+/g) ?? [];
  let at = 0;
  const sequence = (): Node[] => {
    const nodes: Node[] = [];
    while (at < atoms.length) {
      const atom = atoms[at] as string;
      if (atom === ')' || atom === '|') break;
      at += 1;
      const quantifier = readQuantifier(atom);
      if (quantifier !== undefined) {
        const node = nodes.pop();
        if (node === undefined) throw new Error(`pattern "${source}": nothing to repeat`);
        nodes.push({ is: 'repeat', node, least: quantifier[0], most: quantifier[1] });
      } else if (atom === '(') {
        const choices: Node[][] = [sequence()];
        while (atoms[at] === '|') {
          at += 1;
          choices.push(sequence());
        }
        if (atoms[at] !== ')') throw new Error(`pattern "${source}": missing )`);
        at += 1;
        nodes.push({ is: 'choice', choices });
      } else if (atom.startsWith('<')) {
        const [first = '', second] = atom.slice(1, -1).split(':');
        nodes.push({ is: 'tag', tag: second ?? first, name: first });
      } else nodes.push({ is: 'word', text: atom.startsWith('\\') ? atom.slice(1) : atom });
    }
    return nodes;
  };
  const nodes = sequence();
  if (at < atoms.length) throw new Error(`pattern "${source}": unexpected ${atoms[at]}`);
  return nodes;
};

type Next = (index: number) => boolean;

const run = (
  nodes: readonly Node[],
  at: number,
  index: number,
  tokens: readonly Token[],
  end: number,
  kept: Map<string, Token>,
  next: Next,
): boolean => {
  const node = nodes[at];
  if (node === undefined) return next(index);
  const after: Next = (reached) => run(nodes, at + 1, reached, tokens, end, kept, next);
  switch (node.is) {
    case 'word':
      return index < end && tokens[index]?.text === node.text && after(index + 1);
    case 'tag': {
      const token = tokens[index];
      if (index >= end || token === undefined || !isA(token, node.tag)) return false;
      const before = kept.get(node.name);
      kept.set(node.name, token);
      if (after(index + 1)) return true;
      if (before === undefined) kept.delete(node.name);
      else kept.set(node.name, before);
      return false;
    }
    case 'choice':
      return node.choices.some((choice) => run(choice, 0, index, tokens, end, kept, after));
    case 'repeat': {
      const again = (times: number, reached: number): boolean => {
        if (times < node.most && run([node.node], 0, reached, tokens, end, kept, (then) => then > reached && again(times + 1, then)))
          return true;
        return times >= node.least && after(reached);
      };
      return again(0, index);
    }
  }
};

// Whether a match can begin with this token: most patterns are ruled out by this one look.
const mayBegin = (nodes: readonly Node[], token: Token): boolean => {
  for (const node of nodes) {
    if (node.is === 'word') return token.text === node.text;
    if (node.is === 'tag') return isA(token, node.tag);
    if (node.is === 'choice') return node.choices.some((choice) => mayBegin(choice, token));
    if (mayBegin([node.node], token)) return true;
    if (node.least > 0) return false;
  }
  return true;
};

export interface Pattern {
  readonly source: string;
  /** The match that begins exactly at `index`. */
  at(tokens: readonly Token[], index: number, end: number): Match | undefined;
  /** The first match in the stretch. */
  in(tokens: readonly Token[], start: number, end: number): Match | undefined;
}

export const pattern = (source: string): Pattern => {
  const nodes = parse(source);
  const at = (tokens: readonly Token[], index: number, end: number): Match | undefined => {
    const first = tokens[index];
    if (first === undefined || index >= end || !mayBegin(nodes, first)) return undefined;
    const kept = new Map<string, Token>();
    let reached = -1;
    const found = run(nodes, 0, index, tokens, end, kept, (last) => {
      reached = last;
      return true;
    });
    return found ? { start: index, end: reached, kept: Object.fromEntries(kept) } : undefined;
  };
  return {
    source,
    at,
    in: (tokens, start, end) => {
      for (let index = start; index < end; index++) {
        const match = at(tokens, index, end);
        if (match !== undefined) return match;
      }
      return undefined;
    },
  };
};
