// Turns the source of a pattern into nodes. A source that cannot be read is our own mistake and throws when the program starts.

import { type Test, testOf } from './token-kinds.ts';

export type Choices = readonly (readonly Node[])[];
export type Node =
  | { readonly is: 'word'; readonly text: string }
  | { readonly is: 'tag'; readonly tag: string; readonly test: Test; readonly name: string }
  | { readonly is: 'choice'; readonly choices: Choices; readonly byWord: ReadonlyMap<string, Choices>; readonly others: Choices }
  | { readonly is: 'repeat'; readonly only: readonly [Node]; readonly least: number; readonly most: number };

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

export const parse = (source: string): Node[] => {
  const atoms = source.match(/\\\S|<[^>]+>|\{\d+,\d+\}|[()|?]|[^\s<>(){}|?]+/g) ?? [];
  if (atoms.join('') !== source.replace(/\s+/g, '')) throw new Error(`pattern "${source}": a mark that means nothing`);
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
        nodes.push({ is: 'repeat', only: [node], least: quantifier[0], most: quantifier[1] });
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
