// The first line of a reply read aloud: by the browser's own voice, else by the server's.
export function aloud(place) {
  const button = place.querySelector("[data-aloud]");
  if (!button || button.dataset.ready) return;
  button.dataset.ready = "yes";
  button.hidden = false;
  button.addEventListener("click", async () => {
    const line = place.querySelector("[data-headline]").textContent;
    const voices = window.speechSynthesis?.getVoices() ?? [];
    if (voices.length) {
      speechSynthesis.cancel();
      speechSynthesis.speak(new SpeechSynthesisUtterance(line));
    } else if (!(await byServer(line))) {
      button.textContent = "No voice here";
    }
  });
}

async function byServer(text) {
  const headers = { "content-type": "application/json" };
  try {
    const response = await fetch("/api/said", { method: "POST", headers, body: JSON.stringify({ text }) });
    if (!response.ok) return false;
    const context = new AudioContext();
    const sound = context.createBufferSource();
    sound.buffer = await context.decodeAudioData(await response.arrayBuffer());
    sound.connect(context.destination);
    sound.start();
    return true;
  } catch {
    return false;
  }
}
