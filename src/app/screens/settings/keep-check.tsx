/** The truth about working with no signal, looked up file by file and byte by byte when asked. */
import { useState } from 'preact/hooks';
import { roomOf } from '../../../storage/persistence';
import { settings as words } from '../../../words/en/places';
import { checkOffline, fetchAgain, type OfflineCheck } from '../../offline-check';
import { Icon } from '../../parts/icon';
import { useSay } from '../../say';

interface Found extends OfflineCheck {
  readonly room: { readonly usedBytes: number; readonly allowedBytes: number } | null;
}

export function KeepCheck() {
  const say = useSay();
  const [found, setFound] = useState<Found | 'looking' | null>(null);
  const look = async (): Promise<void> => {
    setFound('looking');
    const [check, room] = await Promise.all([checkOffline(), roomOf(navigator.storage)]);
    setFound({ ...check, room });
  };
  const { missing = [], damaged = [] } = (found !== null && found !== 'looking' && found.files) || {};
  const wrong = [...missing, ...damaged];
  return (
    <section aria-labelledby="works">
      <h2 id="works">{say(words.keepHead)}</h2>
      <div role="status" class="stack found">
        {found === 'looking' && <p>{say(words.checking)}</p>}
        {found !== null && found !== 'looking' && <Told found={found} />}
      </div>
      <div class="ways">
        <button type="button" class="btn tall" onClick={() => void look()}>
          {say(words.check)}
        </button>
        {wrong.length > 0 && (
          <button type="button" class="btn tall" onClick={() => void fetchAgain(wrong).then(look)}>
            {say(words.fetchAgain)}
          </button>
        )}
      </div>
    </section>
  );
}

function Told({ found: { files, wrote, room } }: { found: Found }) {
  const say = useSay();
  const { count = 0, missing = [], damaged = [] } = files ?? {};
  const whole = files !== null && missing.length + damaged.length === 0;
  return (
    <>
      <p class="told">
        {whole && <Icon name="tick" />}
        {files === null && say(words.noWorker)}
        {whole && say(words.allHere, { count })}
        {missing.length > 0 && say(words.missing, { count, missing: missing.length })}
      </p>
      {damaged.length > 0 && <p class="told">{say(words.damaged, { count, damaged: damaged.length })}</p>}
      <p class="told">
        {wrote && <Icon name="tick" />}
        {say(wrote ? words.wrote : words.notWrote)}
      </p>
      {room !== null && (
        <p class="small">
          {say(words.room, {
            usedMb: say.format.number(room.usedBytes / 1e6, 2),
            allowedGb: say.format.number(room.allowedBytes / 1e9, 2),
          })}
        </p>
      )}
    </>
  );
}
