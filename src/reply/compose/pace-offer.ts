// "Took 3 hours for 12" is 15 minutes each. Offered as the studio's own figure from now on; nothing is stored until somebody takes it.

import type { PieceKind } from '../../handbook/pieces.ts';
import { benchRules, minutesEach } from '../../planning/bench-rules.ts';
import type { FactOf } from '../../reading/fact.ts';
import type { Ask, Choice } from '../../reading/reading.ts';
import { decimal } from '../../values/decimal.ts';
import { printNumber } from '../../values/money.ts';
import { roundTo } from '../../values/rounding.ts';
import type { Answer } from '../answer.ts';
import { paceWords } from '../words/dates.ts';
import { pieceName } from '../words/names.ts';

const longest = 600; // minutes; beyond ten hours a piece somebody mistyped

/** Undefined where the message told no time for a number of pieces, or just what is planned with already. */
export const paceOffer = (answer: Answer): Ask | undefined => {
  const timed = answer.stated.find((fact): fact is FactOf<'actual'> => fact.fact === 'actual' && fact.what === 'minutes');
  const count = timed && (timed.count ?? countBeside(answer));
  if (!timed?.minutes || !count) return undefined;
  const each = roundTo(decimal(timed.minutes).dividedBy(count), 1, 'half up').toNumber();
  if (each <= 0 || each > longest) return undefined;
  const rules = benchRules(answer.studio);
  const choices = kindsOf(timed, answer).flatMap((piece): Choice[] => {
    const now = minutesEach(piece, rules);
    if (now.own && now.minutes === each) return [];
    const words = `${paceWords(each)} a ${pieceName(piece, answer.manner.says)}`;
    return [{ words, facts: [{ fact: 'crew', piece, minutesPerPiece: each, words: timed.words }] }];
  });
  const [first] = choices;
  if (!first) return undefined;
  return { about: 'made', why: 'plan with this', words: timed.words, choices: [...choices, keep(timed, answer)] };
};

/** "Made 12, took 3 hours": the time is for those twelve. */
const countBeside = ({ stated }: Answer): number | undefined =>
  stated.find((fact): fact is FactOf<'made'> => fact.fact === 'made' && !fact.total && (fact.count ?? 0) > 0)?.count;

const kindsOf = ({ piece }: FactOf<'actual'>, { event, stated }: Answer): readonly PieceKind[] => {
  const beside = stated.find((fact): fact is FactOf<'made'> => fact.fact === 'made')?.piece;
  const named = piece ?? beside;
  const kinds = named ? [named] : [...new Set(event.lines.map((line) => line.piece))].slice(0, 3);
  return kinds.filter((kind) => kind !== 'unspecified');
};

/** Not taking it is an answer too: it shows the figure that stays. */
const keep = ({ words, count }: FactOf<'actual'>, { studio, event }: Answer): Choice => {
  const piece = event.lines[0]?.piece ?? 'buttonhole';
  const { minutes } = minutesEach(piece, benchRules(studio));
  return {
    words: `keep ${printNumber(decimal(minutes), 1)}`,
    facts: [{ fact: 'question', asks: 'labourTime', piece, words, ...(count === undefined ? {} : { number: count }) }],
  };
};
