/** Windings: as many strands as passes through the hole, wires that are wound together drawn together, and ends joined as told. */
import type { ComponentProps } from 'preact';
import { describe, expect, test } from 'vitest';
import { Winding } from '../../src/drawing/winding';
import { strandsOf } from '../../src/drawing/winding-strands';
import { file, sound } from './svg-file';

type Drawn = Omit<ComponentProps<typeof Winding>, 'label'>;

const wires = (...turns: readonly number[]) => turns.map((each) => ({ turns: each, done: each }));
const start = (wire: number) => ({ wire, end: 'start' }) as const;
const end = (wire: number) => ({ wire, end: 'end' }) as const;

const drawn: Readonly<Record<string, Drawn & { passes: number }>> = {
  'choke-12': { passes: 12, wires: wires(12), isChoke: true },
  'choke-17': { passes: 17, wires: wires(17), isChoke: true },
  'choke-pair': { passes: 16, wires: wires(8, 8), isChoke: true },
  'transformer-21': {
    passes: 21,
    wires: wires(21),
    isChoke: false,
    tapAt: 3,
    nodes: [
      { posts: [start(0)], words: 'shield' },
      { posts: [], words: 'coax centre' },
      { posts: [end(0)], words: 'wire' },
    ],
  },
  'transformer-4to1': {
    passes: 18,
    wires: wires(9, 9),
    isChoke: false,
    names: ['A', 'B'],
    nodes: [
      { posts: [start(0)], words: 'antenna' },
      { posts: [end(0), start(1)], words: 'shield' },
      { posts: [end(1)], words: 'antenna, coax centre' },
    ],
  },
  'transformer-9to1': {
    passes: 27,
    wires: wires(9, 9, 9),
    isChoke: false,
    names: ['A', 'B', 'C'],
    nodes: [
      { posts: [start(0)], words: 'shield' },
      { posts: [end(0), start(1)], words: 'coax centre' },
      { posts: [end(1), start(2)], words: '' },
      { posts: [end(2)], words: 'wire' },
    ],
  },
  'transformer-2to1': {
    passes: 17,
    wires: wires(7, 10),
    isChoke: false,
    nodes: [
      { posts: [start(0)], words: 'shield' },
      { posts: [end(0)], words: 'coax centre' },
      { posts: [start(1)], words: 'antenna' },
      { posts: [end(1)], words: 'antenna' },
    ],
  },
};

/** Each strand across the face has an edge in the colour of the ring. */
const passes = (svg: string): number => (svg.match(/stroke="var\(--tag\)"/g) ?? []).length;

test.each(Object.entries(drawn))(
  '%s has a strand for each pass of each wire',
  async (name, { passes: wound, ...props }) => {
    const svg = file(<Winding {...props} label={name} />);
    sound(svg);
    expect(passes(svg)).toBe(wound);
    await expect(svg).toMatchFileSnapshot(`svg/${name}.svg`);
  },
);

describe('strands', () => {
  const near = ([x, y]: readonly [number, number], [u, v]: readonly [number, number]) => Math.hypot(x - u, y - v);

  test('of wires wound as one lie nearer to each other than to those of the next turn', () => {
    const { strands } = strandsOf(wires(11, 11, 11), false);
    const at = (wire: number, turn: number) => strands.find((each) => each.wire === wire && each.turn === turn)!.inner;
    for (let turn = 1; turn < 11; turn++) {
      expect(near(at(0, turn), at(1, turn))).toBeLessThan(near(at(2, turn), at(0, turn + 1)) + 0.1);
      expect(near(at(1, turn), at(2, turn))).toBeLessThan(near(at(2, turn), at(0, turn + 1)) + 0.1);
    }
  });

  test('of a smaller winding are spread from the first turn of the larger to its last', () => {
    const { strands } = strandsOf(wires(5, 13), false);
    const few = strands.filter(({ wire }) => wire === 0);
    const many = strands.filter(({ wire }) => wire === 1);
    expect(near(few[0]!.outer, many[0]!.outer)).toBeLessThan(15);
    expect(near(few.at(-1)!.outer, many.at(-1)!.outer)).toBeLessThan(15);
  });

  test('that are still to come are told apart from those that are on', () => {
    const { strands } = strandsOf([{ turns: 8, done: 3 }], true);
    expect(strands.filter(({ isOn }) => isOn).map(({ turn }) => turn)).toEqual([1, 2, 3]);
  });
});

test('two ends that are joined have a line between them with a dot at each, and only one carries the word', () => {
  const { passes: _, ...props } = drawn['transformer-9to1']!;
  const svg = file(<Winding {...props} label="nine" />);
  expect(svg.match(/class="f"/g)).toHaveLength(4);
  expect(svg.match(/coax centre/g)).toHaveLength(1);
});
