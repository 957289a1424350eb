// The Slack host's questions beyond messages, answered by the assistant: Home, the private check, settings.

import { atAGlance, checkPrivately, type DeskParts } from './assistant/desk.ts';
import type { Desk, HomeData } from './hosts/slack/desk.ts';

/** `settle` handles what was received and not yet handled, so that a tick shows at once. */
export const slackDesk = (parts: DeskParts, settle: () => void): Desk => {
  const settings = (workspace: string) => ({
    settings: parts.store.studio(workspace, parts.settings).state.settings,
    isSetUp: parts.store.hasChosenSettings(workspace),
  });
  return {
    home: (workspace) => {
      settle();
      return homeData(parts, workspace);
    },
    check: (workspace, person, words) => checkPrivately(parts, workspace, person, words),
    settings,
    changeSettings: (workspace, _person, chosen) => parts.store.chooseSettings(workspace, parts.settings, chosen),
  };
};

const homeData = (parts: DeskParts, workspace: string): HomeData => {
  const glance = atAGlance(parts, workspace);
  return {
    ...glance,
    due: glance.due.map(({ in: key, event, what, pieces }) => ({
      event,
      what,
      ...(pieces ? { tick: { label: 'Made', in: key, value: `${what} ${glance.today}` } } : {}),
    })),
  };
};
