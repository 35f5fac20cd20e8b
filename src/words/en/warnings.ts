/** Words of every warning, by the code that the rules give; a warning with one wording has its id as code. */
import type { WarningWords } from './warning-message';
import { feedWarnings } from './warnings-feed';
import { lineWarnings } from './warnings-line';
import { peopleWarnings } from './warnings-people';
import { siteWarnings } from './warnings-site';

export const warningWords: Readonly<Record<string, WarningWords>> = {
  ...siteWarnings,
  ...peopleWarnings,
  ...feedWarnings,
  ...lineWarnings,
};
