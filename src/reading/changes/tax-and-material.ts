// The tax basis and the material a correction names: "no, ex tax", "not inc, plus", "dried not fresh".

import type { Reader, Unworded } from '../phrase.ts';
import { isMaterial } from '../phrases/material-said.ts';
import { taxAt } from '../phrases/tax-basis.ts';
import type { Part } from '../text/message.ts';
import { firstWhere, type Token } from '../text/token.ts';
import { inZones, type Zones } from './two-zones.ts';

export const taxChange = (reader: Reader, part: Part, zones: Zones): Unworded[] => {
  for (let index = part.start; index < part.end; index++) {
    if (!inZones(zones.fresh, index)) continue;
    const tax = taxAt(reader, index);
    if (tax === undefined || tax.match.end > part.end) continue;
    const before = zones.old.some(([from, to]) =>
      tokensSay(reader, from, to, /^(plus|on top|top|\+|ex|excl|extra|exclusive|excluding|added)$/),
    )
      ? 'on top'
      : zones.old.some(([from, to]) =>
            reader.tokens.slice(from, to).some((token) => token.means['included'] !== undefined || token.text === 'in'),
          )
        ? 'included'
        : undefined;
    const name = tax.fact.name ?? nameBefore(reader, zones);
    return [
      {
        fact: 'change',
        what: 'tax',
        to: tax.fact.basis,
        ...(before === undefined || before === tax.fact.basis ? {} : { from: before }),
        ...(name === undefined ? {} : { name }),
      },
    ];
  }
  // "not inc, plus", "incl not excl gst": only the old basis may carry the tax's name.
  for (const [start, end] of zones.old) {
    for (let index = start; index < end; index++) {
      const tax =
        taxAt(reader, index) ?? (reader.tokens[index]?.means['included'] !== undefined ? { fact: { basis: 'included' } } : undefined);
      const from = tax?.fact.basis;
      const other =
        from === 'included' && freshSays(reader, zones, ({ text }) => plusWord.test(text))
          ? 'on top'
          : from === 'on top' && freshSays(reader, zones, ({ means }) => means['included'] !== undefined)
            ? 'included'
            : undefined;
      if (from === undefined || other === undefined) continue;
      const name = nameBefore(reader, zones);
      return [{ fact: 'change', what: 'tax', to: other, from, ...(name === undefined ? {} : { name }) }];
    }
  }
  return behindOld(reader, zones);
};

const plusWord = /^(plus|on top|ex|excl|\+|extra)$/;
const freshSays = ({ tokens }: Reader, { fresh }: Zones, says: (token: Token) => boolean): boolean =>
  fresh.some(([from, to]) => firstWhere(tokens, from, to, says) >= 0);

// "I said incl VAT, it's excl": named beside the basis that is taken back, it is the same tax.
const nameBefore = ({ tokens }: Reader, { old }: Zones): string | undefined => {
  const named = old.flatMap(([from, to]) => tokens.slice(from, to).flatMap(({ means }) => means['taxName'] ?? []));
  return new Set(named).size === 1 ? named[0] : undefined;
};

// "its 60 each not 55 inc vat": said last, it holds for the new price too.
const behindOld = (reader: Reader, zones: Zones): Unworded[] => {
  const [start, end] = zones.old.at(-1) ?? [0, 0];
  const at = firstWhere(reader.tokens, start, end, ({ number }) => number?.form === 'money' || number?.form === 'plain') + 1;
  const priced = zones.fresh.some(([from, to]) =>
    reader.tokens.slice(from, to).some(({ means, number }) => number?.form === 'money' || means['each'] !== undefined),
  );
  if (at < 1 || !priced) return [];
  const tax = taxAt(reader, reader.tokens[at]?.means['each'] === undefined ? at : at + 1);
  if (tax === undefined || tax.match.end !== end) return [];
  return [{ fact: 'change', what: 'tax', to: tax.fact.basis, ...(tax.fact.name === undefined ? {} : { name: tax.fact.name }) }];
};

const tokensSay = (reader: Reader, from: number, to: number, words: RegExp): boolean =>
  reader.tokens.slice(from, to).some((token) => words.test(token.text));

export const materialChange = (reader: Reader, part: Part, zones: Zones): Unworded[] => {
  const at = (zone: Zones['fresh']): number =>
    firstWhere(reader.tokens, part.start, part.end, (_, index) => inZones(zone, index) && isMaterial(reader, index));
  const fresh = at(zones.fresh);
  // "the crowns should be half dried": of two materials, and the other is not said.
  if (fresh < 0 || /^(half|partly|part|semi|mostly)$/.test(reader.tokens[fresh - 1]?.text ?? '')) return [];
  const to = reader.tokens[fresh]?.means['material'] ?? '';
  const old = at(zones.old);
  const from = old < 0 ? undefined : reader.tokens[old]?.means['material'];
  const piece = reader.tokens
    .slice(part.start, part.end)
    .find((token) => token.means['piece'] !== undefined && token.means['piece'] !== 'unspecified')?.means['piece'];
  return [
    {
      fact: 'change',
      what: 'material',
      to,
      ...(from === undefined ? {} : { from }),
      ...(piece === undefined ? {} : { piece: piece as 'buttonhole' }),
    },
  ];
};
