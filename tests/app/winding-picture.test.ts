import { describe, expect, test } from 'vitest';
import { windingPictures } from '../../src/app/jobs/winding-picture';
import type { Say } from '../../src/app/say';
import type { Answers } from '../../src/design/answers';
import { makePlan } from '../../src/plan/make-plan';
import { builds } from '../../src/words/en/devices';
import { createFormat } from '../../src/words/format';
import { render } from '../../src/words/message';

const format = createFormat('metric');
const say: Say = Object.assign((message: Parameters<Say>[0], data = {}) => render(message, data, format), { format });

const base = { bands: ['40m', '20m'], shackEnd: 'wide-tuner' } satisfies Partial<Answers>;

/** The transformer of an antenna and how it is drawn. */
function transformerOf(answers: Partial<Answers> & Pick<Answers, 'radiator' | 'fedAt'>) {
  const item = makePlan({ ...base, ...answers }).chain.find(({ device }) => device === 'transformer')!;
  const [picture] = windingPictures(item, say);
  return { build: item.build!, picture: picture! };
}

describe('the drawing of a transformer and the text that tells how to make it say the same', () => {
  test('9:1: three wires lie together, each passing the hole a third of the turns in all', () => {
    const { build, picture } = transformerOf({ radiator: 'sloper', fedAt: 'end', lengthChoice: 'non-resonant' });
    expect(picture.turns).toHaveLength(3);
    expect(new Set(picture.turns).size).toBe(1);
    expect(3 * picture.turns[0]!).toBe(build.secondaryTurns);
    expect(build.text).toContain('3 wires wound side by side');
    expect(build.text).toContain('Shield to the start of A, coax centre to the joint of A and B, wire to the end of C');
    expect(picture.nodes).toEqual([
      { posts: [{ wire: 0, end: 'start' }], words: 'shield' },
      {
        posts: [
          { wire: 0, end: 'end' },
          { wire: 1, end: 'start' },
        ],
        words: 'coax centre',
      },
      {
        posts: [
          { wire: 1, end: 'end' },
          { wire: 2, end: 'start' },
        ],
        words: '',
      },
      { posts: [{ wire: 2, end: 'end' }], words: 'wire' },
    ]);
  });

  test('4:1 of an off-centre-fed wire: two wires lie together, the shield at their joint', () => {
    const { build, picture } = transformerOf({ radiator: 'inverted-v', fedAt: 'off-centre' });
    expect(picture.turns).toEqual([build.turns, build.turns]);
    expect(build.text).toContain('Join the end of A to the start of B: the shield goes there');
    const joint = picture.nodes.find(({ posts }) => posts.length === 2);
    expect(joint).toEqual({
      posts: [
        { wire: 0, end: 'end' },
        { wire: 1, end: 'start' },
      ],
      words: 'shield',
    });
  });

  test('49:1: one wire, tapped', () => {
    const { build, picture } = transformerOf({ radiator: 'inverted-v', fedAt: 'end' });
    expect(picture.turns).toEqual([build.secondaryTurns]);
    expect(picture.tapAt).toBe(build.turns);
    expect(picture.nodes.map(({ words }) => words)).toEqual(['shield', 'coax centre', 'wire']);
  });

  test('2:1 of a loop: two windings that touch nowhere, joined to nothing of each other', () => {
    const { build, picture } = transformerOf({ bands: ['40m'], radiator: 'loop', fedAt: 'side-middle' });
    expect(picture.turns).toEqual([build.turns, build.secondaryTurns]);
    expect(picture.nodes.every(({ posts }) => posts.length === 1)).toBe(true);
  });

  test('turned round, for an antenna of fewer ohms than the coax: the coax goes to the far end', () => {
    const data = { strands: 2, strandTurns: 6, core: 'ft240-43', count: 1, conductor: 'ptfe-awg22', pieceM: 0.7 };
    const text = render(builds['transformer-side-by-side']!, { ...data, isTurned: true }, format);
    expect(text).toContain('wire to the joint of A and B, coax centre to the end of B');
    expect(text).toContain('12 turns in all');
  });
});
