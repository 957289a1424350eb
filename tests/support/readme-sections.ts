// The parts of README that are made: each stands between "<!-- made: … -->" and "<!-- end -->".

import { readFileSync } from 'node:fs';
import type { Phrase } from '../../src/reading/phrase.ts';

/** README with its made parts made again. */
export const withMadeSections = (readme: string, phrases: readonly Phrase[]): string =>
  readme.replace(/<!-- made: (\S+) -->\n[\s\S]*?<!-- end -->/g, (_whole, what: string) => {
    const made = what === 'phrases' ? phraseTable(phrases) : conversation(what);
    return `<!-- made: ${what} -->\n${made}\n<!-- end -->`;
  });

const conversation = (file: string): string => {
  const [, ...lines] = readFileSync(file, 'utf8').split('\n');
  return `\`\`\`\n${lines.join('\n').trim()}\n\`\`\``;
};

// As a consult goes; the list itself is in the order of reading.
const asSaid = ['order', 'tax basis', 'material', 'event date', 'event title', 'question', 'correction', 'undo'];
const place = ({ name }: Phrase): number => (asSaid.includes(name) ? asSaid.indexOf(name) : asSaid.length);

const phraseTable = (phrases: readonly Phrase[]): string => {
  const rows = phrases
    .filter((phrase) => phrase.examples.length > 0)
    .toSorted((a, b) => place(a) - place(b))
    .map((phrase) => `| ${phrase.name} | ${phrase.examples.map((example) => `“${example.replaceAll('\n', '<br>')}”`).join('; ')} |`);
  return ['| about | for example |', '|---|---|', ...rows].join('\n');
};
