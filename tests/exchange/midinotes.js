// The events of MIDI files as the npm package midi-file reads them, a line each:
//   track on|off tick key        tempo tick microseconds        meter tick beats/unit
// node midinotes.js NODE_MODULES FILE...       each file's lines go to FILE.events
const fs = require("fs");
const { parseMidi } = require(process.argv[2] + "/midi-file");

for (const file of process.argv.slice(3)) {
  const lines = [];
  parseMidi(fs.readFileSync(file)).tracks.forEach((track, index) => {
    let tick = 0;
    for (const event of track) {
      tick += event.deltaTime;
      if (event.type === "noteOn") lines.push(`${index} on ${tick} ${event.noteNumber}`);
      if (event.type === "noteOff") lines.push(`${index} off ${tick} ${event.noteNumber}`);
      if (event.type === "setTempo")
        lines.push(`tempo ${tick} ${event.microsecondsPerBeat}`);
      if (event.type === "timeSignature")
        lines.push(`meter ${tick} ${event.numerator}/${event.denominator}`);
    }
  });
  fs.writeFileSync(file + ".events", lines.sort().join("\n") + "\n");
}
