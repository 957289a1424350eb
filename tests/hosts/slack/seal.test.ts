// AES-256-GCM as Node has it (NIST SP 800-38D, 2007); here only what our use of it must give: nothing readable, nothing exchangeable, nothing changed unseen.

import { createDecipheriv } from 'node:crypto';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readKey, seal, unseal } from '../../../src/hosts/slack/seal.ts';

const key = Buffer.alloc(32, 7);
const token = 'xoxb-test-1';

test('what is sealed opens again, for its workspace and with its key', () => {
  fc.assert(
    fc.property(fc.string(), fc.string(), (text, about) => {
      expect(unseal(key, seal(key, text, about), about)).toBe(text);
    }),
  );
});

test('nothing of it can be read, and the same is never sealed alike', () => {
  const [one, other] = [seal(key, token, 'T1'), seal(key, token, 'T1')];
  expect(one).not.toBe(other);
  expect(Buffer.from(one, 'utf8').toString('latin1')).not.toContain(token);
});

test('a row of another workspace, another key, another form or a changed byte do not open', () => {
  const sealed = seal(key, token, 'T1');
  const [form, iv, tag, content = ''] = sealed.split('.');
  const bent = Buffer.from(content, 'base64').map((byte, place) => (place === 0 ? byte ^ 1 : byte));
  expect(unseal(key, sealed, 'T2')).toBeUndefined();
  expect(unseal(Buffer.alloc(32, 8), sealed, 'T1')).toBeUndefined();
  expect(unseal(key, `v2${sealed.slice(2)}`, 'T1')).toBeUndefined();
  expect(unseal(key, [form, iv, tag, Buffer.from(bent).toString('base64')].join('.'), 'T1')).toBeUndefined();
  expect(unseal(key, [form, iv, (tag ?? '').slice(0, 8), content].join('.'), 'T1')).toBeUndefined();
  expect(unseal(key, 'anything', 'T1')).toBeUndefined();
});

test('it is the standard’s own cipher: Node’s opens it without us', () => {
  const [, iv = '', tag = '', content = ''] = seal(key, token, 'T1').split('.');
  const cipher = createDecipheriv('aes-256-gcm', key, Buffer.from(iv, 'base64'))
    .setAAD(Buffer.from('T1'))
    .setAuthTag(Buffer.from(tag, 'base64'));
  expect(cipher.update(content, 'base64', 'utf8') + cipher.final('utf8')).toBe(token);
});

test.each([
  ['64 hexadecimal digits', 'ab'.repeat(32), true],
  ['base64 of 32 bytes', Buffer.alloc(32, 250).toString('base64'), true],
  ['too short', 'ab'.repeat(31), false],
  ['a sentence', 'a sentence of words that is surely long enough', false],
  ['nothing', '', false],
])('a key: %s', (_what, text, good) => {
  expect(readKey(text) !== undefined).toBe(good);
});
