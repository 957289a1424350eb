// "18 done, how many left?", "moved to the 20th, when do we start now?": what is told ends where the question begins, as at a full stop.

import { changed, type Token } from './token.ts';

const told =
  /(^| )(done|made|finished|boxed|completed|wired|broke|broken|snapped|moved to|pushed to|changed to|pushed back|moved back|brought forward|got (thru|through)|(thats|that's|that is) another \d+|another \d+)( |$)|^((so|ok|right|and) )?(we're |were |i'm |im |we are |now )?(up to|now on|now at|on|at) \d+( (?!(each|ea|apiece|per)\b)\w+)?$/;
const toMake = /(^| )\d+( \w+){0,2} (left|to go|to do)$/;
const counted = /\d|(^| )(one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|dozen|\w+teen|twenty|thirty|forty|fifty)( |$)/;
// What may come, or is itself asked, is not told.
const open =
  /^(so |and |but |ok )?(if|what|whats|what's|how|is|are|was|were|do|does|did|can|could|would|will|should|have (we|i|you|they)|has|any|when|suppose|say|once|with)( |$)|(^| )(if|once|when|after|before|or|should|would|could|need|want|get|how many|gets|being) /;
const asks =
  /^(so |and |but |now )?(how (many|much|long|far|late|is|are|does)|what|whats|what's|are (we|you)|is (that|it|there)|does (that|it)|do (we|i)|can (we|i)|will (we|i|it)|when|where|should (we|i)|(do|can|will|should|could) (they|these|those) (need|go|last|stay|sit|live|be|keep)|on track( |$)|enough( |$)|all good)( |$)/;

// "make it 30, what's the new total", "no 24 not 20, how long is that now"
const putRight =
  /^((ok|okay|actually|sorry|no|so|oh|right|please|pls|update) (- )?)*((make|change|bump|set|put|call|switch|update|cut|drop) (it|that|them|this|the \w+) (up |down |back )?(to )?([$£€]|r)? ?[\d.]+|it'?s (now )?\d+ (\w+ )?(now|not \d+)|\d+ not \d+|add (another )?\d+( more)?|(they|she|he|client|bride) (now )?(wants?|needs?) \d+ (more|now|instead))( |$)/;
// "24 bouts at 12, what's my stem budget?": an order, when what is asked is more than its price.
const ordered =
  /^((ok|okay|hi|hey|new order|new|order|so|need|we need|quote|,|-|:) )*\d+ (x )?([a-z]+ ){1,3}((at|@|for) )?([$£€]|r)? ?\d+(\.\d+)?( (each|ea|inc|plus|for|on|by|in) (\S+ ?){0,5}| (each|ea))?$|^((ok|hi|hey|order|need|we need) )?\d+ (x )?([a-z]+ ){1,3}(for|on|by) (the )?\d+(st|nd|rd|th)?( of)? [a-z]+$/;
const ofTheBench =
  /^(so |and |but |now )?(when |how long|how many (stems|hours|days|bunches)|(what|whats|what's) (is |s )?(my|the|our) (stem|flower|flowers|material|margin|latest|start|buying|cut off|cutoff)|what (do|can|should) (i|we) (spend|order|buy|start))/;

// "24 bouts at 12 and 3 corsages at 30 plus gst, whats the total": the order stands, and what it comes to is asked.
const line = '\\d+ (x )?([a-z]+ ){1,3}((at|@|for) )?([$£€]|r)? ?\\d+(\\.\\d+)?( (each|ea|apiece))?';
const linesOnly = new RegExp(
  `^((ok|okay|hi|hey|new order|need|we need|quote|,|-|:) )*${line}(( (,|and|&|\\+|n))+ ${line})*( ,)?( (plus|\\+|inc|incl|ex|excl|excluding|including)( [a-z]+){0,2})?$`,
);
const ofTheirSum =
  /^(so |and )?(what|whats|what's) (is |s )?((the|my|our|her) (grand |full |new )?(total|sum)( pls| please| inc gst| inc vat| ex gst)?|(that|it|this) (in total|all up|all in|altogether|total|come to|coming to|come out at|add up to)( .{0,12})?)$/;
const most = 24;

const longest = 12;
const stops = new Set('.;?!');
const isStop = (token: Token | undefined): boolean => token === undefined || token.kind === 'line' || stops.has(token.text);
const words = (tokens: readonly Token[], from: number, step: 1 | -1, most: number): string => {
  const said: string[] = [];
  for (let index = from; said.length < most && !isStop(tokens[index]); index += step) said.push(tokens[index]?.text ?? '');
  return (step === 1 ? said : said.reverse()).join(' ');
};

// "14 bouts done, and is the wedding Saturday or Sunday?"
const ofTheDay =
  /^(so |and |but |now )?(is|are|was|when's|whens|which day|what (day|time|date)|who|where) (the |our |her |his |their |this |that )?(wedding|event|party|pickup|pick up|collection|delivery|ceremony|gala|ball|formal|prom|dinner|funeral|handover|is|it|they|we)( |$)/;
// "14 bouts done and what time is pickup?": nothing but "and" between them.
const joinedBy = new Set(['and', 'but', 'also']);

const endsTold = /(^| )(done|made|finished|boxed|completed|wired|broke|broken|snapped)( now| so far| today)?$/;
const isAsked = (tokens: readonly Token[], from: number): boolean => {
  let index = from;
  while (!isStop(tokens[index])) index += 1;
  return tokens[index]?.text === '?';
};

/** The tokens with a full stop for the comma between what is told of the work and what is asked about it. */
export const withQuestionsApart = (tokens: readonly Token[]): readonly Token[] =>
  tokens.map((token, index) => {
    const joins = joinedBy.has(token.text) && tokens[index - 1]?.text !== ',';
    if ((token.text !== ',' && !joins) || tokens[index + 1]?.glued !== false) return token;
    const next = words(tokens, index + 1, 1, 5);
    if (!asks.test(words(tokens, index + 1, 1, 4)) && !ofTheDay.test(next)) return token;
    if (joins) {
      const said = words(tokens, index - 1, -1, longest);
      const tells = counted.test(said) && (endsTold.test(said) || toMake.test(said)) && !open.test(said);
      return tells && isAsked(tokens, index) ? changed(token, { text: '.', kind: 'sign' }) : token;
    }
    const before = words(tokens, index - 1, -1, longest);
    if (!counted.test(before)) return token;
    const after = words(tokens, index + 1, 1, 5);
    const isOrder =
      (ordered.test(before) && ofTheBench.test(after)) ||
      (ofTheirSum.test(words(tokens, index + 1, 1, longest)) && linesOnly.test(words(tokens, index - 1, -1, most)));
    return ((told.test(before) || toMake.test(before)) && !open.test(before)) ||
      (putRight.test(before) && !/^(so |and |but |now )?(is|are|does|do|can|will|should) /.test(after)) ||
      isOrder
      ? changed(token, { text: '.' })
      : token;
  });
