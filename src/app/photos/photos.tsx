/** Pictures of how the antenna hung: on Trim they are added and taken away, on the plan they are looked at. */
import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Photo } from '../../design/photo';
import { photoWords } from '../../words/en/photos';
import { clock, day, useSay } from '../say';
import { useStores } from '../stores/stores';
import { shrinkPhoto } from './shrink-photo';
import './photos.css';

function usePhotos(planId: string): readonly Photo[] {
  const { photos } = useStores();
  useEffect(() => void photos.load(planId), [photos, planId]);
  return photos.of(planId);
}

type Trouble = 'unreadable' | 'notKept';

export function PhotoNotes({ planId }: { readonly planId: string }) {
  const say = useSay();
  const { photos } = useStores();
  const list = usePhotos(planId);
  const [isShrinking, setShrinking] = useState(false);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const take = async (file: File): Promise<void> => {
    setTrouble(null);
    setShrinking(true);
    const small = await shrinkPhoto(file);
    const photo = { version: 1, id: crypto.randomUUID(), planId, at: Date.now() } as const;
    const isKept = small !== null && (await photos.add({ ...photo, ...small }));
    setShrinking(false);
    if (!isKept) setTrouble(small === null ? 'unreadable' : 'notKept');
  };
  const removed = photos.removed.value;
  return (
    <section aria-labelledby="photos" class="photos">
      <h2 id="photos">{say(photoWords.head)}</h2>
      <p>{say(photoWords.why)}</p>
      <PhotoList list={list} onRemove={(photo) => void photos.remove(photo)} />
      <div role="status">
        {isShrinking && <p>{say(photoWords.shrinking)}</p>}
        {removed?.planId === planId && <p>{say(photoWords.removed)}</p>}
      </div>
      {removed?.planId === planId && (
        <button type="button" class="btn tall" onClick={() => void photos.putBack()}>
          {say(photoWords.undo)}
        </button>
      )}
      {trouble !== null && (
        <p class="stop" role="alert">
          {say(photoWords[trouble])}
        </p>
      )}
      <label class="btn tall file">
        {say(photoWords.add)}
        <input
          class="vh"
          type="file"
          accept="image/*"
          onChange={({ currentTarget }) => {
            const [file] = currentTarget.files ?? [];
            currentTarget.value = '';
            if (file !== undefined) void take(file);
          }}
        />
      </label>
      <p class="small">{say(photoWords.stays)}</p>
    </section>
  );
}

/** Nothing where there is none. */
export function PhotosOfPlan({ planId }: { readonly planId: string }) {
  const say = useSay();
  const list = usePhotos(planId);
  if (list.length === 0) return null;
  return (
    <section aria-labelledby="photos" class="photos">
      <h2 id="photos">{say(photoWords.head)}</h2>
      <PhotoList list={list} />
    </section>
  );
}

interface PhotoListProps {
  readonly list: readonly Photo[];
  readonly onRemove?: (photo: Photo) => void;
}

function PhotoList({ list, onRemove }: PhotoListProps) {
  if (list.length === 0) return null;
  return (
    <ul>
      {list.map((photo) => (
        <OnePhoto key={photo.id} photo={photo} {...(onRemove === undefined ? {} : { onRemove })} />
      ))}
    </ul>
  );
}

function OnePhoto({ photo, onRemove }: { readonly photo: Photo } & Pick<PhotoListProps, 'onRemove'>) {
  const say = useSay();
  const address = useMemo(() => URL.createObjectURL(new Blob([photo.jpeg], { type: 'image/jpeg' })), [photo.id]);
  useEffect(() => () => URL.revokeObjectURL(address), [address]);
  const when = `${day(photo.at)}, ${clock(photo.at)}`;
  return (
    <li>
      <img src={address} width={photo.widthPx} height={photo.heightPx} alt={say(photoWords.alt, { when })} />
      <p class="small">{say(photoWords.kept, { when })}</p>
      {onRemove !== undefined && (
        <button
          type="button"
          class="btn"
          aria-label={say(photoWords.removeOne, { when })}
          onClick={() => onRemove(photo)}
        >
          {say(photoWords.remove)}
        </button>
      )}
    </li>
  );
}
