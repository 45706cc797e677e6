// Hold the button, speak, let go: what was heard stands in the field, to be seen and put right before it is asked.
import { wav } from "./wav.js";

const RATE_HZ = 16000;
const LONGEST_MS = 30000;

export function holds() {
  const button = document.querySelector("[data-hold]");
  if (!button || !navigator.mediaDevices?.getUserMedia || !window.AudioWorkletNode) return;
  button.hidden = false;
  const says = document.querySelector("[data-hold-says]");
  const others = document.querySelector("[data-hold-others]");
  let take = null;
  const begin = async (event) => {
    if (take || (event.key && ![" ", "Enter"].includes(event.key)) || event.repeat) return;
    event.preventDefault();
    take = listen();
    take.timer = setTimeout(end, LONGEST_MS);
    says.textContent = "Wait";
    others.replaceChildren();
    const own = take;
    own.started.then(
      () => {
        // what is said before this is lost, so nobody is told to speak sooner
        if (take !== own) return;
        button.classList.add("listening");
        says.textContent = "Speak now";
      },
      () => { says.textContent = "The browser may not listen."; end(); },
    );
  };
  const end = async () => {
    if (!take) return;
    const { stop, timer } = take;
    take = null;
    clearTimeout(timer);
    button.classList.remove("listening");
    const samples = await stop();
    if (!samples.length) return;
    says.textContent = "A moment";
    says.textContent = await heard(wav(samples, RATE_HZ), others);
  };
  button.addEventListener("pointerdown", (event) => { button.setPointerCapture(event.pointerId); begin(event); });
  for (const kind of ["pointerup", "pointercancel", "blur"]) button.addEventListener(kind, end);
  button.addEventListener("keydown", begin);
  button.addEventListener("keyup", end);
}

function listen() {
  const parts = [];
  let context = null;
  let stream = null;
  const started = (async () => {
    stream = await navigator.mediaDevices.getUserMedia({ audio: { channelCount: 1, echoCancellation: false } });
    context = new AudioContext({ sampleRate: RATE_HZ });
    await context.audioWorklet.addModule(new URL("./microphone.js", import.meta.url));
    const node = new AudioWorkletNode(context, "microphone");
    node.port.onmessage = (event) => parts.push(event.data);
    context.createMediaStreamSource(stream).connect(node);
  })();
  const stop = async () => {
    await started.catch(() => {});
    for (const track of stream?.getTracks() ?? []) track.stop();
    await context?.close();
    const all = new Float32Array(parts.reduce((sum, part) => sum + part.length, 0));
    let at = 0;
    for (const part of parts) { all.set(part, at); at += part.length; }
    return all;
  };
  return { started, stop };
}

async function heard(file, others) {
  try {
    const response = await fetch("/api/heard", { method: "POST", headers: { "content-type": "audio/wav" }, body: file });
    const answer = await response.json();
    if (!response.ok) return answer.detail;
    offer(answer.text);
    others.replaceChildren(...(answer.alternatives ?? []).map((text) => {
      const other = Object.assign(document.createElement("button"), { type: "button", textContent: text });
      other.addEventListener("click", () => offer(text));
      return other;
    }));
    return answer.read_back || "Is that right? Then ask.";
  } catch {
    return "The server does not answer.";
  }
}

// what was heard stands where the question is typed, to be put right
function offer(text) {
  const field = document.getElementById("text");
  field.value = text;
  field.focus();
}
