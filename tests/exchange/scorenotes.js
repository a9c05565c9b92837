// The notes of MusicXML files as the npm package musicxml-io reads them, a line each:
//   measure voice staff at duration pitch [tie]      (times in divisions; "-" is a rest)
// node scorenotes.js NODE_MODULES FILE...            each file's lines go to FILE.notes
globalThis.crypto ??= require("crypto").webcrypto; // which the package wants and Node 18 keeps there
const fs = require("fs");
const { parse } = require(process.argv[2] + "/musicxml-io");

const pitchOf = (note) =>
  note.pitch ? note.pitch.step + (note.pitch.alter || 0) + "/" + note.pitch.octave : "-";

const tiesOn = (note) =>
  [note.tie, ...(note.ties || [])].some((tie) => tie && tie.type === "start");

for (const file of process.argv.slice(3)) {
  const score = parse(fs.readFileSync(file, "utf8"));
  const lines = [];
  score.parts[0].measures.forEach((measure, index) => {
    let at = 0;
    let began = 0;
    for (const entry of measure.entries) {
      if (entry.type === "backup") at -= entry.duration;
      if (entry.type === "forward") at += entry.duration;
      if (entry.type !== "note") continue;
      const head = [index, entry.voice, entry.staff || 1];
      if (entry.grace) {
        lines.push([...head, "grace", pitchOf(entry)].join(" "));
        continue;
      }
      if (!entry.chord) {
        began = at;
        at += entry.duration;
      }
      const tie = tiesOn(entry) ? ["tie"] : [];
      lines.push([...head, began, entry.duration, pitchOf(entry), ...tie].join(" "));
    }
  });
  fs.writeFileSync(file + ".notes", lines.join("\n") + "\n");
}
