// What handling one message came to, for hosts that report it and for the log. Figures are worked out only when somebody looks.

import type { Reading } from '../reading/reading.ts';
import type { Reply } from '../reply/reply.ts';
import type { Figures } from './figures.ts';
import type { IncomingMessage } from './ports.ts';

export type HandledAs = 'stored' | 'answered' | 'asked' | 'refused' | 'silent' | 'failed';

export interface Handled {
  readonly message: IncomingMessage;
  readonly as: HandledAs;
  readonly reading: Reading | undefined; // none for a deletion
  readonly reply: Reply | undefined; // none where the bot stays silent
  readonly figures: () => Figures;
}
