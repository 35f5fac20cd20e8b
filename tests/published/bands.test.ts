import { test } from 'vitest';
import type { Band, Region } from '../../src/catalog/band-ids';
import { bandEdgesMHz, usSixtyMetreChannels } from '../../src/catalog/bands';
import { expectPublished, type PublishedCheck, published, titled } from '../fixtures/published-checks';

function computed({ id, inputs }: PublishedCheck): readonly number[] {
  if (id === 'band-60m-channels') return usSixtyMetreChannels.value.centresMHz;
  const { band, column } = inputs as { band: Band; column: string };
  const { lowMHz, highMHz } =
    column === 'US' ? bandEdgesMHz(band, 2, 'US') : bandEdgesMHz(band, Number(column) as Region);
  return [lowMHz, highMHz];
}

test.each(titled(published('bands.json')))('%s', (_title, check) => expectPublished(check, computed(check)));
