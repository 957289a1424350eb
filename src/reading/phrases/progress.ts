// What is finished: "made 12", "12 of the 40 done", "40/40 bouts done", "corsages all done", "2 broke", "5 to go", "two dozen wired" (begun, not finished).

import type { PieceKind } from '../../handbook/pieces.ts';
import { isA, type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader, type Unworded } from '../phrase.ts';
import { didWord, doneWord, followers, intent, stageWord } from '../progress/done-words.ts';
import type { Part } from '../text/message.ts';
import type { Token } from '../text/token.ts';

const did = `(${didWord})`;
const done = `(${doneWord})`;
const be = "(is|are|now|all|were|have been|has been|been|just|already|got|'s|get|fully|nearly|both|and)";
const counted =
  '<n:count> (x|more|of the|of|of them|nos)? (more|other|last|first|little|of)? (<material>)? (more)? (<p:piece>)? (<piece>)?';

type Build = (match: Match) => Unworded | undefined;
const kindOf = (token: Token | undefined): { piece?: PieceKind } => {
  const kind = token?.means['piece'] as PieceKind | undefined;
  return kind === undefined || kind === 'unspecified' ? {} : { piece: kind };
};
const number = (token: Token | undefined): number => Number(token?.number?.amount ?? Number.NaN);
const piece = (match: Match) => kindOf(match.kept['p']);
const made = (match: Match): Unworded => ({ fact: 'made', count: number(match.kept['n']), ...piece(match) });

const outOf: Build = (match) => {
  const [count = 0, of = 0] = match.kept['s']?.number?.parts ?? [number(match.kept['n']), number(match.kept['m'])];
  if (of < count) return undefined;
  return { fact: 'made', count, of, total: true, ...(count === of ? { all: true } : {}), ...piece(match) };
};

const forms: readonly (readonly [string, Build])[] = [
  [`(ok|so)? <s:slashed> (of)? (the)? (<p:piece>)? ${be}{0,2} ${done}`, outOf],
  [`${done} <s:slashed> (of)? (the)? (<p:piece>)?`, outOf],
  [`${did} <s:slashed> (of)? (the)? (<p:piece>)?`, outOf],
  [`<s:slashed> (<p:piece>)? (so far|now|complete)`, outOf],
  [
    `(${did})? <n:count> (<piece>)? (out of|of|outta|outa|from) (the|our|all)? <m:count> (<material>)? (<p:piece>)? ${be}{0,2} (${done})?`,
    outOf,
  ],
  [
    '(remade|redid|redone|re-made|remaking|replaced|remake) (the|all)? <n:count> (<p:piece>)? (that|which)? (broke|snapped|broken|fell|were broken|got broken|apart|got squashed|were damaged|duds)?',
    (match) => ({ fact: 'made', count: number(match.kept['n']), remade: true, ...piece(match) }),
  ],
  [
    '(re|re-) - (did|made) (the)? <n:count> (<p:piece>)?',
    (match) => ({ fact: 'made', count: number(match.kept['n']), remade: true, ...piece(match) }),
  ],
  [
    '<n:count> (of)? (the|them)? (<p:piece>)? (remade|redone|replaced)',
    (match) => ({ fact: 'made', count: number(match.kept['n']), remade: true, ...piece(match) }),
  ],
  [
    `(none|nothing|zero|nil|zilch|no (<p:piece>)) (of them|is|are|at all|have been|been|got|is getting|getting)? ${done} (yet|today|so far|at all)?`,
    (match) => ({ fact: 'made', count: 0, ...piece(match) }),
  ],
  [
    `(havent|haven't|not|didnt|didn't|have not|did not) (made|done|started|get|finished|got|do|make|finish|even started) (any|one|a single one|anything|a thing)? (of)? (the|them)? (<p:piece>)? (done)? (yet|today)?`,
    (match) => (match.end - match.start >= 3 ? { fact: 'made', count: 0, ...piece(match) } : undefined),
  ],
  [`(nothing|none|zero|nil|no progress) (done)? (made)? (today|yet|yesterday|this morning|so far)`, () => ({ fact: 'made', count: 0 })],
  [
    `(the|all)? (of)? (the|those|my|our)? <p:piece> (are|is|have|has|now|were|'s)? (all|now|been|fully){0,3} ${done}`,
    (match) => ({ fact: 'made', all: true, ...piece(match) }),
  ],
  [`<p:piece> (-|:|,)? (all)? (done|finished|complete|completed|ready)`, (match) => ({ fact: 'made', all: true, ...piece(match) })],
  [
    `(all|every|everyone|all of) (the|our|of the|of)? (last)? (single)? (of)? <p:piece> (are|is|have been|now|been|has been|all|got)? ${done}`,
    (match) => ({ fact: 'made', all: true, ...piece(match) }),
  ],
  [
    `(just|we|i|we've|i've|ive|weve|have|and|ok|all|finally)? (finished|done|completed|did|made|boxed|wrapped up|finished off|polished off) (with)? (all|every)? (of)? (the|all the|my|our|those|last of the|rest of the|every) (last)? (of)? (the)? (<material>)? <p:piece>`,
    (match) => ({ fact: 'made', all: true, ...piece(match) }),
  ],
  [
    `(everything|all|all of them|the lot|them all|whole lot|whole order|whole thing|every last one|every one|all of it|all the pieces|everythings|everything's|job|full order|entire order) (is|are|now|has been|have been|been|'s)? (all)? (done|finished|made|boxed|complete|completed|packed)`,
    () => ({ fact: 'made', all: true }),
  ],
  [
    `(done|finished|made|completed) (the lot|them all|all of them|everything|for the lot|all|all of it)`,
    () => ({ fact: 'made', all: true }),
  ],
  [
    `(half|halfway|half way|a third|third|two thirds|quarter|a quarter|three quarters) (of)? (the|them)? (way|of)? (through|done|finished|made|there|thru|complete|of them done|them done)? (the|with)? (<p:piece>)? (are|is)? (done|made|finished|there|complete|now|through)?`,
    (match) => fraction(match),
  ],
];

function fraction(match: Match): Unworded | undefined {
  if (match.end - match.start < 2) return undefined;
  return { fact: 'made', fraction: '0.5', ...piece(match) };
}

const losses =
  '(broke|broken|snapped|dropped|ruined|duds|dud|damaged|crushed|squashed|binned|wrecked|no good|fell apart|scrapped|shattered|died|wilted|busted|bust|unusable|cracked|came apart|bent|squished|got squashed|got crushed|got broken|got damaged|broke off|collapsed|failed|rejects|reject|rejected|got wet|in the bin|to bin|smashed|are broken|were broken|got binned|have broken|has broken|munted|stuffed|knackered|banjaxed|mangled|went soft|browned|went brown|turned|spoiled|spoilt|goosed|fell on the floor)';
const lossForms = [
  pattern(`<n:count> (of)? (the|them|those)? (<material>)? (<p:piece>)? (are|is|were|was|have|has|got|had|that)? (just)? ${losses}`),
  pattern(
    '(broke|lost|snapped|dropped|binned|scrapped|ruined|wrecked|damaged|crushed|bust|squashed|smashed|busted|had to bin|had to scrap|threw out|chucked|cracked|minus) (another|about)? <n:count> (of)? (the|them|more)? (<p:piece>)? (tho|though)?',
  ),
  pattern('(a|an) (<p:piece>) (<filler>)? (broke|snapped|fell apart|got crushed|got squashed|died|is broken|has broken)'),
];
const leftForms = [
  pattern(
    `<n:count> (more|of them|of the|of)? (<material>)? (<p:piece>)? (still|are|is|more)? (left|to go|remaining|remain|pending|to do|outstanding|to make|to be made|short|not done|need doing|need making|needing made|balance|to finish|remains|still left|undone|unfinished|yet to make|still to go|still to make|still to do|not made|more to go|more to do|more to make|yet to do|yet to be made|to be done|waiting) (now|only|to make|to do)?`,
  ),
  pattern(
    '(still|only|just|have|got|leaves|leaving|with|and|balance|remaining|left|pending|another|remaining:|outstanding) (need|needs|needing|have|got|is|:|of|to do|to make|just|only)? <n:count> (more|of them|<material>)? (<p:piece>)? (to go|left|to do|to make|remaining|more to go|to finish|more|still to go|outstanding)?',
  ),
  pattern('(need|needs) (to do|to make|another|to finish)? <n:count> more (<p:piece>)? (to finish|to go|to hit|to get)'),
];
const stageForms = [
  pattern(`${counted} (are|is|now|all|just|been|have been|only|got)? (<stage>|${stageWord})`),
  pattern(`(${stageWord}) (up)? (the|about)? <n:count> (<p:piece>)?`),
];
const plainForms: readonly Pattern_[] = [
  pattern(
    `(that's|thats|that makes|makes|now at|up to|now on|at|total|were at|we're at|on) (it|now|about)? ${counted} ${be}{0,2} (${done}|so far|now|in total|altogether) (so far|now|in total|altogether|overall|total)?`,
  ),
  pattern(`${did} (about|all|the|our|first|another|just|a total of|up|out|my|off){0,2} ${counted}`),
  pattern(`(got|have|had|we've|i've|ive|weve|with|another|and|so|ok|just) (another|about|the first|first)? ${counted} ${be}{0,2} ${done}`),
  pattern(`${counted} ${be}{0,2} ${done}`),
  pattern(`${done} (:|-|another|is|=)? ${counted}`),
];
type Pattern_ = ReturnType<typeof pattern>;
const cumulative = pattern(
  "(that's|thats|that makes|makes|now at|up to|now on|were at|we're at|so far|in total|altogether|total|overall|all up|tally|running total)",
);
const spareForms = [
  pattern('(incl|including|inc|with|plus|and|+|,)? (made)? <n:count> (<p:piece>)? (spare|spares|extra|extras) (<p:piece>)? (made|done)?'),
];
const compiled = forms.map(([source, build]) => ({ form: pattern(source), build }));
const doneAt = pattern(done);

const acceptsAfter = (reader: Reader, match: Match): boolean => {
  const next = reader.tokens[match.end];
  const last = reader.tokens[match.end - 1];
  if (next === undefined || next.kind !== 'word' || match.kept['p'] !== undefined || last?.number === undefined) return true;
  return followers.has(next.text) || isA(next, 'material') || isA(next, 'weekday');
};

const future = (reader: Reader, part: Part, before: number): boolean =>
  reader.tokens.slice(Math.max(part.start, before - 5), before).some((token) => intent.has(token.text));

const findPart = (reader: Reader, part: Part): Finding[] => {
  const { tokens } = reader;
  const findings: Finding[] = [];
  const taken = new Set<number>();
  const free = (match: Match): boolean => {
    for (let index = match.start; index < match.end; index++) if (taken.has(index) || !reader.free(index)) return false;
    return true;
  };
  const take = (match: Match, facts: readonly Unworded[]): void => {
    for (let index = match.start; index < match.end; index++) taken.add(index);
    findings.push(found(reader, match.start, match.end, facts));
  };
  const sweep = (pat: Pattern_, build: Build, guarded: boolean): void => {
    for (let index = part.start; index < part.end; index++) {
      const match = pat.at(tokens, index, part.end);
      if (match === undefined || !free(match) || !acceptsAfter(reader, match)) continue;
      if (guarded && future(reader, part, match.start)) continue;
      const fact = build(match);
      if (fact === undefined || ('all' in fact && fact.all === true && partial(tokens, match, fact))) continue;
      take(match, [fact]);
      index = match.end - 1;
    }
  };
  const finished =
    doneAt.in(tokens, part.start, part.end) !== undefined || plainForms.some((form) => form.in(tokens, part.start, part.end) !== undefined);
  for (const { form, build } of compiled) sweep(form, build, true);
  for (const form of lossForms)
    sweep(form, (match) => ({ fact: 'broke', count: match.kept['n'] === undefined ? 1 : number(match.kept['n']), ...piece(match) }), true);
  const all = cumulative.in(tokens, part.start, part.end) !== undefined;
  const spares = spareForms.map((form) => form.in(tokens, part.start, part.end)).find((match) => match !== undefined && free(match));
  const spare = spares === undefined || !finished ? undefined : number(spares.kept['n']);
  if (spares !== undefined && spare !== undefined) for (let index = spares.start; index < spares.end; index++) taken.add(index);
  const lists = listBeforeDone(reader, part, (index) => !taken.has(index) && reader.free(index));
  for (const match of lists.matches) take(match, lists.facts(match));
  for (const form of plainForms) {
    sweep(
      form,
      (match) => ({ ...made(match), ...(all ? { total: true } : {}), ...(spare === undefined ? {} : { spares: spare }) }) as Unworded,
      true,
    );
  }
  followOn(reader, part, findings, taken);
  if (spare !== undefined && spares !== undefined && !findings.some((finding) => finding.facts?.some((fact) => fact.fact === 'made'))) {
    findings.push(found(reader, spares.start, spares.end, [{ fact: 'made', spares: spare, ...piece(spares) }]));
  }
  const progress = findings.length > 0;
  for (const form of stageForms)
    sweep(form, (match) => ({ fact: 'made', count: number(match.kept['n']), stage: stageOf(tokens, match), ...piece(match) }), true);
  const anything = progress || findings.length > 0;
  for (const [at, form] of leftForms.entries()) {
    sweep(
      form,
      (match) =>
        at === 1 && !anything && !leftWord(tokens, match) ? undefined : { fact: 'left', count: number(match.kept['n']), ...piece(match) },
      at === 2,
    );
  }
  return findings;
};

// "six buttonholes done" is six, not all of them.
const partial = (tokens: readonly Token[], match: Match, fact: Unworded): boolean => {
  if (fact.fact === 'made' && fact.of !== undefined) return false;
  const before = [tokens[match.start - 1], tokens[match.start - 2]];
  return (
    before.some(
      (token, at) =>
        token?.number !== undefined && at < 2 && (at === 0 || /^(of|more|x|of the|dried|fresh|other)$/.test(before[0]?.text ?? '')),
    ) || /^(both|of|more|last|another|a|some|most|few|couple)$/.test(before[0]?.text ?? '')
  );
};

const leftWord = (tokens: readonly Token[], match: Match): boolean =>
  tokens.slice(match.start, match.end).some((token) => /^(left|go|remaining|outstanding|pending|balance|still|finish)$/.test(token.text)) &&
  tokens.slice(match.start, match.end).some((token) => /^(left|go|do|make|remaining|outstanding|pending|balance|finish)$/.test(token.text));

const stageOf = (tokens: readonly Token[], match: Match): string =>
  tokens.slice(match.start, match.end).find((token) => new RegExp(`^(${stageWord})$`).test(token.text))?.text ?? 'begun';

// "7 bouts + both corsages are boxed": every counted piece before the word is finished.
const item = pattern('(and|+|&|,|all|the|plus|both|our)? (all|the)? <n:count> (<material>)? <p:piece>');
const bothItem = pattern('(and|+|&|,|plus)? both (the)? <p:piece>');
const listBeforeDone = (reader: Reader, part: Part, free: (index: number) => boolean) => {
  const parts: { start: number; end: number; fact: Unworded }[] = [];
  let index = part.start;
  while (index < part.end) {
    const match = item.at(reader.tokens, index, part.end) ?? bothItem.at(reader.tokens, index, part.end);
    if (match === undefined || !free(match.end - 1)) {
      if (parts.length > 0) break;
      index += 1;
      continue;
    }
    parts.push({
      start: match.start,
      end: match.end,
      fact: { fact: 'made', count: match.kept['n'] === undefined ? 2 : number(match.kept['n']), ...piece(match) },
    });
    index = match.end;
  }
  const close = pattern(`${be}{0,3} ${done}`).at(reader.tokens, index, part.end);
  const [first] = parts;
  const usable = parts.length >= 2 && close !== undefined && first !== undefined && !future(reader, part, first.start);
  const matches: Match[] = usable && first !== undefined && close !== undefined ? [{ start: first.start, end: close.end, kept: {} }] : [];
  return { matches, facts: (_: Match): readonly Unworded[] => parts.map((each) => each.fact) };
};

// "made 12 bouts and 3 corsages": the list goes on after the verb.
const followOn = (reader: Reader, part: Part, findings: Finding[], taken: Set<number>): void => {
  const last = findings
    .filter((finding) => finding.facts?.some((fact) => fact.fact === 'made' && fact.count !== undefined && fact.all !== true))
    .at(-1);
  if (last === undefined) return;
  const next = pattern('(and|+|&|,|plus) (the|all)? (<n:count>|both|a|all) (<material>|the)? <p:piece>');
  for (let index = last.end; index < part.end; ) {
    const match = next.at(reader.tokens, index, part.end);
    if (match === undefined || reader.tokens[match.end]?.text === 'left' || reader.tokens[match.end]?.text === 'to') return;
    const words = reader.tokens.slice(match.start, match.end).map((token) => token.text);
    const count = match.kept['n'] === undefined ? (words.includes('both') ? 2 : 1) : number(match.kept['n']);
    findings.push(
      found(reader, match.start, match.end, [
        words.includes('all') ? { fact: 'made', all: true, ...piece(match) } : { fact: 'made', count, ...piece(match) },
      ]),
    );
    for (let at = match.start; at < match.end; at++) taken.add(at);
    index = match.end;
  }
};

const find = (reader: Reader): Finding[] => reader.message.parts.slice(0, 60).flatMap((part) => findPart(reader, part));

export const progress: Phrase = {
  name: 'progress',
  examples: ['made 12', '12 of the 40 done', 'corsages all done', '2 broke', '5 to go'],
  find,
};
