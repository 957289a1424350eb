// JSON that came back from Slack in a button or a form.

/** undefined where it is none. */
export const parsedJson = (json: string): unknown => {
  try {
    return JSON.parse(json);
  } catch {
    return undefined;
  }
};
