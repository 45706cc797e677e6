// Hands on what the microphone picks up, block by block.
registerProcessor("microphone", class extends AudioWorkletProcessor {
  process([[channel]]) {
    if (channel) this.port.postMessage(channel.slice());
    return true;
  }
});
