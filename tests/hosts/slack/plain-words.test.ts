// Escapes and references: docs.slack.dev/messaging/formatting-message-text, read 2026-09.

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { plainWords } from '../../../src/hosts/slack/plain-words.ts';
import { inGoodTime } from '../../support/in-good-time.ts';

test.each([
  ['<@UBOT> 40 lapel pieces at 25 inc tax', '40 lapel pieces at 25 inc tax'],
  ['<@UBOT|benchbell>: 40 bouts', ': 40 bouts'],
  ['pins &amp; tape, &lt;25 each, count &gt; 12', 'pins & tape, <25 each, count > 12'],
  ['they typed &amp;lt;', 'they typed &lt;'], // undone once only
  ['see <https://example.org/12345|the mood board> for 40', 'see the mood board for 40'],
  ['see <https://example.org/12345> for 40', 'see for 40'],
  ['ring <tel:+441632960000|01632 960000> about 12 bouts', 'ring about 12 bouts'],
  ['<mailto:a@example.org|a@example.org> 12 bouts', '12 bouts'],
  ['<#C2|general> <!channel> <!here> <!subteam^S1|@makers> 8 corsages', '8 corsages'],
  ['event <!date^1799971200^{date_short}|14 Jan>', 'event 14 Jan'],
  ['40 bouts :tulip: :thumbsup::skin-tone-3:', '40 bouts'],
  ['start at 9:30 or 10:45:00', 'start at 9:30 or 10:45:00'],
  ['9:30am-10:30am', '9:30am-10:30am'],
  ['*40* lapel pieces _at_ `25`', '40 lapel pieces at 25'],
  ['*40 lapel pieces*', '40 lapel pieces'],
  ['~40~ 45 bouts', '45 bouts'],
  ['~20 to ~25 bouts', '~20 to ~25 bouts'],
  ['8*3 wired_taped', '8*3 wired_taped'],
  ['&gt; can we do 22?\n12 made', 'can we do 22?\n12 made'],
  ['40\u00a0bouts\u200b', '40 bouts'],
  ['\u202e40 bouts', '40 bouts'],
  ['', ''],
  ['   ', ''],
])('%j is read as %j', (typed, words) => {
  expect(plainWords(typed)).toBe(words);
});

test('never throws, and stays quick on long lines of marks', () => {
  fc.assert(
    fc.property(
      fc.string({ unit: fc.constantFrom('*', '~', '<', '>', '&', ':', 'a', '1', ' ', '|', '\n'), maxLength: 400 }),
      (text) => typeof plainWords(text) === 'string',
    ),
  );
  const began = performance.now();
  plainWords('*~`_:<&'.repeat(6_000));
  inGoodTime(performance.now() - began, 1_500);
});
