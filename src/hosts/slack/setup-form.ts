// The studio form as a modal, filled with what is set now.

import type { types } from '@slack/bolt';
import type { StudioSettings } from '../../studio/settings.ts';
import { limits, shortened } from './block-limits.ts';
import { type SetupField, setupFields, valueAt } from './setup-fields.ts';

export const setupFormId = 'setup_form';

export const setupForm = (settings: StudioSettings): types.ModalView => ({
  type: 'modal',
  callback_id: setupFormId,
  title: plain('The studio'),
  submit: plain('Save'),
  close: plain('Cancel'),
  blocks: [
    {
      type: 'context',
      elements: [plain('What is left empty follows our defaults, and replies say so. Tax is for you to check with your accountant.')],
    },
    ...setupFields.map((field) => input(field, valueAt(settings, field.path))),
  ],
});

const plain = (text: string): types.PlainTextElement => ({ type: 'plain_text', text, emoji: false });

const input = (field: SetupField, value: unknown): types.InputBlock => ({
  type: 'input',
  block_id: field.id,
  label: plain(field.label),
  ...(field.hint === undefined ? {} : { hint: plain(field.hint) }),
  optional: field.needed !== true,
  element: element(field, value),
});

const element = (field: SetupField, value: unknown): types.InputBlock['element'] => {
  const action_id = field.id;
  switch (field.as) {
    case 'text': {
      const shown = field.typed ? field.typed.show(value) : String(value ?? '');
      return {
        type: 'plain_text_input',
        action_id,
        max_length: limits.textObject,
        ...(shown === '' ? {} : { initial_value: shortened(shown, limits.textObject) }),
      };
    }
    case 'percent':
    case 'amount':
    case 'whole':
      return {
        type: 'number_input',
        action_id,
        is_decimal_allowed: field.as !== 'whole',
        min_value: '0',
        ...(value === undefined ? {} : { initial_value: String(value) }),
      };
    case 'time':
      return { type: 'timepicker', action_id, ...(typeof value === 'string' ? { initial_time: value } : {}) };
    case 'channel':
      return {
        type: 'conversations_select',
        action_id,
        filter: { include: ['public', 'private'], exclude_external_shared_channels: true, exclude_bot_users: true },
        ...(typeof value === 'string' && /^[CG]\w+$/.test(value) ? { initial_conversation: value } : {}),
      };
    case 'choice': {
      const options = field.options.map((option) => ({ text: plain(option.label), value: option.value }));
      const chosen = options.find((option) => option.value === value);
      return { type: 'static_select', action_id, options, ...(chosen ? { initial_option: chosen } : {}) };
    }
  }
};
