// Opens a form on a trigger, which Slack takes once and for three seconds only.

import type { types } from '@slack/bolt';
import { webApi } from '@slack/bolt';
import { hostSays, type Listening } from './listening.ts';

/** 'opened', or the sentence for the person. */
export const openView = async ({ client }: Listening, trigger: string, view: types.ModalView): Promise<'opened' | string> => {
  try {
    await client.views.open({ trigger_id: trigger, view });
    return 'opened';
  } catch (error) {
    const code = error instanceof webApi.WebAPIPlatformError ? error.data.error : '';
    if (code === 'expired_trigger_id' || code === 'exchanged_trigger_id' || code === 'invalid_trigger_id') return hostSays.tooSlow;
    throw error;
  }
};
