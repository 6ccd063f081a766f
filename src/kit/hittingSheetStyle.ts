/** Black on white, of the system's own letters: the sheet is for paper and goes through any printer. */
export const hittingSheetStyle = `
:root { color-scheme: light; }
body { margin: 0 auto; padding: 16px; max-width: 760px; background: #fff; color: #000; font: 15px/1.4 system-ui, sans-serif; }
h1 { margin: 0 0 4px; font: 600 24px/1.2 Georgia, serif; }
h2 { margin: 20px 0 4px; padding-top: 6px; border-top: 1px solid #000; font-size: 17px; }
h3 { margin: 16px 0 4px; font-size: 15px; }
p { margin: 0 0 8px; }
.beside { display: grid; grid-template-columns: repeat(auto-fit, minmax(300px, 1fr)); gap: 0 24px; }
.boxes { margin: 0; padding: 0; list-style: none; }
.boxes li { display: flex; gap: 8px; align-items: baseline; }
.lines { margin: 0; }
.lines div { display: flex; gap: 8px; padding: 4px 0 2px; border-bottom: 1px solid #767676; }
.lines dt { flex: none; }
.lines dd { flex: auto; margin: 0; }
.warm-up { display: flex; flex-wrap: wrap; gap: 12px; }
input { flex: none; appearance: none; width: 17px; height: 17px; margin: 0; border: 1.5px solid #000; border-radius: 0; background: #fff; vertical-align: -3px; }
input:checked { background: linear-gradient(45deg, transparent 44%, #000 44% 56%, transparent 56%), linear-gradient(-45deg, transparent 44%, #000 44% 56%, transparent 56%); }
input:focus-visible { outline: 3px solid #22508a; outline-offset: 2px; }
.rules { margin: 0 0 8px; padding: 0 0 0 18px; }
.halves { display: grid; grid-template-columns: repeat(auto-fit, minmax(320px, 1fr)); gap: 8px 20px; align-items: start; }
table { width: calc(100% - 2px); margin: 0 1px; border-collapse: collapse; font-size: 17px; }
th, td { padding: 2px 6px; border: 1px solid #767676; text-align: left; vertical-align: middle; height: 26px; }
thead th { border-color: #000; font-size: 14px; font-weight: 600; }
tbody { border-bottom: 2px solid #000; }
td:nth-last-child(4), th[scope=rowgroup] { width: 2.4em; font-variant-numeric: tabular-nums; }
.change td { border-top: 1.5px solid #000; }
.blank { display: inline-block; width: 5em; border-bottom: 1px solid #767676; }
.tick { width: 2em; text-align: center; }
td:nth-last-child(3) { width: 36%; }
td:last-child { width: 26%; }
.notes { min-height: 120px; }
@page { margin: 10mm 12mm; }
@media print {
  body { padding: 0; max-width: none; font-size: 9pt; line-height: 1.25; }
  h1 { font-size: 15pt; }
  h2 { margin-top: 8px; padding-top: 3px; font-size: 11pt; }
  h3 { margin-top: 8px; font-size: 10pt; }
  p, .rules { margin-bottom: 5px; }
  .beside, .halves { grid-template-columns: 1fr 1fr; }
  .halves:has(> :only-child) { grid-template-columns: 1fr; }
  .boxes input, .warm-up input { width: 13px; height: 13px; }
  .notes { min-height: 20px; }
  .rules { font-size: 9.5pt; }
  table { font-size: 12pt; }
  th, td { height: 5.7mm; padding: 0 5px; }
  thead th { font-size: 9pt; }
  thead { display: table-header-group; }
  .order, tbody, tr, .boxes li, .lines div, .notes { break-inside: avoid; }
  h2, h3 { break-after: avoid; }
}
`;
