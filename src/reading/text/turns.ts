// Sentences and lines that go on with what stands before them: what is taken back or put right is one statement, however it is broken up.

import { changed, cut, type Token } from './token.ts';

const retold =
  /^(i|we|he|she|they|ive|i've|i'd|id) (said|put|wrote|typed|told|meant|miscounted|mistyped|counted|entered|logged|misread|had)( |$)/;
const putsRight =
  /^((wrongly|mistakenly|accidentally|stupidly) (typed|put|said|told|wrote|entered|logged)|should|shouldve|should've|shd|shld|meant|typo|miscounted|mistyped|misread|by mistake|my mistake|counted wrong)( |$)/;
const said = /(^| )(said|put|told|wrote|typed|logged|entered|had)( |$)/;
const answersIt = /^(its|it's|it is|it was|its|only|was|were|really|actually)( |$)/;
/** All a sentence says is that something before it was wrong. */
const excuse =
  /^(no|no no|nope|oops|oop|ooops|whoops|sorry|soz|my bad|my mistake|mistake|miscounted|i miscounted|wrong entry|correction|typo|scratch that|scrap that|date changed|date change|date wrong|wrong date|wrong count|count wrong|wrong price|price wrong|price changed|((oops|sorry|no|oh) )*(its |it's )?not (dried|fresh|silk|preserved|artificial|faux|mixed|real|\d+)( sorry| oops)?)$/;
const longestExcuse = 6; // words
const sides = /(^| )(side|sides)( |$)/;

// "85 each final. not 95": what is taken back belongs to the sentence before it.
const takesBack = (next: string): boolean => /^not /.test(next) && !/^not (sure|certain|yet|bad|much|a|that)( |$)/.test(next);

// "2 casuals sat. 6 hours each": hours or pay behind people.
const hands =
  /(^| )(me|meself|myself|us|helpers?|casuals?|freelancers?|people|persons?|workers?|ladies|girls|juniors?|apprentices?|hands|staff|of us|two of us)( |$)/;
const theirHours =
  /^(total )?(of )?(\S+ ){0,3}(hrs?|hours?|h)( |$)|^(half )?(\d+|\w+) (am )?(to|til|till|-) (half )?\w+|(per|an|a|\/) ?(hour|hr)( |$)/;
// "14 each. was 12", "17 down. 8 to go", "made 50. 3 of those are spares", "30 lapels. either 6 or 7 each", "2 snapped. redid them".
const formerly = /^(was|were|used to be|up from|down from) ([£$€]|r|rs)? ?\d/;
const stillToGo = /^(\S+ ){1,2}(to go|left|remaining)( |$)/;
const ofThose = /^(\S+ ){1,2}of (those|them|which|these) /;
const mended = /^(and )?(remade|redid|redone|rebuilt|replaced|rewired|made) (it|them|both|one|two|a new|new)( |$)/;

// "16 done. counted 2 twice", "said 16 done. so 14", "what if it's 40. how many hours is that", "party of 14. leave out the 2 babies", "25 crowns. how long?".
const twice = /^(i |we )?(double counted|(counted|logged|did|entered) \S+ twice)( |$)/;
const soMany = /^so (its |it's |thats |that's )?\d+$/;
const whatIf = /^(ok |so )?(what if|suppose|say we) /;
const thenAsks = /^(how|whats|what's|what|would|does|do|is|will|can) /;
const without = /^(leave out|leaving out|minus|except|excluding|bar|not counting|not including|less) /;
const company = /(^| )(party|wearing|wearers|people|guests|groomsmen|ushers|bridesmaids)( |$)/;
const topic = /^(\d+|the|our|\S+ stems?)( \S+){0,2}$|^\S+ stems$|^(whats|what's) the \S+( \S+){0,3}$/;
const howMany = /^how (many|much|long)( |$)/;

// "11 bouts. groom's one at 14. other ten at 9", "flower crowns: 2 for the girls at 50. 1 for bride at 85", "7 corsages. 4 on the wrist n 3 pinned".
const someOfThem =
  /^(and )?(the )?((groom|bride)('?s)? (one|own)|other|others|rest|remaining)( |$)|^(\d+|one|two|three|four|five|six) for (the )?[a-z]+s? (at|@) /;
const onWhere = /^(\d+|one|two|three|four|five|six) (on the |are |to be )?(wrists?|pins?|pinned)( |$)/;

// "no crowns now, they want combs. still 4": as many of the other kind.
const asMany = /^(still|same) (\d+|number|amount|two|three|four|five|six|seven|eight|nine|ten|twelve)( of (them|em))?( pls| please)?$/;
const swaps = /(^| )(want|wants|instead|rather|swap|swapped|prefer|prefers|not)( |$)/;

// What goes on with the sentence before it, and what that one must have said.
const figure = /\d/;
const ways: readonly (readonly [RegExp, ...RegExp[]])[] = [
  [retold],
  [/^either /],
  [asMany, swaps],
  [answersIt, said],
  [/^(was|were|used to be) /, /(^| )now( |$)/],
  [theirHours, hands],
  [stillToGo, /(^| )down$/],
  [formerly, figure],
  [ofThose, figure],
  [mended, /(^| )(broke|broken|snapped|brown|apart|dropped|squashed|wilted|fell)( |$)/],
  [twice, figure],
  [soMany, said, figure],
  [thenAsks, whatIf],
  [without, company],
  [howMany, topic],
  [/^(his|hers|theirs) /, / (groom's|bride's|grooms|brides|groom|bride)$/],
  [someOfThem, figure],
  [onWhere, /(^| )corsages?$/],
];

// One look tells most sentences apart from those that could go on with another.
const mayGoOn = new RegExp([/^not /, ...ways.map(([follows]) => follows), putsRight, sides].map(({ source }) => source).join('|'));
// The words before are put together only where what follows could go on with them.
const goesOn = (next: string, before: () => string, short: boolean): boolean =>
  (mayGoOn.test(next) &&
    (takesBack(next) ||
      ways.some(([follows, ...said]) => follows.test(next) && said.every((words) => words.test(before()))) ||
      (putsRight.test(next) && figure.test(before() + next)) ||
      (sides.test(next) && figure.test(next) && sides.test(before()) && figure.test(before())))) ||
  (short && excuse.test(before()));

const isBreak = (token: Token | undefined, next: Token | undefined): boolean =>
  token?.kind === 'line' || token?.text === ';' || (token?.text === '.' && next?.glued === false);

const wordsFrom = (tokens: readonly Token[], from: number): string => {
  const words: string[] = [];
  for (let index = from; index < tokens.length && words.length < 6 && !isBreak(tokens[index], tokens[index + 1]); index++)
    words.push(tokens[index]?.text ?? '');
  return words.join(' ');
};
const wordsBefore = (tokens: readonly Token[], to: number): string => {
  const words: string[] = [];
  for (let index = to - 1; index >= 0 && words.length < 12 && !isBreak(tokens[index], tokens[index + 1]); index--)
    words.push(tokens[index]?.text ?? '');
  return words.reverse().join(' ');
};

// "bouts x14 / corsages x6 / tax extra": a stroke or a dash with room on both sides separates as a comma does, unless the stroke means "per" or "of".
const ofOne =
  /^(stems?|bunch|bunches|bn|each|ea|piece|pc|pcs|box|roll|pack|pk|spool|wrap|bag|hr|hour|h|day|head|person|unit|m|kg|bout|bh|lapel|corsage|crown|buttonhole)$/;
const currency = /^(r|rs|eur|gbp|inr|zar|nz|au|ca|c|us)$/;
const separates = (tokens: readonly Token[], index: number): boolean => {
  const token = tokens[index];
  if (token === undefined || (token.text !== '-' && token.text !== '/')) return false;
  const [before, next] = [tokens[index - 1], tokens[index + 1]];
  if (token.glued || next === undefined || next.glued || before === undefined) return false;
  // "corsage - 4 roses" and "R95 - R110" mean something by the dash.
  if (token.text === '-') return next.kind === 'word' && next.number === undefined && !currency.test(next.text) && !ofOne.test(next.text);
  if (someOfThem.test(wordsFrom(tokens, index + 1))) return true;
  if (before.number !== undefined && next.number !== undefined) return false;
  return !ofOne.test(before.number === undefined ? before.text : next.text);
};
// "i said 22 finished its really 20": the comma nobody typed.
const opensAgain = new Set(['its', "it's", 'was', 'were', 'should', 'shouldve', "should've", 'only']);
const turnsHere = (tokens: readonly Token[], index: number): boolean =>
  opensAgain.has(tokens[index]?.text ?? '') &&
  tokens[index - 1]?.kind === 'word' &&
  !/^(it|that|there|what|which|and|but|i|we|they|he|she|this|,)$/.test(tokens[index - 1]?.text ?? '') &&
  /^(its|it's|was|were|should|shouldve|should've|only) (be |have been |of been |been |really |actually |only |more like )*\d/.test(
    wordsFrom(tokens, index),
  ) &&
  /^(i|we|oops|sorry|was|no)? ?(i |we )?(said|put|told|wrote|typed|logged|entered)( |$).*\d/.test(wordsBefore(tokens, index));

// "bouts up to 12 corsages down to 3", "not dried she wants fresh", "only 12 done wrongly typed 21": others that nobody typed.
const another = /^[a-z]+( [a-z]+)? (up|down) to \d+/;
const risen = /(^| )(up|down) to \d+$/;
const wants = /^(she|he|they|we|client|bride) (wants?|said|needs?|prefers?|decided|picked|likes?) /;
const notThat = /^((oops|sorry|no|oh) )*not (dried|fresh|silk|preserved|artificial|faux|mixed|real|\d+)$/;
const wrongly = /^(wrongly|mistakenly|accidentally) (typed|put|said|told|wrote|entered|logged) \d/;
const byMistake = new Set(['wrongly', 'mistakenly', 'accidentally']);
const others = new Set(['she', 'he', 'they', 'we', 'client', 'bride']);
// What may stand behind a comma nobody typed.
const mayOpen = new Set([...opensAgain, ...byMistake, ...others]);
const startsAnew = (tokens: readonly Token[], index: number): boolean => {
  const text = tokens[index]?.text ?? '';
  if (index < 2 || tokens[index]?.kind !== 'word') return false;
  if (byMistake.has(text)) return /\d/.test(wordsBefore(tokens, index)) && wrongly.test(wordsFrom(tokens, index));
  if (others.has(text)) return notThat.test(wordsBefore(tokens, index)) && wants.test(wordsFrom(tokens, index));
  return (
    tokens[index - 2]?.text === 'to' &&
    tokens[index - 1]?.number !== undefined &&
    risen.test(wordsBefore(tokens, index)) &&
    another.test(wordsFrom(tokens, index))
  );
};

// "no 6 combs done" says no, and then how many; "no 2 crowns alike" and "no 6 combs done yet" say none.
const counted =
  /^\d+ (x )?(more |dried |fresh |faux )?(bouts|bhs|buttonholes|lapels|corsages|crowns|combs|halos|pieces|boutonnieres|wrist|pin|hair|flower|done|made)( |$)/;
const none = /(^| )(yet|alike|same|match|look|looks)( |$)/;
const saysNo = (tokens: readonly Token[], index: number): boolean =>
  tokens[index - 1]?.text === 'no' &&
  (index === 1 || (index === 2 && /^(oh|ah|sorry|er|um|ok|actually)$/.test(tokens[0]?.text ?? ''))) &&
  counted.test(wordsFrom(tokens, index)) &&
  !none.test(wordsFrom(tokens, index));

/** The tokens with a comma wherever a break of another kind means no more than one. */
export const withTurns = (given: readonly Token[]): readonly Token[] => {
  const tokens: Token[] = [];
  given.forEach((token, index) => {
    const opens = mayOpen.has(token.text) || given[index - 2]?.text === 'to';
    if ((opens && (turnsHere(given, index) || startsAnew(given, index))) || saysNo(given, index))
      tokens.push(cut({ kind: 'sign', text: ',', start: token.start, end: token.start, glued: token.glued }));
    tokens.push(token);
  });
  let opened = 0; // where the sentence at hand begins
  return tokens.map((token, index) => {
    const breaks = isBreak(token, tokens[index + 1]);
    const short = index - opened <= longestExcuse;
    if (breaks) opened = index + 1;
    return separates(tokens, index) ||
      (breaks && index > 0 && goesOn(wordsFrom(tokens, index + 1), () => wordsBefore(tokens, index), short))
      ? changed(token, { kind: 'sign', text: ',' })
      : token;
  });
};
