// Words for pieces that are carried somewhere: "take the 12 corsages over at 3" orders none, and none is left over.

export const carryWord =
  'take|takes|taking|took|bring|brings|bringing|brought|run|running|pop|popping|popped|send|sending|sent|drive|driving|drove|carry|carrying|carried|drop|drops|dropping|dropped|deliver|delivering|courier|couriering|ship|shipping|get|getting|hand|handing|pass|swing|swinging|ferry|ferrying|cart|carting|lug|lugging|move|moving|moved|walk|walking|whip|whipping|zip|nip|shuttle|haul|hauling|fetch';
