export interface Dropped {
  path: string;
  file: File;
}

const fileOf = (entry: FileSystemFileEntry) => new Promise<File>((resolve, reject) => entry.file(resolve, reject));

/** A folder's entries come in lots; an empty lot is the end. */
async function entriesOf(folder: FileSystemDirectoryEntry): Promise<FileSystemEntry[]> {
  const reader = folder.createReader();
  const all: FileSystemEntry[] = [];
  for (;;) {
    const lot = await new Promise<FileSystemEntry[]>((resolve, reject) => reader.readEntries(resolve, reject));
    if (lot.length === 0) return all;
    all.push(...lot);
  }
}

async function walk(entry: FileSystemEntry, before: string, found: Dropped[]) {
  const path = before + entry.name;
  if (entry.isFile) found.push({ path, file: await fileOf(entry as FileSystemFileEntry) });
  else for (const inner of await entriesOf(entry as FileSystemDirectoryEntry)) await walk(inner, `${path}/`, found);
}

/** Everything that was dropped, folders with all below them. */
export async function droppedFiles(data: DataTransfer): Promise<Dropped[]> {
  // Taken before anything is awaited: after that the list is empty.
  const entries = [...data.items].map((i) => i.webkitGetAsEntry()).filter((e) => e !== null);
  const found: Dropped[] = [];
  if (entries.length === 0) for (const file of data.files) found.push({ path: file.name, file });
  for (const entry of entries) await walk(entry, '', found);
  return withoutShared(found);
}

export const chosenFiles = (files: FileList): Dropped[] =>
  withoutShared([...files].map((file) => ({ path: file.webkitRelativePath || file.name, file })));

/** A folder that was dropped alone stands for what lies in it: its sub-folders are the projects, not it. */
function withoutShared(files: Dropped[]): Dropped[] {
  const tops = new Set(files.map((f) => (f.path.includes('/') ? f.path.slice(0, f.path.indexOf('/') + 1) : '')));
  const [top] = tops;
  return tops.size === 1 && top ? files.map((f) => ({ ...f, path: f.path.slice(top.length) })) : files;
}
