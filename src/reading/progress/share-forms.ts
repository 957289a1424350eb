// "half of the crowns", "the bouts are two thirds done", "halfway through the corsages": how much of a kind is finished.

import { beginsAt, type Match, type Pattern, pattern } from '../pattern.ts';

const shares: readonly (readonly [string, string])[] = [
  ['half|halfway|half way|50%', '0.5'],
  ['a third|one third|a 3rd|third', '0.333'],
  ['(two|2) thirds|(two|2) - thirds|2/3|2/3rds', '0.667'],
  ['a quarter|one quarter|quarter|1/4', '0.25'],
  ['three quarters|three - quarters|3 quarters|3 - quarters|3/4', '0.75'],
];
const way = '(way|of the way)?';
const done = '(done|made|finished|complete|completed|ready|there|through|thru|boxed)';
const rough = '(about|around|roughly|just|only|over|nearly|now|already|are|is|all|a bit){0,3}';

const forms: readonly (readonly [Pattern, string | undefined])[] = [
  ...shares.flatMap(([words, fraction]): [Pattern, string][] => [
    [
      pattern(`${rough} (${words}) (of)? (the|our|all|all the|those) (<material>)? <p:piece> (are|is|now|all|have been){0,2} ${done}`),
      fraction,
    ],
    [
      pattern(
        `${rough} (${words}) ${way} (there|done|finished)? (on|through|with|thru|into|through with|through on|thru with|done with) (the|our|all the)? <p:piece>`,
      ),
      fraction,
    ],
    [pattern(`(the|our)? <p:piece> (:|-|,)? ${rough} (${words}) ${way} ${done}`), fraction],
  ]),
  [pattern('(the|our)? <p:piece> (:|-|,)? (are|is|now|about){0,2} (halfway|half way)'), '0.5'],
  [pattern(`(the|our)? <p:piece> (:|-|,)? ${rough} <f:percent> ${way} ${done}`), undefined],
  [pattern(`${rough} <f:percent> (of)? (the|our|all the)? <p:piece> (are|is|now|all){0,2} ${done}`), undefined],
  [
    pattern(
      `${rough} <f:percent> ${way} (there|done|finished)? (on|through|with|thru|into|through with|through on|thru with|done with) (the|our|all the)? <p:piece>`,
    ),
    undefined,
  ],
];

/** What a share begins with. */
export const shareForms = forms.map(([form]) => form);
const nearly = /^nearly$/;

/** The share said at this place, as a fraction. */
export const shareSaid = (
  tokens: Parameters<Pattern['at']>[0],
  index: number,
  end: number,
): { match: Match; fraction: string } | undefined => {
  if (!beginsAt(shareForms, tokens, index)) return undefined;
  for (const [form, fraction] of forms) {
    const match = form.at(tokens, index, end);
    if (match === undefined || tokens.slice(match.start, match.end).some((token) => nearly.test(token.text))) continue;
    const said = match.kept['f']?.number;
    const hundredth = Number(said?.amount) / 100;
    if (fraction === undefined && (said?.max !== undefined || !(hundredth > 0 && hundredth < 1))) continue;
    return { match, fraction: fraction ?? String(hundredth) };
  }
  return undefined;
};
