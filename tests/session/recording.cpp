#include "tests/session/recording.h"

#include "tests/sound/spectrum.h"

#include <QFile>
#include <QProcess>
#include <QtEndian>

#include <cmath>
#include <cstdint>
#include <numeric>
#include <span>

namespace sitting {

namespace {

constexpr int sampleRate = 48000;

} // namespace

std::optional<QString> soundPort()
{
    QProcess ports;
    ports.start("jack_lsp", {"-t"});
    ports.waitForFinished(5000);
    // The name of a port, then its kind on a line of its own.
    QStringList const lines = QString::fromUtf8(ports.readAllStandardOutput()).split('\n');
    for (qsizetype i = 0; i + 1 < lines.size(); ++i)
        if (lines[i + 1].contains("audio") && !lines[i].startsWith("system:") &&
            lines[i].contains(':'))
            return lines[i].trimmed();
    return std::nullopt;
}

void beginRecording(QProcess& recorder, QString const& port, int seconds, QString const& file)
{
    recorder.start("jack_rec", {"-f", file, "-d", QString::number(seconds), "-b", "16", port});
    recorder.waitForStarted();
}

std::vector<float> recorded(QString const& file)
{
    QFile wav(file);
    if (!wav.open(QIODevice::ReadOnly)) return {};
    QByteArray const bytes = wav.readAll();
    // RIFF: twelve bytes, then chunks, each with its name and length.
    std::vector<float> samples;
    for (qsizetype at = 12; at + 8 <= bytes.size();) {
        auto const length = qFromLittleEndian<std::uint32_t>(bytes.constData() + at + 4);
        if (bytes.mid(at, 4) == "data") {
            qsizetype const end = std::min<qsizetype>(at + 8 + length, bytes.size());
            for (qsizetype i = at + 8; i + 1 < end; i += 2)
                samples.push_back(
                    static_cast<float>(qFromLittleEndian<std::int16_t>(bytes.constData() + i)) /
                    32768.0F);
            return samples;
        }
        at += 8 + length + length % 2;
    }
    return samples;
}

std::vector<double> pitchClasses(std::vector<float> const& samples)
{
    std::vector<double> shares(12, 0.0);
    constexpr int lowest = 48;
    constexpr int highest = 88;
    constexpr std::size_t window = sampleRate / 4;
    for (std::size_t from = 0; from + window <= samples.size(); from += window)
        for (int midi = lowest; midi < highest; ++midi) {
            double const strength =
                hearing::strengthAt(std::span<float const>(samples).subspan(from, window),
                                    440 * std::exp2((midi - 69) / 12.0), sampleRate);
            shares[static_cast<std::size_t>(midi % 12)] += strength * strength;
        }
    double const all = std::accumulate(shares.begin(), shares.end(), 0.0);
    for (double& share : shares) share = all > 0 ? share / all : 0;
    return shares;
}

} // namespace sitting
