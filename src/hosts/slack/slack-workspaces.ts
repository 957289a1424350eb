// One workspace by the operator's token, or all that installed the app: as the settings say.

import { installedWorkspaces, type SealedRows } from './installations.ts';
import { oneWorkspace, type WorkspaceParts, type Workspaces } from './workspaces.ts';

export const slackWorkspaces = (parts: WorkspaceParts, rows: SealedRows): Workspaces => {
  const { installs } = parts.settings;
  return installs === undefined ? oneWorkspace(parts) : installedWorkspaces(parts, installs, rows);
};
