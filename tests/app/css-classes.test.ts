import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { SourceFile } from '../architecture-rules';
import { leaks, otherWays, unmet } from './class-rules';

const files: SourceFile[] = ['src/app', 'src/drawing'].flatMap((folder) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(css|tsx?)$/.test(name))
    .map((name) => `${folder}/${name.replaceAll('\\', '/')}`)
    .map((path) => ({ path, text: readFileSync(path, 'utf8') })),
);

const cutSheet = 'src/app/screens/cut/cut.css';
const sheet = (text: string, path = cutSheet): SourceFile => ({ path, text });
const screen = (text: string, name = 'cut'): SourceFile => ({ path: `src/app/screens/${name}/${name}.tsx`, text });
const own = screen('<p class="piece" />');

describe('a rule of a screen needs a class of that screen', () => {
  test.each<[string, SourceFile[]]>([
    ['a class of another screen', [sheet('.piece {}'), own, screen('<p class="piece" />', 'wind')]],
    ['one that another screen may have', [sheet('.piece {}'), screen("<p class={a ? 'piece' : 'b'} />", 'wind')]],
    ['one put together', [sheet('.piece-now {}'), screen(`<p class={\`piece-\${a}\`} />`, 'wind')]],
    ['one in a constant', [sheet('.piece {}'), screen("const a = 'piece'; <p class={a} />", 'wind')]],
    ['a class of another sheet', [sheet('.piece {}'), sheet('.a .piece {}', 'src/app/screens/wind/wind.css')]],
    ['a shared class', [sheet('.rows > li {}'), sheet('.rows {}', 'src/app/styles/parts.css'), own]],
    ['no class', [sheet('table {}'), own]],
    ['one in a media query', [sheet('@media print { .piece b {} }'), screen('<p class="piece" />', 'wind')]],
    ['one of a list', [sheet('.own, .piece {}'), screen('<p class="piece" />', 'wind')]],
    ['a class as one of two ways', [sheet(':is(.own, main) p {}'), screen('<p class="own" />')]],
    ['a class that is not there', [sheet('main:not(.own) {}'), screen('<p class="own" />')]],
  ])('found: %s', (_title, samples) => {
    expect(leaks(samples)).toHaveLength(1);
  });

  test.each<[string, SourceFile[]]>([
    ['a class of its own', [sheet('.piece {}'), own, screen('<p class="pieces" />', 'wind')]],
    ['led by its own', [sheet('.piece .rows {}'), sheet('.rows {}', 'src/app/styles/parts.css'), own]],
    ['about its own', [sheet('.rows > .piece {}'), sheet('.rows {}', 'src/app/styles/parts.css'), own]],
    ['asked for there', [sheet('.piece {}'), screen('import \'../cut/cut.css\'; <p class="piece" />', 'wind')]],
    ['the word elsewhere', [sheet('.piece {}'), screen('<A kind="piece" b={c === \'piece\'} />', 'wind')]],
    ['only compared', [sheet('.piece {}'), screen("<p class={a === 'piece' ? 'b' : 'c'} />", 'wind')]],
    ['a shared sheet', [sheet('.piece {}', 'src/app/jobs/jobs.css'), screen('<p class="piece" />', 'wind')]],
  ])('passes: %s', (_title, samples) => {
    expect(leaks(samples)).toEqual([]);
  });

  test('on every screen', () => {
    expect(files.filter(({ path }) => path.endsWith('.css')).length).toBeGreaterThan(20);
    expect(leaks(files)).toEqual([]);
  });
});

describe('a rule needs an element that it can hold for', () => {
  test.each<[string, SourceFile[]]>([
    ['a class that nothing has', [sheet('.piece .gone {}'), own]],
    ['one within brackets', [sheet('.piece:has(.gone) {}'), own]],
    ['two that meet on no element', [sheet('.piece.last {}'), own, screen('<p class="last" />')]],
    ['a word that is only compared', [sheet('.piece {}'), screen("<p class={a === 'piece' ? 'b' : 'c'} />")]],
  ])('found: %s', (_title, samples) => {
    expect(unmet(samples)).toHaveLength(1);
  });

  test.each<[string, SourceFile[]]>([
    ['given by name', [sheet('.piece b {}'), own]],
    ['given at times', [sheet('.piece.last {}'), screen("<p class={a ? 'piece last' : 'piece'} />")]],
    ['put together', [sheet('.piece-now.piece {}'), screen(`<p class={\`piece piece-\${a}\`} />`)]],
    ['handed over', [sheet('.d.site {}'), screen('<A kind="site" />'), screen(`<p class={\`d \${kind}\`} />`, 'a')]],
  ])('passes: %s', (_title, samples) => {
    expect(unmet(samples)).toEqual([]);
  });

  test('in every sheet', () => {
    expect(unmet(files)).toEqual([]);
  });

  test('and classes are given in no other way', () => {
    expect(otherWays([screen("a.classList.add('b')")])).toHaveLength(1);
    expect(otherWays(files)).toEqual([]);
  });
});
