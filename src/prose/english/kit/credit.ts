/** "example.test/reports/three-balls, version 1.0.1 of 3 May 2026.": where a report stands, and as it was on which day. */
export function addressAndVersion(where: string, version: string, day: string | null): string {
  return `${where}, version ${version}${day === null ? '' : ` of ${day}`}.`;
}
