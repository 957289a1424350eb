// One bad cell of an imported price list, named by its line.

import type { RowFault, RowFaultReason } from '../../values/problem.ts';
import type { Line } from '../reply.ts';
import { ownWords, text } from '../span.ts';

const reasons: { readonly [why in RowFaultReason]: string } = {
  empty: 'is empty',
  'not a number': 'is not a number',
  'number unclear': 'could be a thousand or a decimal',
  negative: 'is below zero',
  'zero pack size': 'is zero',
  'not a whole number': 'is not a whole number',
  'percent out of range': 'is not a percentage',
  'other currency': 'is in another currency',
  'unit unknown': 'is a unit I do not know',
  'length unit missing': 'needs a unit of length',
  'units disagree': 'disagrees with the other unit',
  'role unknown': 'is a role I do not know',
  'name twice': 'is listed twice',
  'name too long': 'is too long',
  'too many cells': 'has too many cells',
};

export const rowFaultWords = ({ line, column, why, value, other }: RowFault): Line =>
  text`line ${line}: ${column} ${value === '' ? '' : text`${ownWords(value)} `}${reasons[why]}${other ? ` (also line ${other})` : ''}`;
