// One structured line per thing done, to standard error: ids, milliseconds and outcomes, never a word of a message.

import { destination, type Logger, pino } from 'pino';

export const openLog = (level: 'debug' | 'info' | 'warn' | 'error' | 'silent'): Logger =>
  pino({ level, base: null, timestamp: pino.stdTimeFunctions.isoTime }, destination({ fd: 2, sync: true }));
