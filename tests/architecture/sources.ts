import { readdirSync, readFileSync } from 'node:fs';
import type { Sources } from './ladder.ts';

/** Every source and file of data under a folder, by its path from the top of the project. */
export const sourcesUnder = (folder: string): Sources =>
  new Map(
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && /\.(?:ts|json)$/.test(entry.name))
      .map((entry) => `${entry.parentPath}/${entry.name}`.replaceAll('\\', '/'))
      .sort()
      .map((path) => [path, readFileSync(path, 'utf8')]),
  );
