// Papers and jobs that go by a number: "invoice no 60231", "order no. 8841".

export const paper = /^(inv|invoice|po|docket|receipt|statement|order|quote|job|ref|account|acct|booking)$/;
