/** The library's floors, from the ground up, as the reader of the reference meets them. */
export const floors = [
  { folder: 'errors', label: 'Errors and cautions' },
  { folder: 'time', label: 'Time' },
  { folder: 'course', label: 'Course' },
  { folder: 'splits', label: 'Splits' },
  { folder: 'sets', label: 'Sets' },
  { folder: 'projection', label: 'Projection' },
  { folder: 'plan', label: 'Plan' },
  { folder: 'tables', label: 'Tables (backhalf/tables)' },
] as const;

/** The floor of a source file: that of the folder it lies in, or the ground floor. */
export function floorOf(sourceFile: string): (typeof floors)[number] {
  const folder = /src\/([^/]+)\//.exec(sourceFile)?.[1];
  return floors.find((floor) => floor.folder === folder) ?? floors[0];
}
