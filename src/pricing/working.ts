// "Show working": the chain for one piece line by line, exact to the end, with the rounding in a column of its own.

import { type Decimal, hundred } from '../values/decimal.ts';
import { fixedMoney } from '../values/money.ts';
import { type Parts, partNames } from './parts.ts';
import type { PricedLine } from './price-order.ts';
import type { ChainRules } from './stem-budget.ts';

export interface WorkingLine {
  readonly part: keyof Parts | 'head maths';
  readonly formula: string; // "25 × 100 ÷ 120"
  readonly exact: string; // cut at six decimals, "…" where digits are left out
  readonly printed: string; // with the currency's decimals; parts add up to their totals
  readonly shared?: true; // a coin more or less than rounding alone would give, so that the parts add up
}

const shownDecimals = 6;

/** Cut, not rounded: the rounding is only in the printed column. */
const exactly = (amount: Decimal): string => {
  const cut = amount.toDecimalPlaces(shownDecimals, 1);
  return cut.equals(amount) ? cut.toString() : `${cut.toFixed(shownDecimals)}…`;
};

const taxFormulas = (
  quoted: string,
  { taxRate, basis }: ChainRules,
  parts: Parts,
): Pick<Record<keyof Parts, string>, 'price' | 'tax' | 'exTax'> => {
  const whole = exactly(taxRate.plus(hundred));
  const rate = exactly(taxRate);
  if (basis === 'included') {
    return { price: quoted, tax: `${quoted} × ${rate} ÷ ${whole}`, exTax: `${quoted} × 100 ÷ ${whole}` };
  }
  if (basis === 'none') return { price: quoted, tax: '0', exTax: quoted };
  return { price: `${quoted} + ${exactly(parts.tax)}`, tax: `${quoted} × ${rate} ÷ 100`, exTax: quoted };
};

const labourFormulas = ({ labour }: ChainRules, exTax: string): Pick<Record<keyof Parts, string>, 'labour' | 'product'> => {
  const share = exactly(labour.share);
  if (labour.rule === 'on product') {
    const whole = exactly(labour.share.plus(hundred));
    return { labour: `${exTax} × ${share} ÷ ${whole}`, product: `${exTax} × 100 ÷ ${whole}` };
  }
  return { labour: `${exTax} × ${share} ÷ 100`, product: `${exTax} × ${exactly(hundred.minus(labour.share))} ÷ 100` };
};

const boughtFormulas = (rules: ChainRules, parts: Parts): Pick<Record<keyof Parts, string>, 'wholesale' | 'sundries' | 'stems'> => {
  const product = exactly(parts.product);
  const sundries = exactly(parts.sundries);
  const stemsMultiple = exactly(rules.stemsMultiple);
  if (rules.stemsMultiple.equals(rules.sundriesMultiple)) {
    const wholesale = exactly(parts.wholesale);
    return { wholesale: `${product} ÷ ${stemsMultiple}`, sundries, stems: `${wholesale} − ${sundries}` };
  }
  const stems = `(${product} − ${exactly(rules.sundriesMultiple)} × ${sundries}) ÷ ${stemsMultiple}`;
  return { wholesale: `${sundries} + ${exactly(parts.stems)}`, sundries, stems };
};

const headFormula = (quoted: string, { taxRate, basis, labour, stemsMultiple }: ChainRules): string => {
  const less = (percent: Decimal): string => ` less ${exactly(percent)} %`;
  return `${quoted}${basis === 'included' ? less(taxRate) : ''}${less(labour.share)} ÷ ${exactly(stemsMultiple)}`;
};

/** The working of one piece of this line. */
export const workingOf = (line: PricedLine, currency: string): readonly WorkingLine[] => {
  const { exact, printed } = line.each;
  const quoted = exactly(line.quotedEach);
  const formulas = {
    ...taxFormulas(quoted, line.rules, exact),
    ...labourFormulas(line.rules, exactly(exact.exTax)),
    ...boughtFormulas(line.rules, exact),
  };
  const head = line.headMaths.wholesale;
  return [
    ...partNames.map((part) => ({
      part,
      formula: formulas[part],
      exact: exactly(exact[part]),
      printed: fixedMoney(printed[part], currency),
      ...(fixedMoney(exact[part], currency) === fixedMoney(printed[part], currency) ? {} : { shared: true as const }),
    })),
    { part: 'head maths', formula: headFormula(quoted, line.rules), exact: exactly(head), printed: fixedMoney(head, currency) },
  ];
};
