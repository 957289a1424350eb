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

type Choices = readonly (readonly Node[])[];
type Node =
  | { readonly is: 'word'; readonly text: string }
  | { readonly is: 'tag'; readonly tag: string; readonly test: Test; readonly name: string }
  | { readonly is: 'choice'; readonly choices: Choices; readonly byWord: ReadonlyMap<string, Choices>; readonly others: Choices }
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

type Test = (token: Token) => boolean;

const special: Readonly<Record<string, Test>> = {
  any: (token) => token.kind !== 'line',
  word: (token) => token.kind === 'word',
  count: isCount,
  number: (token) => token.number !== undefined,
  range: (token) => token.number?.max !== undefined || (token.number?.or?.length ?? 0) > 1,
  filler: (token) => token.kind === 'word' && token.number === undefined && token.means['piece'] === undefined,
  tax: (token) => token.means['taxName'] !== undefined || token.means['taxWord'] !== undefined,
};

const testFor = (tag: string): Test => {
  const forms = numberForms[tag];
  if (forms !== undefined) return (token) => token.number !== undefined && forms.includes(token.number.form);
  return special[tag] ?? ((token) => token.means[tag] !== undefined);
};
const tests = new Map<string, Test>();
const testOf = (tag: string): Test => {
  const known = tests.get(tag) ?? testFor(tag);
  tests.set(tag, known);
  return known;
};

/** Whether a token is of a kind: a number form, 'count', 'number', 'word', 'any', or a tag of the vocabulary. */
export const isA = (token: Token, tag: string): boolean => testOf(tag)(token);

const readQuantifier = (source: string): [number, number] | undefined => {
  if (source === '?') return [0, 1];
  const bounds = /^\{(\d+),(\d+)\}$/.exec(source);
  return bounds === null ? undefined : [Number(bounds[1]), Number(bounds[2])];
};

// Long choices are looked up by the word at hand instead of being tried one after another; their order stays.
const choiceOf = (choices: Choices): Node => {
  const firstWord = (choice: readonly Node[]): string | undefined => (choice[0]?.is === 'word' ? choice[0].text : undefined);
  const words = new Set(choices.flatMap((choice) => firstWord(choice) ?? []));
  const fitting = (word: string | undefined): Choices =>
    choices.filter((choice) => firstWord(choice) === undefined || firstWord(choice) === word);
  return { is: 'choice', choices, byWord: new Map([...words].map((word) => [word, fitting(word)])), others: fitting(undefined) };
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
        nodes.push(choiceOf(choices));
      } else if (atom.startsWith('<')) {
        const [first = '', second] = atom.slice(1, -1).split(':');
        nodes.push({ is: 'tag', tag: second ?? first, test: testOf(second ?? first), name: first });
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
      if (index >= end || token === undefined || !node.test(token)) return false;
      const before = kept.get(node.name);
      kept.set(node.name, token);
      if (after(index + 1)) return true;
      if (before === undefined) kept.delete(node.name);
      else kept.set(node.name, before);
      return false;
    }
    case 'choice':
      return ((index < end ? node.byWord.get(tokens[index]?.text ?? '') : undefined) ?? node.others).some((choice) =>
        run(choice, 0, index, tokens, end, kept, after),
      );
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

// What a match can begin with: most patterns are ruled out by one look at a token.
interface Opening {
  readonly words: ReadonlySet<string>;
  readonly tests: readonly Test[];
}

const openingOf = (nodes: readonly Node[]): { words: string[]; tests: Test[]; open: boolean } => {
  const words: string[] = [];
  const found: Test[] = [];
  const merge = (inner: ReturnType<typeof openingOf>): void => {
    words.push(...inner.words);
    found.push(...inner.tests);
  };
  for (const node of nodes) {
    if (node.is === 'word') return { words: [...words, node.text], tests: found, open: false };
    if (node.is === 'tag') return { words, tests: [...found, node.test], open: false };
    const inner = node.is === 'choice' ? node.choices.map(openingOf) : [openingOf([node.node])];
    for (const each of inner) merge(each);
    const skips = node.is === 'repeat' ? node.least === 0 || inner.some((each) => each.open) : inner.some((each) => each.open);
    if (!skips) return { words, tests: found, open: false };
  }
  return { words, tests: found, open: true };
};

// What a match cannot do without: each entry lists words and tests of which one token must satisfy one.
const needsOf = (nodes: readonly Node[]): Opening[] =>
  nodes.flatMap((node): Opening[] => {
    if (node.is === 'word') return [{ words: new Set([node.text]), tests: [] }];
    if (node.is === 'tag') return node.tag === 'any' || node.tag === 'word' ? [] : [{ words: new Set(), tests: [node.test] }];
    if (node.is === 'repeat') return node.least === 0 ? [] : needsOf([node.node]);
    const inner = node.choices.map((choice) => needsOf(choice)[0]);
    if (inner.some((each) => each === undefined)) return [];
    return [{ words: new Set(inner.flatMap((each) => [...(each?.words ?? [])])), tests: inner.flatMap((each) => each?.tests ?? []) }];
  });

// What a message holds, gathered once for all patterns: its words, and the kinds of its tokens.
interface Contents {
  readonly words: ReadonlySet<string>;
  readonly kinds: ReadonlySet<Test>;
}

const contentsOf = (tokens: readonly Token[]): Contents => {
  const words = new Set<string>();
  for (const token of tokens) words.add(token.text);
  const kinds = new Set<Test>();
  for (const test of tests.values()) if (tokens.some(test)) kinds.add(test);
  return { words, kinds };
};

let lastTokens: readonly Token[] | undefined;
let lastContents: Contents = { words: new Set(), kinds: new Set() };
const contents = (tokens: readonly Token[]): Contents => {
  if (tokens !== lastTokens) {
    lastTokens = tokens;
    lastContents = contentsOf(tokens);
  }
  return lastContents;
};

const anyWord = (few: ReadonlySet<string>, many: ReadonlySet<string>): boolean => {
  for (const word of few) if (many.has(word)) return true;
  return false;
};
const satisfied = (need: Opening, { words, kinds }: Contents): boolean =>
  need.tests.some((test) => kinds.has(test)) || (need.words.size < words.size ? anyWord(need.words, words) : anyWord(words, need.words));

export interface Pattern {
  readonly source: string;
  /** The match that begins exactly at `index`. */
  at(tokens: readonly Token[], index: number, end: number): Match | undefined;
  /** False when the message cannot hold a match at all. */
  might(tokens: readonly Token[]): boolean;
  /** The first match in the stretch. */
  in(tokens: readonly Token[], start: number, end: number): Match | undefined;
}

export const pattern = (source: string): Pattern => {
  const nodes = parse(source);
  const opening = openingOf(nodes);
  const words = new Set(opening.words);
  const needs = needsOf(nodes);
  // The last message looked at, and whether it holds all that a match needs.
  let seen: readonly Token[] | undefined;
  let possible = false;
  const may = (tokens: readonly Token[]): boolean => {
    if (tokens !== seen) {
      seen = tokens;
      const holds = contents(tokens);
      possible = needs.every((need) => satisfied(need, holds));
    }
    return possible;
  };
  const at = (tokens: readonly Token[], index: number, end: number): Match | undefined => {
    const first = tokens[index];
    if (first === undefined || index >= end || !may(tokens)) return undefined;
    if (!words.has(first.text) && !opening.tests.some((test) => test(first))) return undefined;
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
    might: may,
    at,
    in: (tokens, start, end) => {
      if (!may(tokens)) return undefined;
      for (let index = start; index < end; index++) {
        const match = at(tokens, index, end);
        if (match !== undefined) return match;
      }
      return undefined;
    },
  };
};
