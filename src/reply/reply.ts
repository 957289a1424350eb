// A reply without a channel: blocks of spans tagged by meaning. Hosts turn meanings into their own marks; nothing here knows Slack or a terminal.

export type Meaning =
  | 'plain'
  | 'strong' // the figure or word the reply is about
  | 'money'
  | 'date'
  | 'piece'
  | 'count'
  | 'assumed' // not said by anyone: assumed, or common practice
  | 'problem'
  | 'quoted'; // a person's own words, shown inert

/** A thread, or one message in it, that a host may lead to. */
export interface Place {
  readonly workspace: string;
  readonly channel: string;
  readonly thread: string;
  readonly message?: string; // the host's id of it
}

export interface Span {
  readonly text: string;
  readonly meaning: Meaning;
  readonly link?: Place;
}
export type Line = readonly Span[];

export interface Column {
  readonly title: string;
  readonly align: 'left' | 'right';
}

/** What a button or a typed choice sends back. `value` is an id to look up again, never a figure to trust. */
export interface Action {
  readonly label: string;
  readonly action:
    | 'choose'
    | 'show working'
    | 'for the client'
    | 'undo'
    | 'made all'
    | 'made some'
    | 'calendar file'
    | 'calendar picture'
    | 'buying list'
    | 'move date'
    | 'set price'
    | 'set up';
  readonly value: string;
  readonly style?: 'main' | 'careful';
}

export type Block =
  | { readonly block: 'answer'; readonly line: Line } // the first line
  | { readonly block: 'line'; readonly line: Line }
  | { readonly block: 'list'; readonly title?: Line; readonly items: readonly Line[] }
  | { readonly block: 'table'; readonly caption: string; readonly columns: readonly Column[]; readonly rows: readonly (readonly Line[])[] }
  | { readonly block: 'assumed'; readonly line: Line } // what was taken for granted, in small
  | { readonly block: 'problem'; readonly line: Line }
  | { readonly block: 'caution'; readonly line: Line }
  | { readonly block: 'next'; readonly line: Line } // at most one next step
  | { readonly block: 'actions'; readonly actions: readonly Action[] }
  | { readonly block: 'file'; readonly file: FileWanted };

/** A file the host should ask for and attach: the bytes are made when it is sent, from the thread as it then is. */
export interface FileWanted {
  readonly kind: 'calendar' | 'picture' | 'buying list' | 'sheets' | 'season' | 'export';
  readonly name: string;
  readonly alt: string; // says all that the file shows
  readonly all?: true; // over all open events, not this one alone
  readonly of?: Place; // the thread it shows, where that is not the one it is posted in
}

export interface Reply {
  readonly blocks: readonly Block[];
}
