/** For a browser: files that are dropped anywhere on the page go into the control for files. */
export function takeDrops(page: Document): void {
  const control = page.querySelector<HTMLInputElement>('form.drop input[type=file]');
  if (control === null) return;
  page.addEventListener('dragover', (event) => event.preventDefault());
  page.addEventListener('drop', (event) => {
    event.preventDefault();
    const { files } = event.dataTransfer ?? { files: null };
    if (files === null || files.length === 0) return;
    control.files = files;
    control.focus();
  });
}
