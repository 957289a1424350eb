// Makes words safe to show: nothing a person typed may steer Slack, a screen reader or the direction of a line.

// Bidirectional and invisible controls, and the control characters no message needs (newline and tab stay).
// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is removed
const controls = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u00ad\u061c\u200b-\u200f\u2028-\u202e\u2060-\u206f\ufeff]/g;

/** The same words without characters that steer rather than show. */
export const withoutControls = (text: string): string => text.replace(controls, '');

/** Slack's three escapes, for the top-level text only: blocks hold literal text. */
export const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
