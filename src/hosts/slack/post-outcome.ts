// What an error of Slack's means for a reply waiting to be posted: wait and try again, give up, or send it differently.

import { webApi } from '@slack/bolt';
import type { Posted } from '../../assistant/ports.ts';
import { errorName } from './logger.ts';

/** Slack's trouble, or the operator's: the reply keeps. */
const passing = new Set([
  'internal_error',
  'fatal_error',
  'service_unavailable',
  'request_timeout',
  'ratelimited',
  'rate_limited',
  'accesslimited',
]);
const operators = new Set([
  'invalid_auth',
  'not_authed',
  'token_revoked',
  'token_expired',
  'account_inactive',
  'missing_scope',
  'no_permission',
  'ekm_access_denied',
  'team_access_not_granted',
]);

const tooMuch = new Set(['msg_blocks_too_long', 'msg_too_long', 'invalid_blocks', 'invalid_blocks_format', 'markdown_text_conflict']);
const updateGone = new Set(['message_not_found', 'cant_update_message', 'edit_window_closed', 'streaming_state_conflict']);

const operatorsWait = 5 * 60_000;
const longestWait = 5 * 60_000;

const codeOf = (error: unknown): string | undefined => (error instanceof webApi.WebAPIPlatformError ? error.data.error : undefined);

/** Slack would not take the blocks: the plain text may still do. */
export const isTooMuch = (error: unknown): boolean => tooMuch.has(codeOf(error) ?? '');

/** The earlier reply can no longer be changed: a new one must be posted. */
export const isUpdateGone = (error: unknown): boolean => updateGone.has(codeOf(error) ?? '');

/** Slack answered, and its answer was no: nothing was done, and asking the same again will not help at once. */
export const isAnswered = (error: unknown): boolean => {
  const code = codeOf(error);
  return code !== undefined && !passing.has(code);
};

/** `sending`: the message itself was under way, so that without an answer it may have arrived. */
export const outcomeOf = (error: unknown, attempts: number, sending: boolean): Exclude<Posted, { outcome: 'posted' }> => {
  if (error instanceof webApi.WebAPIRateLimitedError)
    return { outcome: 'later', afterMilliseconds: Math.max(1, error.retryAfter) * 1000, reason: 'rate limited' };
  const code = codeOf(error);
  if (code !== undefined && operators.has(code)) return { outcome: 'later', afterMilliseconds: operatorsWait, reason: code };
  if (isAnswered(error)) return { outcome: 'refused', reason: errorName(error) };
  const afterMilliseconds = Math.min(longestWait, 1000 * 2 ** Math.min(attempts, 9));
  return { outcome: 'later', afterMilliseconds, reason: errorName(error), ...(sending ? { unsure: true } : {}) };
};
