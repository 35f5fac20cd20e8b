import { test } from 'vitest';
import { expectPublished, published, titled } from '../fixtures/published-checks';
import { componentValues } from './component-values';

const checks = published('components.json');

test.each(titled(checks))('%s', (_title, check) => expectPublished(check, componentValues[check.id]()));
