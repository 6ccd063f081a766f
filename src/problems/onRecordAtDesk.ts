/** Where the desk has what "npm run record" does; follows a verb of its own: "Then ...". */
export const onRecordAtDesk = 'put it on record: the button stands at the end of the first page of the desk';
