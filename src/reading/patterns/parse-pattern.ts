// Turns the source of a pattern into nodes. A source that cannot be read is our own mistake and throws when the program starts.

import { kindNumber, wordNumber } from './registry.ts';

export type Node =
  | { readonly is: 'word'; readonly text: string; readonly number: number }
  | { readonly is: 'tag'; readonly tag: string; readonly number: number; readonly name: string }
  | { readonly is: 'choice'; readonly choices: readonly (readonly Node[])[] }
  | { readonly is: 'repeat'; readonly only: readonly [Node]; readonly least: number; readonly most: number };

const wordOf = (text: string): Node => ({ is: 'word', text, number: wordNumber(text) });
const tagOf = (tag: string, name: string): Node => ({ is: 'tag', tag, number: kindNumber(tag), name });

const readQuantifier = (source: string): [number, number] | undefined => {
  if (source === '?') return [0, 1];
  const bounds = /^\{(\d+),(\d+)\}$/.exec(source);
  return bounds === null ? undefined : [Number(bounds[1]), Number(bounds[2])];
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
        nodes.push({ is: 'choice', choices });
      } else if (atom.startsWith('<')) {
        const [first = '', second] = atom.slice(1, -1).split(':');
        nodes.push(tagOf(second ?? first, first));
      } else nodes.push(wordOf(atom.startsWith('\\') ? atom.slice(1) : atom));
    }
    return nodes;
  };
  const nodes = sequence();
  if (at < atoms.length) throw new Error(`pattern "${source}": unexpected ${atoms[at]}`);
  return nodes;
};
