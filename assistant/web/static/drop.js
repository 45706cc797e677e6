// A recipe dropped on the page, or copied from another page with its data.
export function drops() {
  const form = document.querySelector("[data-drop]");
  if (!form) return;
  const [field, file] = [form.querySelector("textarea"), form.querySelector("input[type=file]")];
  for (const kind of ["dragover", "dragleave", "drop"]) {
    form.addEventListener(kind, (event) => {
      event.preventDefault();
      form.classList.toggle("dropping", kind === "dragover");
    });
  }
  form.addEventListener("drop", (event) => {
    if (event.dataTransfer.files.length) {
      file.files = event.dataTransfer.files;
      form.requestSubmit();
    } else {
      field.value = event.dataTransfer.getData("text/plain");
    }
  });
  file.addEventListener("change", () => file.files.length && form.requestSubmit());
}
