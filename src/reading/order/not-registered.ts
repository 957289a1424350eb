// "we're not vat registered", "not reg for gst", "don't charge vat": there is no tax on the prices, and nothing is taken back.

import { pattern } from '../pattern.ts';

const notSo = "(not|never|aren't|arent|isn't|isnt|ain't|aint|am not|no longer)";
const enrolled = "(registered|reg|reg'd|regd|reged|reg.|registerd)";
/** The words as one choice, for the forms that tell where the tax goes. */
export const unregistered = `(${notSo} (even|yet|actually|big enough to be|currently)? (<tax:tax> (-)? ${enrolled}|${enrolled} (yet)? (for|with) (the)? <tax:tax>)|(un|non) (-)? ${enrolled} for <tax:tax>)`;

export const notRegistered = pattern(unregistered);
