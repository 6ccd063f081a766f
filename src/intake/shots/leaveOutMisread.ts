/** What to do about a misread cell: raw files are never edited. */
export const leaveOutMisread = {
  cure: 'leave the shot out: name it under "exclusions" in report.md, with "misread" as its rule; the file stays as it was exported',
  cureAtDesk: 'leave the shot out, under “Shots”; the file stays as it was exported',
};
