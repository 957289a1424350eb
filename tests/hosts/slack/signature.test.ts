// The worked example of docs.slack.dev/authentication/verifying-requests-from-slack, read 2026-09, and what we sign our own test deliveries with.

import { verifySlackRequest } from '@slack/bolt';
import { expect, test } from 'vitest';
import { signature } from '../../support/slack-deliveries.ts';

const secret = '8f742231b10e8888abcd99yyyzzz85a5';
const seconds = 1531420618;
const body =
  'token=xyzz0WbapA4vBCDEFasx0q6G&team_id=T1DC2JH3J&team_domain=testteamnow&channel_id=G8PSS9T3V&channel_name=foobar&user_id=U2CERLKJA&user_name=roadrunner&command=%2Fwebhook-collect&text=&response_url=https%3A%2F%2Fhooks.slack.com%2Fcommands%2FT1DC2JH3J%2F397700885554%2F96rGlfmibIGlgcZRskXaIFfN&trigger_id=398738663015.47445629121.803a0bc887a14d10d2c447fce8b6703c';
const published = 'v0=a2114d57b48eac39b9ad189dd8316235a7b4a8d21a10bd27519666489c69b503';

const verify = (changedBody: string, at = seconds * 1000) =>
  verifySlackRequest({
    signingSecret: secret,
    body: changedBody,
    headers: { 'x-slack-signature': published, 'x-slack-request-timestamp': seconds },
    nowMilliseconds: at,
  });

test('we sign as published', () => {
  expect(signature(body, seconds, secret)).toBe(published);
});

test('Bolt takes the published request, and no other', () => {
  expect(() => verify(body)).not.toThrow();
  expect(() => verify(`${body}x`)).toThrow();
  expect(() => verify(body, (seconds + 301) * 1000)).toThrow();
});
