// The photos of a batch. Returns update(cook).

import { askBook } from './book-ask.js';
import { make, put } from './elements.js';

/** @param {HTMLElement} place */
export function mountPhotos(place) {
  const list = make('ul', { className: 'book-photos' }, 'book-photos');
  const wrong = make('p', { className: 'error' }, 'book-photo-error');
  wrong.setAttribute('role', 'status');
  const input = make('input', { type: 'file', accept: 'image/jpeg,image/png' }, 'book-photo');
  const label = make('label', {});
  label.append('Add a photo (its place and other data are left out)', input);
  place.append(make('h2', { textContent: 'Photos' }), list, label, wrong);

  let cook = null;
  let photos = [];
  let shownFor = null;

  input.addEventListener('change', async () => {
    const file = input.files[0];
    const mine = cook.id;
    if (!file) {
      return;
    }
    input.disabled = true;
    const [photo, error] = await askBook('POST', `api/book/${mine}/photos`, new Blob([file])); // its name stays here
    input.disabled = false;
    input.value = '';
    put(wrong, error);
    if (photo && cook.id === mine && !photos.some(({ id }) => id === photo.id)) {
      photos = [...photos, photo];
      draw();
    }
  });

  async function takeOut(photo) {
    const [, error] = await askBook('DELETE', `api/book/${cook.id}/photos/${photo.id}`);
    put(wrong, error);
    if (error === '') {
      photos = photos.filter(({ id }) => id !== photo.id);
      draw();
      input.focus();
    }
  }

  function draw() {
    list.replaceChildren(
      ...photos.map((photo, i) => {
        const row = make('li', {});
        const img = make('img', {
          src: `api/book/${cook.id}/photos/${photo.id}`,
          width: photo.width,
          height: photo.height,
          loading: 'lazy',
          alt: `Photo ${i + 1} of ${photos.length}`,
        });
        const out = make('button', { type: 'button', className: 'plain', textContent: `Take photo ${i + 1} out` });
        out.addEventListener('click', () => takeOut(photo));
        row.append(img, out);
        return row;
      }),
    );
  }

  return function update(newCook) {
    cook = newCook;
    if (shownFor !== cook.id) {
      shownFor = cook.id;
      photos = cook.photos;
      put(wrong, '');
      draw();
    }
  };
}
