// What the app asks a workspace for, and no more; the manifests name the same.

export const botScopes = [
  'app_mentions:read',
  'assistant:write',
  'channels:history',
  'channels:read',
  'chat:write',
  'commands',
  'files:read',
  'files:write',
  'groups:history',
  'groups:read',
  'im:history',
  'mpim:history',
  'users:read',
] as const;
