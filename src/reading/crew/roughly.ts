// Words for roughly, before how long a piece takes: "a corsage is like 11 minutes for me".

const words =
  'about|around|roughly|like|more like|closer to|nearer|prob|probably|maybe|usually|normally|generally|say|only|just|bout|approx';
export const roughly = `(${words})`;
/** The same word by word; "bout" alone is a piece. */
export const roughWords: ReadonlySet<string> = new Set(words.split(/[| ]/).filter((word) => word !== 'bout'));
