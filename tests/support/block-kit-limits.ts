// Checks a message against the published Block Kit limits (docs.slack.dev/reference/block-kit/blocks and /block-elements, /composition-objects, read 2026-09).
// Written from the pages alone: it shares no figure with the renderer.

type Json = Readonly<Record<string, unknown>>;
const isObject = (value: unknown): value is Json => typeof value === 'object' && value !== null && !Array.isArray(value);
const list = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
const textOf = (value: unknown): string => (isObject(value) && typeof value['text'] === 'string' ? value['text'] : '');

/** What is wrong with a message; empty when Slack would take it. */
export const messageFaults = (message: { readonly text: string; readonly blocks?: readonly unknown[] | undefined }): string[] => {
  const blocks = message.blocks ?? [];
  const tables = blocks.filter((block) => isObject(block) && block['type'] === 'table');
  return [
    ...(message.text === '' ? ['no text for screen readers'] : []),
    ...(message.text.length > 4_000 ? [`text of ${message.text.length}`] : []),
    ...(blocks.length > 50 ? [`${blocks.length} blocks`] : []),
    ...(JSON.stringify(blocks).length > 13_200 ? [`blocks of ${JSON.stringify(blocks).length} characters`] : []),
    ...(tables.length > 1 ? ['more than one table'] : []),
    ...blocks.flatMap((block, place) => blockFaults(block, 'message').map((fault) => `block ${place}: ${fault}`)),
    ...repeated(blocks.map((block) => (isObject(block) ? block['block_id'] : undefined))).map((id) => `block_id ${id} twice`),
  ];
};

/** What is wrong with a modal or a Home view. */
export const viewFaults = (view: Json): string[] => {
  const blocks = list(view['blocks']);
  const modal = view['type'] === 'modal';
  const label = (name: string): string[] => (textOf(view[name]).length > 24 ? [`${name} of ${textOf(view[name]).length}`] : []);
  return [
    ...(blocks.length > 100 ? [`${blocks.length} blocks`] : []),
    ...(JSON.stringify(view).length > 250_000 ? ['view too large'] : []),
    ...(modal ? [...label('title'), ...label('submit'), ...label('close')] : []),
    ...(modal && textOf(view['title']) === '' ? ['no title'] : []),
    ...(modal && blocks.some((block) => isObject(block) && block['type'] === 'input') && !view['submit'] ? ['input without submit'] : []),
    ...(String(view['private_metadata'] ?? '').length > 3_000 ? ['private_metadata'] : []),
    ...blocks.flatMap((block, place) => blockFaults(block, modal ? 'modal' : 'home').map((fault) => `block ${place}: ${fault}`)),
    ...repeated(blocks.map((block) => (isObject(block) ? block['block_id'] : undefined))).map((id) => `block_id ${id} twice`),
  ];
};

const repeated = (ids: readonly unknown[]): string[] => {
  const given = ids.filter((id): id is string => typeof id === 'string');
  return given.filter((id, place) => given.indexOf(id) !== place);
};

const textFaults = (text: unknown, most: number, what: string): string[] => {
  const words = textOf(text);
  if (words === '') return [`empty ${what}`];
  const marked = isObject(text) && text['type'] === 'mrkdwn' && text['verbatim'] !== true;
  return [...(words.length > most ? [`${what} of ${words.length}`] : []), ...(marked ? [`${what} lets Slack link words`] : [])];
};

const blockFaults = (block: unknown, where: 'message' | 'modal' | 'home'): string[] => {
  if (!isObject(block)) return ['not a block'];
  const elements = list(block['elements']);
  const id = String(block['block_id'] ?? '').length > 255 ? ['block_id too long'] : [];
  switch (block['type']) {
    case 'actions':
      return [
        ...id,
        ...(elements.length < 1 || elements.length > 25 ? [`${elements.length} elements`] : []),
        ...elements.flatMap(elementFaults),
        ...repeated(elements.map((element) => (isObject(element) ? element['action_id'] : undefined))).map(
          (one) => `action_id ${one} twice`,
        ),
      ];
    case 'context':
      return [
        ...id,
        ...(elements.length < 1 || elements.length > 10 ? [`${elements.length} elements`] : []),
        ...elements.flatMap((one) => textFaults(one, 3_000, 'context')),
      ];
    case 'divider':
      return id;
    case 'header':
      return [...id, ...textFaults(block['text'], 150, 'header')];
    case 'input':
      return [
        ...id,
        ...textFaults(block['label'], 2_000, 'label'),
        ...(block['hint'] ? textFaults(block['hint'], 2_000, 'hint') : []),
        ...elementFaults(block['element']),
      ];
    case 'rich_text':
      return [...id, ...(elements.length === 0 ? ['empty rich_text'] : []), ...elements.flatMap(richFaults)];
    case 'section':
      return [
        ...id,
        ...(block['text'] ? textFaults(block['text'], 3_000, 'section') : []),
        ...(list(block['fields']).length > 10 ? ['fields'] : []),
        ...list(block['fields']).flatMap((field) => textFaults(field, 2_000, 'field')),
        ...(block['accessory'] ? elementFaults(block['accessory']) : []),
      ];
    case 'table':
      return where === 'modal' ? ['a table in a modal'] : [...id, ...tableFaults(block)];
    default:
      return [`unexpected type ${String(block['type'])}`];
  }
};

const tableFaults = (block: Json): string[] => {
  const rows = list(block['rows']).map(list);
  const cells = rows.flat();
  return [
    ...(rows.length < 1 || rows.length > 100 ? [`${rows.length} rows`] : []),
    ...(rows.some((row) => row.length < 1 || row.length > 20) ? ['columns'] : []),
    ...(list(block['column_settings']).length > 20 ? ['column_settings'] : []),
    ...(cells.some((cell) => textOf(cell) === '') ? ['empty cell'] : []),
    ...(cells.reduce((sum: number, cell) => sum + textOf(cell).length, 0) > 10_000 ? ['table characters'] : []),
  ];
};

const richFaults = (element: unknown): string[] => {
  if (!isObject(element)) return ['not an element'];
  const inner = list(element['elements']);
  if (inner.length === 0) return [`empty ${String(element['type'])}`];
  if (element['type'] === 'rich_text_list') return inner.flatMap(richFaults);
  if (!['rich_text_section', 'rich_text_preformatted', 'rich_text_quote'].includes(String(element['type'])))
    return [`unexpected ${String(element['type'])}`];
  return inner.flatMap(partFaults);
};

/** Literal text, or a link of our own making to a thread; anything else could carry a person's words into Slack's own marks. */
const partFaults = (part: unknown): string[] => {
  if (!isObject(part)) return ['not a part'];
  const words = textOf(part);
  if (part['type'] === 'text') return words === '' ? ['empty text'] : [];
  const toThread = /^https:\/\/[\w.-]+\/archives\/\w+\/p\d+(\?thread_ts=[\d.]+&cid=\w+)?$/.test(String(part['url']));
  return part['type'] === 'link' && toThread && words !== '' ? [] : [`element ${JSON.stringify(part)} is not literal`];
};

const elementFaults = (element: unknown): string[] => {
  if (!isObject(element)) return ['not an element'];
  const options = list(element['options']);
  const type = String(element['type']);
  const common = [
    ...(String(element['action_id'] ?? '').length > 255 ? ['action_id too long'] : []),
    ...(element['placeholder'] ? textFaults(element['placeholder'], 150, 'placeholder') : []),
    ...(options.length > (type === 'checkboxes' || type === 'radio_buttons' ? 10 : type === 'overflow' ? 5 : 100)
      ? [`${options.length} options`]
      : []),
    ...options.flatMap((option) =>
      isObject(option)
        ? [...textFaults(option['text'], 75, 'option'), ...(String(option['value']).length > 150 ? ['option value'] : [])]
        : ['option'],
    ),
  ];
  if (type !== 'button') return common;
  return [
    ...common,
    ...textFaults(element['text'], 75, 'button'),
    ...(String(element['value'] ?? '').length > 2_000 ? ['button value'] : []),
    ...(element['value'] === '' ? ['empty value'] : []),
  ];
};
