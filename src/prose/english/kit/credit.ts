/** "example.test/reports/three-balls, version 1.0.1 of the report. Straightface 1.0.0." */
export function addressAndVersion(where: string, ofReport: string, ofTool: string): string {
  return `${where}, version ${ofReport} of the report. Straightface ${ofTool}.`;
}
