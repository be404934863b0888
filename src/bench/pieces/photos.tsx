import { useEffect, useMemo, useState } from 'preact/hooks';
import { MOST_PHOTOS, type Photo } from '../../notebook/photo.ts';
import { keepingWords } from '../../words/en/keeping.ts';
import { dateText } from '../../words/figures.ts';
import { failureOf } from '../failure.ts';
import { usePorts } from '../ports.ts';
import { size } from '../storage.ts';
import { PhotoButton } from './photo-button.tsx';

interface PhotosProps {
  /** Id of the job. */
  readonly job: string;
  /** What a photo that is added here shows. */
  readonly words: string;
}

/** The photos of a job, how many more it takes, and the way to add one. */
export function Photos({ job, words }: PhotosProps) {
  const { notebook } = usePorts();
  const [photos, setPhotos] = useState<readonly Photo[]>([]);
  const [failure, setFailure] = useState<string | null>(null);
  const look = () =>
    notebook.photos.of(job).then(setPhotos, (error: unknown) => setFailure(failureOf(error)));
  useEffect(() => {
    void look();
    return notebook.watch(({ id, what }) => {
      if (id === job && what === 'photos') void look();
    });
  }, [job, notebook]);
  const remove = async (id: string) => {
    try {
      await notebook.photos.remove(id);
      await look();
    } catch (error) {
      setFailure(failureOf(error));
    }
  };
  const used = photos.reduce((sum, { bytes }) => sum + bytes, 0);
  return (
    <section class="photos-part">
      <h2>{keepingWords().photos}</h2>
      {photos.length > 0 && (
        <ul class="photos">
          {photos.map((photo) => (
            <li key={photo.id}>
              <Picture photo={photo} />
              <span>{keepingWords().photoLine(photo.words, dateText(photo.at))}</span>
              <button
                type="button"
                class="quiet no-print"
                aria-label={keepingWords().removePhoto(photo.words)}
                onClick={() => remove(photo.id)}
              >
                {keepingWords().remove}
              </button>
            </li>
          ))}
        </ul>
      )}
      {failure && (
        <p role="alert" class="sentence">
          {failure}
        </p>
      )}
      <p class="soft no-print">
        {keepingWords().photoLimit(
          photos.length,
          MOST_PHOTOS.ofJob,
          size(used),
          size(MOST_PHOTOS.bytes),
        )}
      </p>
      <p class="row no-print">
        {photos.length < MOST_PHOTOS.ofJob && (
          <PhotoButton job={job} words={words} label={keepingWords().addAPhoto} onAdded={look} />
        )}
      </p>
    </section>
  );
}

function Picture({ photo }: { photo: Photo }) {
  const address = useMemo(
    () => URL.createObjectURL(new Blob([photo.data], { type: 'image/jpeg' })),
    [photo],
  );
  useEffect(() => () => URL.revokeObjectURL(address), [address]);
  return (
    <a href={address} target="_blank" rel="noreferrer">
      <img src={address} alt={photo.words} width={photo.width} height={photo.height} />
    </a>
  );
}
