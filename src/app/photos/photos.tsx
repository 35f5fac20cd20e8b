/** Pictures of how the antenna hung: on Trim they are added and taken away, on the plan they are looked at. */
import { useEffect, useMemo, useState } from 'preact/hooks';
import { type Photo, photoVersion } from '../../design/photo';
import type { FoundPhotos } from '../../storage/records';
import { photoWords } from '../../words/en/photos';
import { clock, day, useSay } from '../say';
import { createPhotoStore, type PhotoStore } from '../stores/photo-store';
import { useStores } from '../stores/stores';
import { shrinkPhoto } from './shrink-photo';
import './photos.css';

const usePhotoStore = (): PhotoStore => useStores().photosBy(createPhotoStore);

function usePhotos(planId: string): FoundPhotos {
  const photos = usePhotoStore();
  useEffect(() => void photos.load(planId), [photos, planId]);
  return photos.of(planId);
}

type Trouble = 'unreadable' | 'notKept';

export function PhotoNotes({ planId }: { readonly planId: string }) {
  const say = useSay();
  const photos = usePhotoStore();
  const { photos: list, unreadable } = usePhotos(planId);
  const [isShrinking, setShrinking] = useState(false);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const take = async (file: File): Promise<void> => {
    setTrouble(null);
    setShrinking(true);
    const small = await shrinkPhoto(file);
    const photo = {
      version: photoVersion,
      id: crypto.randomUUID(),
      planId,
      at: Date.now(),
      takenAwayAt: null,
    } as const;
    const isKept = small !== null && (await photos.add({ ...photo, ...small }));
    setShrinking(false);
    if (!isKept) setTrouble(small === null ? 'unreadable' : 'notKept');
  };
  return (
    <section aria-labelledby="photos" class="photos">
      <h2 id="photos">{say(photoWords.head)}</h2>
      <p>{say(photoWords.why)}</p>
      {list.length > 0 && (
        <ul>
          {list.map((photo) =>
            photo.takenAwayAt === null ? (
              <ShownPhoto key={photo.id} photo={photo} onTakeAway={() => void photos.takeAway(photo)} />
            ) : (
              <PhotoTakenAway key={photo.id} photo={photo} />
            ),
          )}
        </ul>
      )}
      <Unreadable count={unreadable} />
      <div role="status">{isShrinking && <p>{say(photoWords.shrinking)}</p>}</div>
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
  const { photos, unreadable } = usePhotos(planId);
  const list = photos.filter(({ takenAwayAt }) => takenAwayAt === null);
  if (list.length + unreadable === 0) return null;
  return (
    <section aria-labelledby="photos" class="photos">
      <h2 id="photos">{say(photoWords.head)}</h2>
      {list.length > 0 && (
        <ul>
          {list.map((photo) => (
            <ShownPhoto key={photo.id} photo={photo} />
          ))}
        </ul>
      )}
      <Unreadable count={unreadable} />
    </section>
  );
}

function Unreadable({ count }: { readonly count: number }) {
  const say = useSay();
  return count > 0 ? <p class="stop">{say(photoWords.notShown, { count })}</p> : null;
}

interface PhotoProps {
  readonly photo: Photo;
}

const whenOf = ({ at }: Photo): string => `${day(at)}, ${clock(at)}`;

function Picture({ photo, alt }: PhotoProps & { readonly alt: string }) {
  const address = useMemo(() => URL.createObjectURL(new Blob([photo.jpeg], { type: 'image/jpeg' })), [photo.id]);
  useEffect(() => () => URL.revokeObjectURL(address), [address]);
  return <img src={address} width={photo.widthPx} height={photo.heightPx} alt={alt} />;
}

function ShownPhoto({ photo, onTakeAway }: PhotoProps & { readonly onTakeAway?: () => void }) {
  const say = useSay();
  const when = whenOf(photo);
  return (
    <li>
      <Picture photo={photo} alt={say(photoWords.alt, { when })} />
      <p class="small">{say(photoWords.kept, { when })}</p>
      {onTakeAway !== undefined && (
        <button
          type="button"
          class="btn tall"
          aria-label={say(photoWords.removeOne, { when })}
          onClick={() => onTakeAway()}
        >
          {say(photoWords.remove)}
        </button>
      )}
    </li>
  );
}

/** Stays in its place, small, until it is put back or deleted for good: no battery that dies in between loses it. */
function PhotoTakenAway({ photo }: PhotoProps) {
  const say = useSay();
  const photos = usePhotoStore();
  const [isAsking, setAsking] = useState(false);
  const when = whenOf(photo);
  const deletion = (
    <button
      type="button"
      class="btn tall"
      aria-label={say(photoWords.deleteOne, { when })}
      onClick={() => (isAsking ? void photos.deleteForGood(photo) : setAsking(true))}
    >
      {say(photoWords.deleteForGood)}
    </button>
  );
  return (
    <li class="taken-away">
      <Picture photo={photo} alt={say(photoWords.removedAlt, { when })} />
      <p role="status">{say(isAsking ? photoWords.sure : photoWords.removed, { when })}</p>
      <div class="ways">
        {/* The second press is at another place than the first: a drop of rain that presses twice deletes nothing. */}
        {isAsking && deletion}
        {isAsking ? (
          <button type="button" class="btn tall" onClick={() => setAsking(false)}>
            {say(photoWords.keepIt)}
          </button>
        ) : (
          <button
            type="button"
            class="btn tall"
            aria-label={say(photoWords.putBackOne, { when })}
            onClick={() => void photos.putBack(photo)}
          >
            {say(photoWords.putBack)}
          </button>
        )}
        {!isAsking && deletion}
      </div>
    </li>
  );
}
