import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { SHORT } from '../terminal/scenario.ts';
import { inFolder, inShell, stillworth } from './command.ts';

/** A sound scenario that draws few futures: what is written is looked at here, not what is said. */
const MINE = `${SHORT.trimEnd()}\nchance: { futures: 256 }\n`;

/** A folder with it, as `mine.yaml`. */
const withScenario = (use: (folder: string) => void | Promise<void>): Promise<void> =>
  inFolder((folder) => {
    writeFileSync(join(folder, 'mine.yaml'), MINE);
    return use(folder);
  });

describe('what a run writes', () => {
  it('is one report beside the scenario, the same each time, and its own to replace', () =>
    withScenario((folder) => {
      expect(stillworth(folder, ['report', 'mine.yaml']).code).toBe(0);
      const first = readFileSync(join(folder, 'mine.html'));
      expect(stillworth(folder, ['report', 'mine.yaml']).code).toBe(0);
      expect(readFileSync(join(folder, 'mine.html')).equals(first)).toBe(true);
      expect(readdirSync(folder)).toEqual(['mine.html', 'mine.yaml']);
    }));

  it('is nothing with --json, which is the whole decision and nothing else', () =>
    withScenario((folder) => {
      const { code, out, err } = stillworth(folder, ['report', '--json', 'mine.yaml']);
      expect({ code, err }).toEqual({ code: 0, err: '' });
      expect(JSON.parse(out)).toMatchObject({ difference: expect.anything(), options: expect.any(Array) });
      expect(readdirSync(folder)).toEqual(['mine.yaml']);
    }));

  it('is never over a file of somebody else’s, unless told', () =>
    withScenario((folder) => {
      writeFileSync(join(folder, 'mine.html'), '<!doctype html><title>A recipe</title>');
      const refused = stillworth(folder, ['report', 'mine.yaml']);
      expect(refused).toMatchObject({ code: 2, out: '' });
      expect(refused.err).toContain('mine.html: already there, and not a report of ours');
      expect(readFileSync(join(folder, 'mine.html'), 'utf8')).toContain('A recipe');
      expect(stillworth(folder, ['report', 'mine.yaml', '--force']).code).toBe(0);
      expect(readFileSync(join(folder, 'mine.html'), 'utf8')).not.toContain('A recipe');
    }));

  it('is never over the scenario, a folder or a device, told or not', () =>
    withScenario((folder) => {
      mkdirSync(join(folder, 'kept'));
      for (const out of ['mine.yaml', './mine.yaml', 'kept', '/dev/null']) {
        const refused = stillworth(folder, ['report', 'mine.yaml', '--out', out, '--force']);
        expect({ out, code: refused.code, printed: refused.out }).toEqual({ out, code: 2, printed: '' });
      }
      expect(readFileSync(join(folder, 'mine.yaml'), 'utf8')).toBe(MINE);
    }));

  it('does not begin before the folder is there', () =>
    withScenario((folder) => {
      const refused = stillworth(folder, ['report', 'mine.yaml', '--out', 'gone/report.html']);
      expect(refused).toEqual({
        code: 2,
        out: '',
        err: 'gone/report.html: there is no such folder to write to\n',
      });
    }));

  it('is nothing when the scenario is wrong', () =>
    inFolder((folder) => {
      writeFileSync(join(folder, 'mine.yaml'), 'vehicle: [');
      const refused = stillworth(folder, ['report', 'mine.yaml']);
      expect(refused).toMatchObject({ code: 1, out: '' });
      expect(refused.err).toMatch(/^mine\.yaml:\d+:\d+:/);
      expect(readdirSync(folder)).toEqual(['mine.yaml']);
    }));

  it('is nothing when the disk takes only a part of it', () =>
    withScenario((folder) => {
      // A limit on the size of files stands in for a full disk: the write breaks off half-way.
      const cut = inShell(folder, 'ulimit -f 8; $STILLWORTH report mine.yaml');
      expect(cut).toEqual({
        code: 2,
        out: '',
        err: 'mine.html: the file would be larger than allowed here; nothing was written\n',
      });
      expect(readdirSync(folder)).toEqual(['mine.yaml']);
    }));

  it.each([
    ['SIGINT', 130],
    ['SIGTERM', 143],
  ])('is nothing when %s comes half-way through the writing', (signal, code) =>
    withScenario((folder) => {
      const interrupted = stillworth(folder, ['report', 'mine.yaml'], {
        node: ['--import', resolve('tests/golden/stopped-half-way.mjs')],
        environment: { STOP_BY: signal },
      });
      expect(interrupted).toEqual({ code, out: '', err: 'half of it is written\n' });
      expect(readdirSync(folder)).toEqual(['mine.yaml']);
    }),
  );
});

describe('what a run reads', () => {
  it('may come from standard input', () =>
    withScenario((folder) => {
      const input = readFileSync(join(folder, 'mine.yaml'));
      expect(stillworth(folder, ['check', '-'], { input }).code).toBe(0);
      expect(stillworth(folder, ['report', '-', '--out', 'a.html'], { input }).code).toBe(0);
      expect(stillworth(folder, ['report', 'mine.yaml', '--out', 'b.html']).code).toBe(0);
      const [a, b] = ['a.html', 'b.html'].map((name) => readFileSync(join(folder, name), 'utf8'));
      expect(a).toBe(b);
      const nowhere = stillworth(folder, ['report', '-'], { input });
      expect(nowhere).toMatchObject({ code: 2, out: '' });
      expect(nowhere.err).toContain('--out');
    }));

  it.each([
    ['nothing', 'gone.yaml', 'gone.yaml: there is no such file or folder'],
    ['a folder', '.', '.: that is a folder; name a file in it'],
  ])('cannot be %s', (_, file, words) =>
    inFolder((folder) => {
      for (const command of ['check', 'report', 'costs']) {
        expect(stillworth(folder, [command, file])).toEqual({ code: 2, out: '', err: `${words}\n` });
      }
    }),
  );

  it('is not followed without end', () =>
    inFolder((folder) => {
      const endless = stillworth(folder, ['check', '/dev/zero']);
      expect(endless).toMatchObject({ code: 1, out: '' });
    }));
});

describe('what a run prints', () => {
  it('ends quietly when nobody reads on', () =>
    withScenario((folder) => {
      const headed = inShell(folder, 'set -o pipefail; $STILLWORTH costs mine.yaml | head -n 1');
      expect({ code: headed.code, err: headed.err }).toEqual({ code: 0, err: '' });
    }));

  it('fails loudly when it cannot be written', () =>
    withScenario((folder) => {
      const full = inShell(folder, '$STILLWORTH costs mine.yaml > /dev/full');
      expect(full.code).toBe(2);
      expect(full.err).toContain('standard output: the disk is full');
    }));

  it('has no colour where nobody watches', () =>
    withScenario((folder) => {
      const { out } = stillworth(folder, ['report', 'mine.yaml'], { environment: { FORCE_COLOR: '1' } });
      expect(out).not.toContain('\u001b');
    }));
});
