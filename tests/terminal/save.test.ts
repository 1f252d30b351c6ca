import { describe, expect, it } from 'vitest';
import { type Saving, save } from '../../src/terminal/save.ts';
import { type Given, world } from './world.ts';

const saving: Saving = {
  path: 'out.html',
  text: 'new',
  from: 'mine.yaml',
  force: false,
  isOurs: (head) => head.startsWith('ours'),
};

const tried = async (given: Given, change: Partial<Saving> = {}) => {
  const made = world({ ...given, files: { 'mine.yaml': 'a: 1', ...given.files } });
  const code = await save({ ...saving, ...change }, made.effects);
  return { code, told: made.told, file: made.files.get(change.path ?? saving.path) };
};

describe('saving', () => {
  it('writes where nothing stands', async () => {
    expect(await tried({})).toEqual({ code: 0, told: '', file: 'new' });
  });

  it('replaces what is ours', async () => {
    expect(await tried({ files: { 'out.html': 'ours, old' } })).toEqual({ code: 0, told: '', file: 'new' });
  });

  it('leaves alone what is not ours, unless told', async () => {
    const files = { 'out.html': 'theirs' };
    expect(await tried({ files })).toEqual({
      code: 2,
      told: 'out.html: already there, and not a report of ours; name another file with --out, or say --force\n',
      file: 'theirs',
    });
    expect(await tried({ files }, { force: true })).toEqual({ code: 0, told: '', file: 'new' });
  });

  it('replaces nothing where nothing could be ours', async () => {
    expect(await tried({ files: { 'out.html': 'ours, old' } }, { isOurs: null })).toEqual({
      code: 2,
      told: 'out.html: already there; name another file with --out, or say --force\n',
      file: 'ours, old',
    });
  });

  it.each([
    [
      'the scenario itself',
      { path: 'mine.yaml' },
      {},
      'that is the scenario itself; name another file with --out',
    ],
    ['a folder', {}, { files: { 'out.html': null } }, 'that is a folder; name a file in it'],
    ['a device', {}, { files: { 'out.html': undefined } }, 'not an ordinary file; nothing was written'],
    ['a missing folder', {}, { writeFails: 'ENOENT' }, 'there is no such folder to write to'],
    ['a place that is forbidden', {}, { writeFails: 'EACCES' }, 'permission denied'],
    ['a full disk', {}, { writeFails: 'ENOSPC' }, 'the disk is full; nothing was written'],
    ['a failure nobody thought of', {}, { writeFails: 'ESTALE' }, 'the system says ESTALE'],
  ] as const)('never writes over %s, told or not', async (_, change, given, why) => {
    const path = 'path' in change ? change.path : 'out.html';
    const { code, told, file } = await tried(given, { ...change, force: true });
    expect({ code, told }).toEqual({ code: 2, told: `${path}: ${why}\n` });
    expect(file).not.toBe('new');
  });

  it('does not call a fault of its own the file’s', async () => {
    const { effects } = world();
    const broken = {
      ...effects,
      files: { ...effects.files, writeWhole: () => Promise.reject(new TypeError('no')) },
    };
    await expect(save(saving, broken)).rejects.toThrow(TypeError);
  });
});
