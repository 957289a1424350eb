// Slack's message text as the person typed it: escapes undone, mentions, links and emoji codes gone, marks for bold and the like taken off.
// Struck-through words are dropped: striking out 40 and writing 45 means 45.

const invisible = /[\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff]/g;

/** Undoes Slack's three escapes, once each, ampersand last. */
const unescaped = (text: string): string => text.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&amp;', '&');

/** What stands between < and >: a mention, a channel, a command or a link. Only a link's own label is a person's words. */
const withoutReferences = (text: string): string =>
  text.replace(/<([^<>|]*)(?:\|([^<>]*))?>/g, (_whole, target: string, label: string | undefined) => {
    if (target.startsWith('!date')) return label ?? '';
    if (/^[@#!]/.test(target) || /^(mailto|tel):/.test(target)) return ' ';
    return label ?? ' ';
  });

const withoutEmojiCodes = (text: string): string => text.replace(/(?<!\w):(?=[\w+'-]*[a-z])[\w+'-]+:(?!\w)/g, ' ');

const struck = /(?<![\w~])~(?=[^\s~])[^~\n]*?(?<=[^\s~])~(?![\w~])/g;
const marks = ['*', '_', '`'].map((mark) => {
  const sign = mark === '*' ? '\\*' : mark;
  return new RegExp(`(?<![\\w${sign}])${sign}+(?=[^\\s${sign}])([^${sign}\\n]*?)(?<=[^\\s${sign}])${sign}+(?![\\w${sign}])`, 'g');
});
const withoutMarks = (text: string): string => marks.reduce((words, mark) => words.replace(mark, '$1'), text.replace(struck, ' '));

export const plainWords = (slackText: string): string =>
  unescaped(withoutMarks(withoutEmojiCodes(withoutReferences(slackText))))
    .replace(invisible, '')
    .replace(/\u00a0/g, ' ')
    .replace(/^> ?/gm, '')
    .replace(/[ \t]+/g, ' ')
    .replace(/ ?\n ?/g, '\n')
    .trim();
