// Work told of the whole order, named by whose it is or by how many it has.

import { doneWord } from './done-words.ts';
import { allOf, type Build, outOf } from './made-facts.ts';

export const clientForms: readonly (readonly [string, Build])[] = [
  // "all of the pin corsages for Mrs Okafor are done": several for one person are the client's whole order of them.
  [
    `(all|every|all of|every single|every last) (the|our|of the|of)? (<material>)? <p:piece> for (mrs|mr|miss|ms|dr|auntie|aunty)? (<o:unlisted>) (is|are|now|all|have been|has been|been|both|fully){1,3} (${doneWord})`,
    (match) => (/[^s]s$/.test(match.kept['p']?.text ?? '') || match.kept['p']?.means['piece'] === 'unspecified' ? allOf(match) : undefined),
  ],
  // "we're up to 22 bouts now out of the forty"
  [
    `(<upTo>|up to|at|on) <n:count> (of the|of)? (<material>)? (<p:piece>)? (now|so far|done|made|already|today){1,2} (out of|of|outta) (the|our|a total of|all)? <m:count> (<p:piece>)?`,
    outOf,
  ],
];
