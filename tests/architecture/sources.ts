import { readdirSync, readFileSync } from 'node:fs';
import type { Sources } from './ladder.ts';

/** Every source under a folder, by its path from the top of the project. */
export const sourcesUnder = (folder: string): Sources =>
  new Map(
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
      .map((entry) => `${entry.parentPath}/${entry.name}`.replaceAll('\\', '/'))
      .sort()
      .map((path) => [path, readFileSync(path, 'utf8')]),
  );
