// What a message leaves unread, kept beside its facts: a few words at most, enough for "why?".

import type { Fact } from '../reading/fact.ts';
import type { Reading } from '../reading/reading.ts';
import { isPriceList } from './import-prices.ts';
import type { IncomingMessage } from './ports.ts';

/** Of a price list its own answer tells. */
export const leftUnread = (message: IncomingMessage, reading: Reading | undefined): readonly Fact[] =>
  reading === undefined || reading.unread.length === 0 || message.kind === 'tap' || message.kind === 'file' || isPriceList(message)
    ? []
    : [{ fact: 'unread', parts: reading.unread.slice(0, 10).map((part) => part.slice(0, 60)), words: '' }];
