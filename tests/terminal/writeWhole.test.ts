import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { nodeFiles } from '../../src/terminal/node/files.ts';
import { writeWhole } from '../../src/terminal/node/writeWhole.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'stillworth-test-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const empty = (async function* () {})();
const at = (name: string): string => join(folder, name);

describe('writing whole or not at all', () => {
  it('leaves the file and nothing else', async () => {
    await writeWhole(at('a.txt'), 'whole', false);
    expect(readFileSync(at('a.txt'), 'utf8')).toBe('whole');
    expect(readdirSync(folder)).toEqual(['a.txt']);
    expect(statSync(at('a.txt')).nlink).toBe(1);
  });

  it('replaces when told', async () => {
    writeFileSync(at('a.txt'), 'old and longer');
    await writeWhole(at('a.txt'), 'new', true);
    expect(readFileSync(at('a.txt'), 'utf8')).toBe('new');
    expect(readdirSync(folder)).toEqual(['a.txt']);
  });

  it('fails where something stands, and leaves it as it was', async () => {
    writeFileSync(at('a.txt'), 'theirs');
    await expect(writeWhole(at('a.txt'), 'ours', false)).rejects.toMatchObject({ code: 'EEXIST' });
    expect(readFileSync(at('a.txt'), 'utf8')).toBe('theirs');
    expect(readdirSync(folder)).toEqual(['a.txt']);
  });

  it('cleans up when the last step fails', async () => {
    mkdirSync(at('folder'));
    writeFileSync(at('folder/inside'), '');
    await expect(writeWhole(at('folder'), 'text', true)).rejects.toMatchObject({ syscall: 'rename' });
    expect(readdirSync(folder)).toEqual(['folder']);
  });

  it('is not kept from writing by what a killed run of the same number left', async () => {
    const left = ['', '-2', '-3'].map((n) => `.stillworth-${process.pid}${n}.part`);
    for (const name of left) writeFileSync(at(name), 'half a re');
    mkdirSync(at(`.stillworth-${process.pid}-4.part`));
    await writeWhole(at('a.txt'), 'whole', false);
    await writeWhole(at('a.txt'), 'again', true);
    expect(readFileSync(at('a.txt'), 'utf8')).toBe('again');
    // What is not ours stays: another run, on another machine, may be writing it.
    for (const name of left) expect(readFileSync(at(name), 'utf8')).toBe('half a re');
    expect(readdirSync(folder).length).toBe(left.length + 2);
  });

  it('stops listening for signals when it is done', async () => {
    const before = process.listenerCount('SIGINT');
    await writeWhole(at('a.txt'), 'whole', false);
    expect(process.listenerCount('SIGINT')).toBe(before);
  });
});

describe('the files of this machine', () => {
  const files = nodeFiles(() => empty);

  it('tells what stands at a path', async () => {
    writeFileSync(at('file'), '');
    symlinkSync(at('file'), at('link'));
    symlinkSync(at('nowhere'), at('dangling'));
    expect(await files.standing(at('nothing'))).toBe('nothing');
    expect(await files.standing(at('file'))).toBe('file');
    expect(await files.standing(at('link'))).toBe('file');
    expect(await files.standing(folder)).toBe('folder');
    expect(await files.standing('/dev/null')).toBe('other');
    await expect(files.standing(at('dangling'))).rejects.toMatchObject({ code: 'ENOENT' });
  });

  it('writes through a link and keeps it', async () => {
    writeFileSync(at('file'), 'old');
    symlinkSync(at('file'), at('link'));
    await files.writeWhole(at('link'), 'new', true);
    expect(readFileSync(at('file'), 'utf8')).toBe('new');
    expect(await files.same(at('file'), at('link'))).toBe(true);
  });

  it('reads no more than asked, of a file and of its input', async () => {
    writeFileSync(at('long'), 'x'.repeat(200_000));
    expect(await files.read(at('long'), 70_000)).toHaveLength(70_000);
    const input = (async function* () {
      for (;;) yield Buffer.alloc(1000);
    })();
    expect(await nodeFiles(() => input).readInput(2500)).toHaveLength(2500);
  });

  it('keeps to its owner what only its owner could read', async () => {
    writeFileSync(at('mine'), 'old');
    chmodSync(at('mine'), 0o600);
    await files.writeWhole(at('mine'), 'new', true);
    expect(statSync(at('mine')).mode & 0o777).toBe(0o600);
  });
});
