#pragma once

#include <QString>

#include <optional>
#include <vector>

class QProcess;

// What a JACK server without hardware plays, written down by its own recorder.
namespace sitting {

// The first port of a sound client on the server, once it is there.
std::optional<QString> soundPort();

// Begins to record a port for so many seconds into a WAV file.
void beginRecording(QProcess& recorder, QString const& port, int seconds, QString const& file);

// The samples of a 16-bit WAV file with one channel; none where it cannot be read.
std::vector<float> recorded(QString const& file);

// Of the strength of all twelve pitch classes (0 is C) from octave 3 to 6, the share of each,
// as the samples have it at 48 kHz.
std::vector<double> pitchClasses(std::vector<float> const& samples);

} // namespace sitting
