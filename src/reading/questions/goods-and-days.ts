// What goods cost us, how much of one to get, and what became of the day: "what did we pay for statice", "has the date changed", "is the wedding still on".

import type { Forms } from './question-pattern.ts';

const goods = '(<ingredient>|stems|flowers|foliage)';
const packed = '(bunch|stem|wrap|box|roll|spool|pack|bag|bundle|metre|sleeve|head)';

export const goodsAndDays: Forms = [
  [
    'prices',
    [
      `(what|what's|whats|how much) <any>{0,3} (pay|paid|paying|cost|costs|costing) (for|us|me|is|are|the|a|our){0,2} ${goods} <any>{0,3}`,
      `(what|what's|whats|how much) (is|are|do|does|did)? (the|our)? <ingredient> (cost|costs|costing|now|going for|up to|sell for|each){1,2} <any>{0,2}`,
      `how much (is|are|for|per)? (a|the|each|one)? ${packed} (of|are|is|for)? (the)? <ingredient> <any>{0,3}`,
      `(is|are|was|has) (the|our|that)? <ingredient> (price|prices|cost) <any>{0,4}`,
      `(any|do you have|have we got|got|what) <any>{0,3} (price|prices|cost) (for|on|of) (the|a)? <ingredient> <any>{0,2}`,
    ],
    /\b(spend|budget|order|need|left|lot|all|total|altogether|should|per (piece|bout|corsage|crown|comb|lapel))\b/,
  ],
  ['stemOrder', [`what (quantity|amount|length|weight) of ${goods} <any>{0,6}`]],
  [
    'orderBy',
    [
      `(how early|how soon|when|what day|which day|by when) <any>{0,3} ${goods} (need|have|should|must|got) <any>{0,2} (come in|arrive|be here|ordered|be in|get here|come)`,
    ],
  ],
  ['drying', ['<duration> (enough|ok|okay|long enough|plenty) (to|for) (dry|drying|hang|hanging) <any>{0,4}']],
  ['start', ['what time <any>{0,5} (start|begin|kick off) <any>{0,4}'], /\b(wedding|ceremony|event|party|they|gala|reception|function)\b/],
  [
    'eventDate',
    [
      '(has|have|did|is|was|are) (the|our|their|that|it|they|we|you){1,2} (date|day|move|changed|moved) <any>{0,1} (changed|change|moved|move|shifted|fixed|set|confirmed|still|same|it|yet)',
      '(has|have|did|is|was) (the|our|their|that)? (date|day) <any>{0,1} (changed|change|moved|move|shifted|fixed|set|confirmed|still) <any>{0,3}',
      '(is|are|was) <any>{0,3} (still|definitely|going) (on|ahead) (for)? <any>{0,4}',
      '(did|have) (i|we|they|she|he) (tell|told|give|given|say|said) (you)? (the|a|what)? (date|day) <any>{0,3}',
    ],
    /\b(bench|track|target|start|make|order|price|tax|vat|gst)\b|still on \d/,
  ],
  ['summary', ["(what|what's|whats|anything) (has|have|is)? (changed|new|different|happened) <any>{0,4}"], /\bif\b/],
  ['remaining', ['(any|how many|are there|what|got) <any>{0,2} (spares|extras|spare ones) <any>{0,4}'], /\bshould|make\b/],
];
