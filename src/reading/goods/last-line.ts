// The last line of a price list, where it speaks of every good above it: "all per bunch ex vat".

import type { FactOf } from '../fact.ts';
import type { Finding, Reader } from '../phrase.ts';
import { taxAt } from '../phrases/tax-basis.ts';
import type { Token } from '../text/token.ts';

const ofAll = /^(all|prices|price|everything|these|those|they|both|are|is|per|a|each|,|and|-|:)$/;

const saidOfAll = (
  tokens: readonly Token[],
  tax: { readonly start: number; readonly end: number; readonly basis: 'included' | 'on top'; readonly name?: string } | undefined,
  start: number,
  end: number,
): Pick<FactOf<'pack'>, 'basis' | 'taxName' | 'per'> | undefined => {
  let per: string | undefined;
  for (let index = start; index < end; index++) {
    const token = tokens[index];
    if (token === undefined || (tax !== undefined && index >= tax.start && index < tax.end)) continue;
    if (token.means['pack'] !== undefined) per = token.means['pack'];
    else if (!ofAll.test(token.text) && token.means['all'] === undefined && token.means['each'] === undefined) return undefined;
  }
  if (tax === undefined && per === undefined) return undefined;
  return {
    ...(tax === undefined ? {} : { basis: tax.basis, ...(tax.name === undefined ? {} : { taxName: tax.name }) }),
    ...(per === undefined ? {} : { per }),
  };
};

/** The goods with what the last line says of them; it is read with them. */
export const withLastLine = (reader: Reader, findings: readonly Finding[]): Finding[] => {
  const last = reader.untouched().at(-1);
  const before = findings.at(-1);
  if (last === undefined || before === undefined || last.start < before.end || last.start - before.end > 2) return [...findings];
  let tax: Parameters<typeof saidOfAll>[1];
  for (let index = last.start; index < last.end && tax === undefined; index++) {
    const read = taxAt(reader, index);
    if (read !== undefined && read.fact.basis !== 'none')
      tax = {
        start: index,
        end: read.match.end,
        basis: read.fact.basis,
        ...(read.fact.name === undefined ? {} : { name: read.fact.name }),
      };
  }
  const said = saidOfAll(reader.tokens, tax, last.start, last.end);
  if (said === undefined) return [...findings];
  const told = findings.map((finding) => ({
    ...finding,
    facts: (finding.facts ?? []).map((fact) => (fact.fact === 'pack' ? { ...said, ...fact } : fact)),
  }));
  return [...told, { start: last.start, end: last.end }];
};
