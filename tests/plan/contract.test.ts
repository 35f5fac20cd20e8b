/**
 * What every plan holds, whatever the answers: the schema, finite numbers, a chain in order, refusals with ways out, cautions before the step
 * they belong to, and texts fit to be read.
 */
import { describe, expect, it, vi } from 'vitest';
import { sources } from '../../src/catalog/sources';
import type { Answers } from '../../src/design/answers';
import { makePlan } from '../../src/plan/make-plan';
import { Plan } from '../../src/plan/plan-schema';
import { mandatoryCautions } from '../advice/mandatory-cautions';
import { everyAnswer, everyImpossibleFeedPoint, planFor, tellTexts, tellValues } from './every-answer';

// Thousands of plans, on any machine.
vi.setConfig({ testTimeout: 120_000 });

const all = everyAnswer();
const plans: readonly (readonly [answers: Answers, plan: Plan])[] = all.map((answers) => [answers, planFor(answers)]);

/** The faults of all plans, told by the first answers that show each. */
function faults(find: (plan: Plan, answers: Answers) => readonly string[]): readonly string[] {
  const told = new Map<string, string>();
  for (const [answers, plan] of plans) {
    for (const fault of find(plan, answers)) if (!told.has(fault)) told.set(fault, JSON.stringify(answers));
  }
  return [...told].map(([fault, answers]) => `${fault}  ${answers}`);
}

describe('every plan', () => {
  it('is made for thousands of combinations', () => {
    expect(all.length).toBe(4320);
    expect(new Set(plans.map(([, plan]) => plan.system)).size).toBe(15);
  });

  it('is what the schema says, no key more and none missing', () => {
    const wrong = faults((plan) => {
      const read = Plan.safeParse(plan);
      return read.success ? [] : read.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`);
    });
    expect(wrong).toEqual([]);
  });

  it('holds only finite numbers, and null for what is not known', () => {
    const wrong = faults((plan) => {
      const found: string[] = [];
      tellValues(plan, (path, value) => {
        const failed = value === undefined || (typeof value === 'number' && !Number.isFinite(value));
        if (failed) found.push(`${path} is ${value}`);
      });
      return found;
    });
    expect(wrong).toEqual([]);
  });
});

describe('the chain', () => {
  it('starts at the antenna, never goes back, and ends in the radio', () => {
    const wrong = faults(({ chain }) => {
      const places = chain.map(({ distanceM }) => distanceM ?? -1);
      const inOrder = places.every((place, i) => place >= (places[i - 1] ?? 0) - 1e-9);
      const last = chain.at(-1)?.device;
      return [...(inOrder ? [] : ['goes back']), ...(last === 'radio' ? [] : [`ends in ${last}`])];
    });
    expect(wrong).toEqual([]);
  });

  it('has no two pieces of line that overlap, and none that runs past the radio', () => {
    const wrong = faults(({ chain }) =>
      chain.flatMap(({ device, distanceM, lengthM }, i) => {
        if (device !== 'line' || distanceM === null || lengthM === null) return [];
        const next = chain.slice(i + 1).find((item) => item.distanceM !== null)?.distanceM ?? 0;
        return distanceM + lengthM > next + 0.03 ? ['a piece of line passes the next device'] : [];
      }),
    );
    expect(wrong).toEqual([]);
  });

  it('gives a transformer its ratio, kind and ports, and a choke its ohms and their band', () => {
    const wrong = faults(({ chain }) =>
      chain.flatMap(({ device, ratio, kind, ports, minimumOhm, minimumOhmBand }) => {
        if (device === 'transformer' && (ratio === null || kind === null || ports === null))
          return ['bare transformer'];
        if (device === 'choke' && (minimumOhm === null || minimumOhmBand === null)) return ['choke without ohms'];
        return [];
      }),
    );
    expect(wrong).toEqual([]);
  });

  it('holds a choke before the building in every plan on coax, before the radio when portable', () => {
    const wrong = faults(({ chain }, { feedLine, station }) => {
      if (feedLine !== 'rg-58' && feedLine !== 'rg-6') return [];
      const at = station === 'portable' ? 'radio' : 'building-entry';
      return chain.some((item) => item.device === 'choke' && item.at === at) ? [] : [`no choke at ${at}`];
    });
    // A line of 2 m is so short that the choke at the antenna is the one before the radio; the chain says so.
    expect(wrong.filter((fault) => !fault.includes('"feedLineLengthM":2'))).toEqual([]);
  });

  it('says why for every link, and what to buy', () => {
    const wrong = faults(({ chain }) =>
      chain.flatMap(({ device, why, buy, name }) =>
        why.length > 0 && buy !== '' && name !== '' ? [] : [`${device} says nothing`],
      ),
    );
    expect(wrong).toEqual([]);
  });

  it('arrests lightning before the coax enters a home, and only there', () => {
    const wrong = faults(({ chain }, { station, feedLine }) => {
      const has = chain.some(({ device }) => device === 'arrester');
      const wanted = station === 'home' && feedLine !== 'none';
      return has === wanted ? [] : [`arrester ${has}`];
    });
    expect(wrong).toEqual([]);
  });
});

describe('refusals and warnings', () => {
  it('offer at least two ways out of every stop, and one of every other', () => {
    const wrong = faults(({ warnings }) =>
      warnings
        .filter(({ severity, waysOut }) => waysOut.length < (severity === 'stop' ? 2 : 1))
        .map(({ id, severity }) => `${severity} ${id}`),
    );
    expect(wrong).toEqual([]);
  });

  it('tell no two warnings in the same words', () => {
    const wrong = faults(({ warnings }) => {
      const texts = warnings.map(({ text }) => text);
      return texts.filter((text, i) => texts.indexOf(text) !== i).map((text) => `twice: ${text}`);
    });
    // Two parts on hand of one kind may earn the same sentence.
    expect(wrong.filter((fault) => !fault.includes('"onHand"'))).toEqual([]);
  });

  it('refuse a feed point that the radiator does not have, and say which it has', () => {
    const refused = everyImpossibleFeedPoint();
    expect(refused.length).toBe(36);
    for (const answers of refused) {
      const plan = makePlan(answers);
      expect(Plan.safeParse(plan).success).toBe(true);
      expect(plan.chain).toEqual([]);
      const [stop] = plan.warnings;
      expect(stop?.severity).toBe('stop');
      expect(stop?.waysOut.length).toBeGreaterThanOrEqual(2);
    }
  });
});

describe('cautions', () => {
  it('are all there in every plan with an outdoor step', () => {
    const wrong = faults(({ steps, cautions }, { indoors }) => {
      if (!steps.some(({ outdoor }) => outdoor) || indoors === true) return [];
      return mandatoryCautions.filter((id) => !cautions.some((caution) => caution.id === id)).map((id) => `no ${id}`);
    });
    expect(wrong).toEqual([]);
  });

  it('stand before every outdoor step, each of them known to the plan', () => {
    const wrong = faults(({ steps, cautions }) =>
      steps.flatMap(({ id, outdoor, cautions: needed }) => [
        ...(outdoor && needed.length === 0 ? [`${id} asks for none`] : []),
        ...needed.filter((one) => !cautions.some((caution) => caution.id === one)).map((one) => `${id}: no ${one}`),
      ]),
    );
    expect(wrong).toEqual([]);
  });

  it('have at most three lines to a gate, and are all asked for by some step', () => {
    const wrong = faults(({ steps, cautions }) => {
      const asked = new Set(steps.flatMap((step) => step.cautions));
      return cautions.flatMap(({ id, lines, lineTexts }) => [
        ...(lines.length > 3 || lines.length === 0 || lines.length !== lineTexts.length
          ? [`${id}: ${lines.length} lines`]
          : []),
        ...(asked.has(id) ? [] : [`${id} is asked for by no step`]),
      ]);
    });
    expect(wrong).toEqual([]);
  });

  it('defer to local codes in every plan, indoors too', () => {
    expect(
      faults(({ cautions }) => (cautions.some(({ id }) => id === 'local-codes') ? [] : ['no local codes'])),
    ).toEqual([]);
  });
});

/** Firms that citations name, and that no text may. */
const firms = ['Belden', 'Times Microwave', 'LMR', 'Fair-Rite', 'Amidon', 'Wireman', 'Copperweld', 'Harbour'];

describe('texts', () => {
  const texts = new Map<string, readonly [path: string, answers: Answers]>();
  for (const [answers, plan] of plans) {
    tellTexts(plan, (path, text) => {
      if (!texts.has(text)) texts.set(text, [path, answers]);
    });
  }
  const bad = (pattern: RegExp): readonly string[] =>
    [...texts].filter(([text]) => pattern.test(text)).map(([text, [path]]) => `${path}: ${text}`);

  it('are many, and none is empty', () => {
    expect(texts.size).toBeGreaterThan(2000);
    // A part with nothing to say against it, or a band without a note, leaves its text out instead.
    expect([...texts].filter(([text]) => text.trim() === '').map(([, [path]]) => path)).toEqual([]);
  });

  it('hold no number that failed and no object', () => {
    expect(bad(/undefined|NaN|\[object|Infinity|\bnull\b(?! )/)).toEqual([]);
  });

  it('never say balun or unun, and never call an exposure result safe', () => {
    expect(bad(/balun|unun/i)).toEqual([]);
    const exposure = plans.flatMap(([, plan]) => plan.exposure.map(({ decidedBy }) => decidedBy));
    expect(exposure.filter((text) => /\bsafe/i.test(text))).toEqual([]);
  });

  it('name no firm', () => {
    const cited = Object.values(sources).map(({ citation }) => citation);
    for (const firm of firms) expect(cited.some((citation) => citation.includes(firm))).toBe(true);
    expect(bad(new RegExp(`\\b(${firms.join('|')})\\b`, 'i'))).toEqual([]);
  });

  it('state every length in both units', () => {
    const oneUnit = [...texts].flatMap(([text, [path]]) => {
      const bare = text
        .replace(/[\d.,]+\u00a0m \((?:\d+\u00a0ft)?[\u00a0\d½]*(?:in)?\)/g, '')
        .replace(/(?:\d+\u00a0ft)?[\u00a0\d½]*(?:in)? \([\d.,]+\u00a0m\)/g, '');
      return /\d\u00a0(m|ft|in)\b/.test(bare) ? [`${path}: ${text}`] : [];
    });
    expect(oneUnit).toEqual([]);
  });

  it('end in a full stop where they are sentences', () => {
    const sentences = [...texts].filter(([, [path]]) =>
      /(warnings\.(text|why)|steps\.text|assumed\.why|verdicts\.why)$/.test(path),
    );
    expect(sentences.length).toBeGreaterThan(100);
    expect(sentences.map(([text]) => text).filter((text) => !/[.?!]$/.test(text))).toEqual([]);
  });

  it('give every source a short title without a name', () => {
    for (const { title, citation } of Object.values(sources)) {
      expect(title.length).toBeLessThanOrEqual(40);
      expect(citation.length).toBeGreaterThan(10);
      expect(title).not.toMatch(/FCC|ARRL|ICNIRP|HSE|OSHA|CPSC|IEEE|NFPA|MIL-|ITU|IARU|Belden|Fair-Rite/);
    }
  });
});
