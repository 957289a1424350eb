// "10 bouts dropped at the desk", "dropped the corsages off at reception": brought there, and none of them broken.

import { formOf } from '../pattern.ts';
import { changed, type Token } from './token.ts';

const there =
  '(the|her|his|their|our|my|a)? (reception|desk|front desk|hotel|church|venue|house|home|villa|suite|room|bridal suite|office|hall|barn|cottage|lodge|lobby|concierge|door|gate|green room|cloakroom|marquee|school|club|pub|chapel|castle|apartment|flat|address|bride|groom|mum|mother|planner|coordinator|hers|theirs|his)';
const forms = [
  formOf(`dropped (off|round|over|in|back){0,2} (at|to|with) ${there}`),
  formOf(
    `dropped (the|all|all the|her|his|their|our)? (<count>)? (<material>)? <piece> (off|round|over|in|back){0,2} (at|to|with) ${there}`,
  ),
];

export const withDroppedOff = (tokens: readonly Token[]): readonly Token[] => {
  if (!tokens.some(({ text }) => text === 'dropped')) return tokens;
  return tokens.map((token, index) =>
    token.text === 'dropped' && forms.some((form) => form.at(tokens, index) !== undefined) ? changed(token, { text: 'delivered' }) : token,
  );
};
