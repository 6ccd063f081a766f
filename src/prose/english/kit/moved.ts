/** Before the link to where a report stands by now. */
export const movedWords = 'This report has another address now:';
