// The sections of the page.

/** Shows the pan or a quiet page; a call stays on top of each, and the door shows itself. */
export function showView(view) {
  for (const section of document.querySelectorAll('.heat, .picture, .next')) {
    section.hidden = view !== 'pan';
  }
  if (view !== 'pan') {
    document.querySelector('[data-testid="sentence"]').hidden = true;
  }
  for (const section of document.querySelectorAll('main > .view')) {
    section.hidden = section.dataset.testid !== view;
  }
}
