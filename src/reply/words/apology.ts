// What a person reads when the fault is ours.

export const apologyWords = (id: string): string =>
  `Sorry, something went wrong on my side and nothing of that message is kept. Try again; if it comes back, tell whoever runs me this: ${id}.`;
