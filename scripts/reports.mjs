/**
 * Renders every demo scenario with the built command. `npm run reports` writes reports/ anew; with `--compare` the
 * reports go to a passing folder and must be the committed ones, byte for byte.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const KEPT = 'reports';
/** 2026-11-25, the day for scenarios that state none: a demo must not change with the calendar. */
const DEMO_DAY = '1795564800';

/** @param {string} folder @param {string} ending */
const named = (folder, ending) =>
  (existsSync(folder) ? readdirSync(folder) : []).filter((name) => name.endsWith(ending)).sort();

/** @param {string} folder where the reports go */
const render = (folder) => {
  for (const name of named('scenarios', '.yaml')) {
    const out = join(folder, name.replace(/\.yaml$/, '.html'));
    const args = ['dist/stillworth.js', 'report', join('scenarios', name), '--out', out];
    const run = spawnSync(process.execPath, args, {
      encoding: 'utf8',
      env: { ...process.env, SOURCE_DATE_EPOCH: DEMO_DAY },
    });
    if (run.status !== 0) throw new Error(`${name}: ${run.stderr}`);
  }
};

/** @returns {string[]} what differs, in words */
const differences = () => {
  const made = mkdtempSync(join(tmpdir(), 'stillworth-reports-'));
  try {
    render(made);
    const names = [...new Set([...named(KEPT, '.html'), ...named(made, '.html')])].sort();
    return names.flatMap((name) => {
      const has = [KEPT, made].map((folder) => named(folder, '.html').includes(name));
      if (!has[0]) return [`${KEPT}/${name} is not there`];
      if (!has[1]) return [`${KEPT}/${name} has no scenario`];
      const same = readFileSync(join(KEPT, name)).equals(readFileSync(join(made, name)));
      return same ? [] : [`${KEPT}/${name} is not what its scenario gives now`];
    });
  } finally {
    rmSync(made, { recursive: true, force: true });
  }
};

if (process.argv.includes('--compare')) {
  const found = differences();
  if (found.length > 0) {
    console.error(`${found.join('\n')}\nLook at the change, then: npm run reports`);
    process.exit(1);
  }
} else {
  mkdirSync(KEPT, { recursive: true });
  render(KEPT);
}
