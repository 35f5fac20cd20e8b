/** What people in the field ask of the app, each with the tests that hold it. A test that is renamed or goes must be named anew here. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

type Proofs = Readonly<Record<string, readonly string[]>>;

/** By demand; under each the test files and the beginnings of the names of their tests. */
const demands: Readonly<Record<string, Proofs>> = {
  '1 works in flight mode, workings and both units included': {
    'e2e/shell.spec.ts': ['any page opens with the server gone'],
    'e2e/plan.spec.ts': ['a working is evaluated with the server gone'],
    'e2e/places.spec.ts': ['the check for no signal reads every file'],
  },
  '2 a useful answer within three questions': {
    'e2e/questions.spec.ts': ['a provisional answer stands at the third question'],
  },
  '3 "not sure" is always an answer': {
    'e2e/questions.spec.ts': ['"Not sure" says how to find out'],
    'advice/route.test.ts': ['has no dead end'],
  },
  '4 the user’s words, terms explained in place': {
    'app/words.test.ts': ['%s has a title, a meaning', 'none says a bare "balun"'],
  },
  '5 every length in metres and feet': {
    'e2e/both-units.spec.ts': ['every length of every screen stands in metres and in feet'],
    'plan/plain-text.test.ts': ['every length in metres has its feet beside it'],
    'words/spoken.test.ts': ['feet first where feet are first'],
  },
  '6 units never change a value': {
    'e2e/places.spec.ts': ['feet first changes which unit stands first, and no length'],
    'base/read-length.test.ts': ['digits typed keep their meaning'],
  },
  '7 asks where a value looks like another unit': {
    'e2e/questions.spec.ts': ['a doubt about the unit is asked', '7100 typed for megahertz'],
    'app/trim.test.ts': ['%s is 6.88 MHz', '6880 is asked about'],
  },
  '8 the impossible has a reason and two ways out': {
    'e2e/questions.spec.ts': ['what cannot be read says so beside the field'],
    'e2e/plan.spec.ts': ['what stops a plan says why', 'a way out that is a changed answer is one tap'],
    'advice/warnings.test.ts': ['a stop has at least two ways out'],
  },
  '9 read in the sun': {
    'app/contrast.test.ts': ['all of the inks and grounds are in the list'],
    'e2e/accessibility.spec.ts': ['no screen has a fault that axe finds by day'],
    'e2e/field-sizes.spec.ts': ['sideways, the whole number to cut'],
    'e2e/why.spec.ts': ['the figures are large enough for a stand'],
  },
  '10 worked with gloves': {
    'e2e/field-sizes.spec.ts': [
      'no screen is wider than its window, no unit leaves its number, and every target is for gloves',
    ],
  },
  '11 worked with one thumb, either': {
    'e2e/field-sizes.spec.ts': ['the main action is under the %s thumb'],
    'e2e/questions.spec.ts': ['the number pad writes what the field reads, by thumb alone'],
  },
  '12 safe in rain and pocket': {
    'e2e/cut.spec.ts': ['held, the screen answers to nothing but A and then B'],
    'e2e/plans.spec.ts': ['a plan is copied, renamed, deleted, put back'],
    'e2e/bench-top.spec.ts': ['a lost count is set to what is seen in the hole'],
  },
  '13 outlives a call, a lock, the battery': {
    'e2e/questions.spec.ts': ['a browser killed after an answer'],
    'e2e/cut.spec.ts': ['after the battery died it returns to the same piece'],
    'e2e/bench-top.spec.ts': ['a count outlives the battery'],
  },
  '14 said aloud, seen across two metres': {
    'e2e/aids.spec.ts': ['a length is said by the phone’s own voice'],
    'e2e/plan.spec.ts': ['a length opens as a call-out'],
  },
  '15 danger before lengths': {
    'e2e/cut.spec.ts': ['no length before the cautions'],
    'e2e/raise.spec.ts': ['a link to a later step does not lead past its cautions'],
    'plan/plain-text.test.ts': ['danger stands before the first length to cut'],
    'app/gates.test.ts': ['no gate has more than three lines'],
  },
  '16 a warning names cause and cure': {
    'advice/warnings.test.ts': ['every warning that can be raised has its case', 'every wording is reached'],
  },
  '17 shows what changed': {
    'e2e/questions.spec.ts': ['changing an answer points out what changed in the plan'],
    'e2e/plan.spec.ts': ['when the antenna is solved the plan says once what moved'],
  },
  '18 a tolerance and a stop rule with each length': {
    'advice/cuts-and-parts.test.ts': ['cuts are finite, above zero'],
    'e2e/field-day.spec.ts': ['a day out'],
  },
  '19 trimming needs one number': {
    'e2e/trim.spec.ts': ['one dip in, one fold out'],
    'e2e/linked.spec.ts': ['a wire with links, from the question to the last band trimmed'],
  },
  '20 chokes are drawn and counted from a named point': {
    'advice/cuts-and-parts.test.ts': ['the coax is marked at the choke'],
    'drawing/drawings.test.tsx': ['a choke of the side view stands as far along the coax as it was told'],
  },
  '21 a counted list with substitutes, sent as text': {
    'e2e/shop.spec.ts': ['one list for several plans'],
    'advice/cuts-and-parts.test.ts': ['a ring names the build of another mix'],
    'plan/plain-text.test.ts': ['the shopping list says of each part whether it is here'],
  },
  '22 two depths, disputes from both sides': {
    'app/evaluate-working.test.ts': ['there are many formulas'],
    'advice/disputes.test.ts': ['every dispute is reached and worded'],
  },
  '23 steps for the second person': {
    'e2e/raise.spec.ts': ['steps open one after the other'],
    'e2e/handover.spec.ts': ['a plan crosses to a second phone by a photo of the code'],
  },
  '24 quiet and frugal': {
    'e2e/still.spec.ts': ['a page left alone does nothing'],
    'e2e/forced-colours.spec.ts': ['nothing moves'],
  },
  '25 remembers and copies': {
    'e2e/plans.spec.ts': ['a plan is copied', 'a plan crosses to another phone as a link'],
    'e2e/bench-top.spec.ts': ['a photo of how it hung'],
    'e2e/handover.spec.ts': ['the summary card is a picture'],
    'e2e/field-day.spec.ts': ['a day out'],
  },
};

test('all twenty-five are there, in order', () => {
  expect(Object.keys(demands).map((name) => Number.parseInt(name, 10))).toEqual(
    Array.from({ length: 25 }, (_, i) => i + 1),
  );
});

const proofs = Object.entries(demands).flatMap(([demand, files]) =>
  Object.entries(files).map(([file, names]) => [demand, file, names] as const),
);

test.each(proofs)('%s: %s', (_, file, names) => {
  const source = readFileSync(new URL(file, import.meta.url), 'utf8');
  expect(names.length).toBeGreaterThan(0);
  for (const name of names) expect(source.includes(`'${name}`), name).toBe(true);
});
