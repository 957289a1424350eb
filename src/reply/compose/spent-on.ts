// Whether a bare "spent 182.40" paid for the stems alone or for everything, as the person answered when we asked.

import type { SpentOn } from '../../review/spending.ts';
import type { EventState } from '../../thread/event.ts';
import { everything } from '../../thread/settle-spent.ts';

export const spentOnOf = ({ actuals }: EventState): SpentOn =>
  actuals.some(({ what, item }) => what === 'spent' && item === everything) ? 'everything' : 'stems';
